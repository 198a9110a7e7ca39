package org.cellfile.refusal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.JudgingDay;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingText;
import org.cellfile.verdict.Verdict;

/** The small cell in which everything holds, and what is laid over it. All figures are constructed. */
final class BaseCell {

    /** The module is the working folder of its tests. */
    static final Path REFUSALS = Path.of("src", "test", "resources", "refusals");

    static final String EXPECTED = "expected.txt";
    private static final String REMOVE = "remove.txt";
    private static final String JUDGED = "day.txt";
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private BaseCell() {}

    /** A copy of the base cell in an empty folder. */
    static Path copyTo(Path folder) {
        copy(REFUSALS.resolve("base"), folder);
        return folder;
    }

    /**
     * A copy of the base cell with the files of a case in place of its own. A case may name base files to leave out, {@code all} for
     * all of them, and a day to be judged by.
     */
    static Path overlay(Path files, Path folder) throws IOException {
        List<String> without =
                Files.exists(files.resolve(REMOVE)) ? Files.readAllLines(files.resolve(REMOVE)) : List.of();
        if (!without.equals(List.of("all"))) {
            copyTo(folder);
            for (String name : without) {
                Files.delete(folder.resolve(name));
            }
            if (without.contains("functions.yaml")) {
                withoutConfirmationsOfFunctions(folder);
            }
        }
        copy(files, folder);
        return folder;
    }

    /** Nothing rests on what was confirmed for the safety functions, where a case leaves these out. */
    static void withoutConfirmationsOfFunctions(Path folder) throws IOException {
        Path standards = folder.resolve("standards.yaml");
        if (Files.exists(standards)) {
            Files.write(
                    standards,
                    Files.readAllLines(standards).stream()
                            .filter(line -> !line.contains("{value: iso-13849-1-") && !line.contains(".function-"))
                            .toList());
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                if (!Set.of(EXPECTED, REMOVE, JUDGED)
                        .contains(file.getFileName().toString())) {
                    Path target = to.resolve(from.relativize(file).toString());
                    Files.createDirectories(target.getParent());
                    Files.write(target, Files.readAllBytes(file));
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Replaces text that must be there. */
    static void change(Path folder, String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        if (!text.contains(from)) {
            throw new IllegalArgumentException(file + " does not hold " + from);
        }
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    static Verdict check(Path folder) {
        return new Generator().check(new FolderWorld(folder, DAY)).verdict();
    }

    /** The same; where a case names a day, it is judged by that. */
    static Verdict check(Path folder, Path files) throws IOException {
        Path judged = files.resolve(JUDGED);
        Optional<LocalDate> day = Files.exists(judged)
                ? Optional.of(JudgingDay.of(Files.readString(judged).strip()))
                : Optional.empty();
        return new Generator().check(new FolderWorld(folder, DAY), day).verdict();
    }

    static List<String> ids(List<Finding> findings) {
        return findings.stream().map(finding -> finding.id().words()).toList();
    }

    /** What {@code check} prints. */
    static String printed(Verdict verdict) {
        return FindingText.of(verdict.findings()) + FindingText.count(verdict.findings()) + "; " + verdict.outcome()
                + "\n";
    }
}
