package org.cellfile;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.compare.Compared;
import org.cellfile.compare.State;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingText;
import org.cellfile.read.Evidence;
import org.cellfile.source.World;
import org.cellfile.verdict.Decision;
import org.cellfile.verdict.Refused;
import org.cellfile.verdict.Verdict;

/** Reads two states of a cell and holds them against each other. */
public final class Comparison {

    private Comparison() {}

    /**
     * Where a state is found.
     *
     * @param words for people
     * @param name the same in short, without the folders of the machine it lies on, as it is handed on
     * @param withEvidence false where files of evidence were never part of it
     */
    public record Source(String words, String name, World world, boolean withEvidence) {}

    /** What came of it. */
    public sealed interface Outcome {}

    /** Both were read. */
    public record Told(Compared compared) implements Outcome {}

    /** One of them leaves nothing to compare. */
    public record Unread(String source, List<Finding> findings) implements Outcome {}

    /** The state in a folder, or in the safety file that was printed of it. */
    public static Source at(Path path) throws NoSuchState {
        if (Files.isDirectory(path)) {
            return new Source("folder " + path, "folder " + name(path), FolderWorld.of(path), true);
        }
        if (!Files.exists(path)) {
            throw new NoSuchState("there is no folder and no PDF " + path);
        }
        return new Source(
                "sources embedded in " + path, "sources embedded in " + name(path), EarlierPdf.of(path), false);
    }

    /** The state of a folder in a revision of the Git repository it lies in. */
    public static Source since(Path folder, String revision) throws NoSuchState {
        GitWorld world = GitWorld.of(folder, revision);
        String which = "revision " + revision + " (commit " + world.commit() + ") of folder ";
        return new Source(which + folder, which + name(folder), world, true);
    }

    private static String name(Path path) {
        return String.valueOf(path.toAbsolutePath().normalize().getFileName());
    }

    /** Reads both, at the same time, and compares them. */
    public static Outcome of(Source older, Source newer) {
        CompletableFuture<Read> reading = CompletableFuture.supplyAsync(() -> read(older));
        Read after = read(newer);
        Read before = reading.join();
        if (before.state.isEmpty()) {
            return new Unread(older.words(), before.verdict.findings());
        }
        if (after.state.isEmpty()) {
            return new Unread(newer.words(), after.verdict.findings());
        }
        return new Told(Compared.of(before.state.get(), after.state.get()));
    }

    private record Read(Optional<State> state, Verdict verdict) {}

    private static Read read(Source source) {
        Generator.Checked checked = new Generator().undated(source.world());
        Verdict verdict = checked.cell()
                .filter(cell -> !source.withEvidence())
                .map(cell -> withoutEvidence(cell, checked.verdict()))
                .orElse(checked.verdict());
        return new Read(
                checked.cell()
                        .map(cell -> State.of(
                                source.name(),
                                cell,
                                verdict instanceof Refused
                                        ? Optional.of(FindingText.count(verdict.findings()))
                                        : Optional.empty())),
                verdict);
    }

    /** That files of evidence are not embedded is no fault of the state. */
    private static Verdict withoutEvidence(Cell cell, Verdict verdict) {
        return Decision.decide(
                verdict.findings().stream()
                        .filter(finding -> !finding.id().equals(Evidence.NOT_THERE))
                        .toList(),
                List.of(),
                () -> Composition.compose(cell));
    }
}
