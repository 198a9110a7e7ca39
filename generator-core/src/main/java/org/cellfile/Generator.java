package org.cellfile;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.check.Checks;
import org.cellfile.dossier.Canonical;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.render.Attachment;
import org.cellfile.render.Attachment.Relationship;
import org.cellfile.render.Renderer;
import org.cellfile.render.Rendering;
import org.cellfile.source.SourceFile;
import org.cellfile.source.World;
import org.cellfile.verdict.Decision;
import org.cellfile.verdict.Printable;
import org.cellfile.verdict.Verdict;

/** The line from a cell's folder to a verdict, and from there to pages. Each step depends only on the one before. */
public final class Generator {

    /**
     * What a check found.
     *
     * @param cell as recomputed; empty when its files left nothing to recompute
     */
    public record Checked(Optional<Cell> cell, Verdict verdict) {}

    /**
     * What a run that prints came to.
     *
     * @param files the bytes of each file by its path in the output folder; empty when the verdict is a refusal
     */
    public record Generated(Optional<Cell> cell, Verdict verdict, Optional<SortedMap<String, byte[]>> files) {

        /** The cell's short name; empty when its files do not tell it. */
        public String cellId() {
            return cell.flatMap(one -> one.identity().facts().id().value()).orElse("");
        }

        /** What came of it, as a sentence without capital and full stop. */
        public String outcome() {
            return verdict instanceof Printable printable
                            && printable.draft()
                            && printable.missing().isEmpty()
                    ? verdict.outcome() + "; these pages are a draft, because no release was asked for"
                    : verdict.outcome();
        }
    }

    /** Reads, derives, checks and decides, and looks at what has fallen due by today. */
    public Checked check(World world) {
        return check(world, Optional.empty());
    }

    /**
     * The same by a day that was asked for.
     *
     * @param day from the one the description speaks of to today, another one is refused; empty for today
     */
    public Checked check(World world, Optional<LocalDate> day) {
        return decide(
                world,
                Optional.of(day.orElse(world.today())),
                List.of(
                        Cell::ledgerFindings,
                        cell -> day.map(asked -> JudgingDay.findings(cell, asked, world.today()))
                                .orElseGet(List::of)));
    }

    /** Recomputes without the day of the run, then lays out every page as a draft; nothing is written. */
    public Generated generate(World world) {
        return print(decide(world, Optional.empty(), List.of(Cell::ledgerFindings)));
    }

    /** Checks, also what has fallen due by today, and lays out every page as a release if nothing bars one. */
    public Generated release(World world) {
        return release(world, Optional.empty());
    }

    /**
     * The same by a day that was asked for.
     *
     * @param day from the one the description speaks of to today, another one is refused; empty for today
     */
    public Generated release(World world, Optional<LocalDate> day) {
        Checked checked = check(world, day.or(() -> Optional.of(world.today())));
        return print(new Checked(checked.cell(), Decision.release(checked.verdict())));
    }

    /** Recomputes without the day of the run and without looking at the ledger, which is to be written anew. */
    Checked recompute(World world) {
        return decide(world, Optional.empty(), List.of());
    }

    private Generated print(Checked checked) {
        if (checked.verdict() instanceof Printable printable && checked.cell().isPresent()) {
            Rendering rendering =
                    new Renderer().render(printable, attachments(checked.cell().get(), printable));
            if (rendering instanceof Rendering.Pages pages) {
                return new Generated(checked.cell(), printable, Optional.of(pages.files()));
            }
            List<Finding> found = new ArrayList<>(printable.findings());
            Cell cell = checked.cell().get();
            ((Rendering.Unprintable) rendering)
                    .findings()
                    .forEach(finding -> found.add(finding.at(cell.place(finding.about()))));
            return new Generated(checked.cell(), Decision.refuse(found), Optional.empty());
        }
        return new Generated(checked.cell(), checked.verdict(), Optional.empty());
    }

    private static Checked decide(World world, Optional<LocalDate> today, List<Function<Cell, List<Finding>>> besides) {
        Findings findings = new Findings();
        Optional<Cell> cell = Cell.read(world, findings);
        cell.ifPresent(one -> {
            findings.addAll(one.findings());
            findings.addAll(Checks.run(one, today));
            besides.forEach(more -> findings.addAll(more.apply(one)));
        });
        Verdict verdict = cell.map(
                        one -> Decision.decide(findings.sorted(), one.deviations(), () -> Composition.compose(one)))
                .orElseGet(() -> Decision.refuse(findings.sorted()));
        return new Checked(cell, verdict);
    }

    private static List<Attachment> attachments(Cell cell, Printable printable) {
        List<Attachment> attachments = new ArrayList<>();
        for (SourceFile file : cell.sources()) {
            attachments.add(new Attachment(
                    file.path(),
                    file.path().endsWith(".csv") ? "text/csv" : "application/yaml",
                    file.text().getBytes(StandardCharsets.UTF_8),
                    "part of the description of the cell",
                    Relationship.SOURCE));
        }
        attachments.add(new Attachment(
                "dossier.json",
                "application/json",
                Canonical.json(printable.dossier()).getBytes(StandardCharsets.UTF_8),
                "everything printed, for machines",
                Relationship.DATA));
        return attachments;
    }
}
