package org.cellfile.cell;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.read.CsvFile;
import org.cellfile.read.Redaction;
import org.cellfile.read.WordsFile;
import org.cellfile.source.SourceFile;
import org.cellfile.source.World;
import org.cellfile.subject.signoff.InternalPart;

/**
 * A cell's description as it leaves the plant: without its internal parts, and with the digests that the chapters concerned have in
 * the full description, so that sign-offs of it are still seen to hold.
 *
 * <p>What that does not give: whoever has such a copy cannot recompute these digests, so the copy alone does not show that what
 * is left of those chapters is as it was signed. And a digest lets somebody who guesses all values left out of a chapter,
 * character by character, see that the guess was right.
 */
public final class OutsideCopy {

    private static final String FILE = "left-out";
    private static final String YAML = ".yaml";

    private OutsideCopy() {}

    /** The files that travel with a copy of a cell of which this was left out; whatever else lies in its folder stays there. */
    public static World world(Cell cell, Collection<InternalPart> parts) {
        List<SourceFile> files = new ArrayList<>();
        for (SourceFile file : cell.sources()) {
            if (file.path().endsWith(YAML) || file.path().endsWith(".yml")) {
                files.add(Redaction.of(file, statement -> isOf(statement, parts)));
            } else if (WordsFile.tag(file.path()).isPresent()) {
                files.add(WordsFile.withoutComments(file));
            } else if (isNamedTable(file, cell)) {
                files.add(file);
            }
        }
        files.add(new SourceFile(free(cell.sources()), leftOut(cell, parts)));
        List<World.Entry> entries =
                new ArrayList<>(files.stream().map(OutsideCopy::entry).toList());
        cell.sheets().logo().ifPresent(logo -> entries.add(World.Entry.held(logo.path(), logo.content())));
        cell.sheets().inLanguages().files().forEach((path, bytes) -> entries.add(World.Entry.held(path, bytes)));
        entries.sort(Comparator.comparing(World.Entry::path));
        return new Files(entries);
    }

    private static World.Entry entry(SourceFile file) {
        return World.Entry.held(file.path(), file.text().getBytes(StandardCharsets.UTF_8));
    }

    private static boolean isOf(Statement statement, Collection<InternalPart> parts) {
        return parts.stream().anyMatch(part -> part.holds(statement));
    }

    /** A table that nothing names belongs to no description. */
    private static boolean isNamedTable(SourceFile file, Cell cell) {
        String head = CsvFile.TABLE + "/" + Statement.step(file.path()) + "/";
        return cell.statements().stream().anyMatch(statement -> statement.path().startsWith(head));
    }

    /** A name that no file of the cell has. */
    private static String free(List<SourceFile> files) {
        Set<String> taken = files.stream().map(SourceFile::path).collect(Collectors.toSet());
        String name = FILE + YAML;
        for (int number = 2; taken.contains(name); number++) {
            name = FILE + "-" + number + YAML;
        }
        return name;
    }

    private static String leftOut(Cell cell, Collection<InternalPart> parts) {
        Substance substance = cell.substance();
        Set<String> chapters = new TreeSet<>();
        cell.statements().stream()
                .filter(statement -> isOf(statement, parts))
                .forEach(statement -> Substances.chapter(statement.key()).ifPresent(chapters::add));
        return "# Written by the program: the digests of the chapters of which parts were left out of this copy.\ncellfile: 1\n\n"
                + Redaction.KEY + ":\n"
                + chapters.stream()
                        .map(chapter -> "  - {chapter: " + chapter + ", digest: "
                                + substance.digest(chapter).orElseThrow() + "}\n")
                        .collect(Collectors.joining());
    }

    /** Files that are already read. */
    private record Files(List<World.Entry> entries) implements World {

        /** What is due by the day of a run is seen in the full description. */
        @Override
        public LocalDate today() {
            throw new IllegalStateException("nothing falls due in a copy");
        }
    }
}
