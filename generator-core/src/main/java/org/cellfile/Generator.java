package org.cellfile;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import org.cellfile.audit.Examination;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.cell.OutsideCopy;
import org.cellfile.check.BarCopy;
import org.cellfile.check.Checks;
import org.cellfile.dossier.Canonical;
import org.cellfile.dossier.Printed;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.render.Attachment;
import org.cellfile.render.Attachment.Relationship;
import org.cellfile.render.Renderer;
import org.cellfile.render.Rendering;
import org.cellfile.source.SourceFile;
import org.cellfile.source.World;
import org.cellfile.subject.signoff.InternalPart;
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

    /** Reads, derives, checks and decides as far as it does not depend on the day of the run: what pages are printed from. */
    public Checked undated(World world) {
        return decide(world, Optional.empty(), List.of(Cell::ledgerFindings));
    }

    /** The same of sources that came embedded in a safety file: that parts were left out of a copy does not bar what it was. */
    Checked received(World world) {
        Checked checked = undated(world);
        if (!(checked.verdict() instanceof Printable printable)) {
            return checked;
        }
        List<Finding> found = printable.findings().stream()
                .filter(finding -> !finding.id().equals(BarCopy.ID))
                .toList();
        return new Checked(checked.cell(), Decision.decide(found, List.of(), printable::dossier));
    }

    /** Recomputes without the day of the run, then lays out every page as a draft; nothing is written. */
    public Generated generate(World world) {
        return print(undated(world));
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
    Checked withoutLedger(World world) {
        return decide(world, Optional.empty(), List.of());
    }

    /** The path of the safety file of a cell in the output folder. */
    public static String safetyFile(Cell cell) {
        return cell.identity().facts().id().characters() + "-safety-file.pdf";
    }

    /** Lays out every page of what was recomputed. */
    Generated print(Checked checked) {
        if (checked.verdict() instanceof Printable printable && checked.cell().isPresent()) {
            Shown shown = shown(checked.cell().get(), printable);
            Rendering rendering = new Renderer()
                    .render(
                            shown.printable(),
                            attachments(shown.cell(), shown.printable()),
                            PostedTypefaces.of(shown.cell().sheets()).usable());
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

    /** What is printed and embedded: the cell as described, or a copy without its internal parts. */
    private record Shown(Cell cell, Printable printable) {}

    /** A description that is such a copy already is printed as it is. */
    private static Shown shown(Cell cell, Printable printable) {
        if (!cell.copies().withoutInternalParts() || cell.copies().isCopy()) {
            return new Shown(cell, printable);
        }
        Findings findings = new Findings();
        Cell copy = withoutInternalParts(cell, findings);
        findings.addAll(copy.findings());
        findings.addAll(Checks.run(copy, Optional.empty()));
        return new Shown(
                copy, Decision.copy(printable, findings.sorted(), copy.deviations(), () -> Composition.compose(copy)));
    }

    /** What of a cell its pages are printed from. */
    static Cell printed(Cell cell) {
        return cell.copies().withoutInternalParts() && !cell.copies().isCopy()
                ? withoutInternalParts(cell, new Findings())
                : cell;
    }

    private static Cell withoutInternalParts(Cell cell, Findings findings) {
        return Cell.read(OutsideCopy.world(cell, InternalPart.of(cell.copies())), findings)
                .orElseThrow();
    }

    private static Checked decide(World world, Optional<LocalDate> today, List<Function<Cell, List<Finding>>> besides) {
        Findings findings = new Findings();
        Optional<Cell> cell = Cell.read(world, findings);
        cell.ifPresent(one -> {
            findings.addAll(one.findings());
            findings.addAll(Checks.run(one, today));
            findings.addAll(PostedTypefaces.of(one.sheets()).findings(one.posted()));
            besides.forEach(more -> findings.addAll(more.apply(one)));
        });
        Verdict verdict = cell.map(
                        one -> Decision.decide(findings.sorted(), one.deviations(), () -> Composition.compose(one)))
                .orElseGet(() -> Decision.refuse(findings.sorted()));
        return new Checked(cell, verdict);
    }

    /** What is embedded in the safety file. */
    public static List<Attachment> attachments(Cell cell, Printable printable) {
        List<Attachment> attachments = new ArrayList<>();
        for (SourceFile file : cell.sources()) {
            attachments.add(new Attachment(
                    file.path(),
                    mediaType(file.path()),
                    file.text().getBytes(StandardCharsets.UTF_8),
                    "part of the description of the cell",
                    Relationship.SOURCE));
        }
        cell.sheets()
                .logo()
                .ifPresent(logo -> attachments.add(new Attachment(
                        logo.path(), logo.mediaType(), logo.content(), "the logo on the sheets", Relationship.SOURCE)));
        cell.sheets()
                .inLanguages()
                .files()
                .forEach((path, bytes) -> attachments.add(new Attachment(
                        path, "font/ttf", bytes, "typeface of a language of the sheets", Relationship.SOURCE)));
        attachments.add(
                json(Examination.DOSSIER, Canonical.json(printable.dossier()), "everything printed, for machines"));
        attachments.add(
                json(Examination.PRINTED, Canonical.json(printed(printable)), "how it was printed, for machines"));
        return attachments;
    }

    private static String mediaType(String path) {
        if (path.endsWith(".csv")) {
            return "text/csv";
        }
        return path.endsWith(".txt") || path.endsWith(".properties") ? "text/plain" : "application/yaml";
    }

    private static Attachment json(String name, String text, String description) {
        return new Attachment(
                name, "application/json", text.getBytes(StandardCharsets.UTF_8), description, Relationship.DATA);
    }

    private static Printed printed(Printable printable) {
        return new Printed(
                printable.draft() ? Printed.DRAFT : Printed.RELEASED,
                printable.missing().stream().map(Finding::sentence).toList());
    }
}
