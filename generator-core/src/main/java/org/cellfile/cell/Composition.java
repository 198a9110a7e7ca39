package org.cellfile.cell;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Digest;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Logo;
import org.cellfile.dossier.MadeBy;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Substance;
import org.cellfile.quantity.Interval;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.LogoFile;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;
import org.cellfile.standard.Edition;
import org.cellfile.subject.clearance.ClearanceChapter;
import org.cellfile.subject.complement.Complement;
import org.cellfile.subject.complement.ComplementChapter;
import org.cellfile.subject.due.DueChapter;
import org.cellfile.subject.energy.EnergyChapter;
import org.cellfile.subject.energy.RescueChapter;
import org.cellfile.subject.form.ShiftCheck;
import org.cellfile.subject.form.StopTimeMeasurement;
import org.cellfile.subject.form.YearlyInspection;
import org.cellfile.subject.function.ControlSystem;
import org.cellfile.subject.function.FunctionChapter;
import org.cellfile.subject.function.ReplacementChapter;
import org.cellfile.subject.function.SubsystemChapter;
import org.cellfile.subject.hazard.HazardChapter;
import org.cellfile.subject.hazard.RiskChapter;
import org.cellfile.subject.identity.Confirmation;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.IdentityChapter;
import org.cellfile.subject.mode.ModeChapter;
import org.cellfile.subject.plan.PlanChapter;
import org.cellfile.subject.register.RegisterChapters;
import org.cellfile.subject.safeguard.Deviations;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.MarginsChapter;
import org.cellfile.subject.safeguard.OtherEdition;
import org.cellfile.subject.safeguard.OtherEditionsChapter;
import org.cellfile.subject.safeguard.SafeguardChapters;
import org.cellfile.subject.sheet.Briefing;
import org.cellfile.subject.sheet.SheetChapter;
import org.cellfile.subject.sheet.SignsChapter;
import org.cellfile.subject.signoff.SignOffStatus;
import org.cellfile.subject.signoff.SigningChapter;
import org.cellfile.subject.signoff.SigningWords;
import org.cellfile.subject.stopping.StoppingChapter;
import org.cellfile.subject.verification.Tested;
import org.cellfile.subject.verification.VerificationChapter;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.NotPublic;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Standing.ReadInCopy;

/** From a cell to everything that is printed about it. */
public final class Composition {

    private Composition() {}

    public static Dossier compose(Cell cell) {
        Identity identity = cell.identity();
        return new Dossier(
                IdentityChapter.label(identity.facts()),
                MadeBy.version(),
                chapters(cell),
                sheets(cell),
                forms(cell),
                due(cell),
                cell.derived().values().stream()
                        .map(derived -> new Dossier.Value(
                                derived.tag(),
                                derived.rounded().map(Quantity::toString).orElse(""),
                                derived.unrounded().map(Quantity::toString).orElse("")))
                        .toList(),
                signable(cell),
                cell.sheets().logo().map(LogoFile::logo).orElse(Logo.NONE),
                releasedBy(cell));
    }

    /** The latest who did. */
    private static String releasedBy(Cell cell) {
        return cell.signing().signed().stream()
                .filter(one -> one.status() == SignOffStatus.VALID
                        && one.signOff().covers().characters().equals(Substance.WHOLE)
                        && one.signOff().words().value().equals(Optional.of(SigningWords.RELEASED)))
                .reduce((earlier, later) -> later)
                .map(one -> cell.identity().nameOf(one.signOff().by()) + " (role: "
                        + one.signOff().role().characters() + ") on "
                        + one.signOff().on().characters() + (one.proven() ? "" : " (typed, not proven)"))
                .orElse("");
    }

    /** The pages that are posted at the cell. */
    public static List<Sheet> sheets(Cell cell) {
        return cell.posted().sheets();
    }

    private static List<Dossier.Signable> signable(Cell cell) {
        Substance substance = cell.substance();
        Map<String, String> carried = cell.copies().carried();
        List<Dossier.Signable> signable = new ArrayList<>();
        signable.add(new Dossier.Signable(Substance.WHOLE, substance.digest(), !carried.isEmpty()));
        substance
                .parts()
                .forEach(part -> signable.add(
                        new Dossier.Signable(part.chapter(), part.digest(), carried.containsKey(part.chapter()))));
        return signable;
    }

    private static List<Dossier.Due> due(Cell cell) {
        Stated<Interval> ahead = cell.identity().dates().warnAhead();
        return cell.dues().stream()
                .map(due -> new Dossier.Due(
                        due.on().toString(),
                        ahead.value()
                                .map(interval -> interval.before(due.on()))
                                .orElse(due.on())
                                .toString(),
                        due.tag(),
                        due.what(),
                        due.source()))
                .distinct()
                .toList();
    }

    private static List<Form> forms(Cell cell) {
        Identity identity = cell.identity();
        String responsible = identity.nameOf(cell.sheets().responsible());
        List<Tested> tested = new ArrayList<>();
        cell.safeguards().forEach(guarding -> tested.add(Tested.of(guarding.safeguard())));
        cell.complementary().forEach(complement -> tested.add(Tested.of(complement.device())));
        identity.robots().forEach(robot -> tested.add(Tested.of(robot)));
        List<Form> forms = new ArrayList<>(List.of(
                ShiftCheck.form(tested, responsible),
                YearlyInspection.form(tested, cell.modes(), identity.robots()),
                StopTimeMeasurement.form(
                        cell.stops(),
                        cell.safeguards(),
                        identity.standards().stopMeasurement().orElseThrow(),
                        identity,
                        responsible)));
        forms.addAll(cell.posted().records());
        return forms;
    }

    private static List<Chapter> chapters(Cell cell) {
        Identity identity = cell.identity();
        Workings workings = identity.facts().workings();
        List<Edition> compared = identity.standards().compared();
        List<Chapter> chapters = new ArrayList<>();
        chapters.add(IdentityChapter.identity(identity, cell.robots()));
        chapters.add(HazardChapter.chapter(cell.zones(), identity));
        chapters.add(RiskChapter.chapter(cell.risks(), named(cell)));
        chapters.add(
                ClearanceChapter.chapter(cell.clearances(), identity, tag -> Deviations.about(tag, cell.deviations())));
        chapters.add(SafeguardChapters.safeguards(cell.safeguards(), cell.deviations(), identity));
        chapters.add(SafeguardChapters.distances(cell.safeguards(), workings));
        cell.layout()
                .ifPresent(
                        layout -> chapters.add(PlanChapter.chapter(layout, cell.modes(), cell.registers(), identity)));
        chapters.add(MarginsChapter.chapter(cell.safeguards(), workings));
        if (!compared.isEmpty()) {
            chapters.add(OtherEditionsChapter.chapter(cell.safeguards(), compared, workings));
        }
        chapters.add(ComplementChapter.chapter(cell.complementary(), cell.deviations()));
        Optional<ControlStandard> control =
                identity.standards().inForce(ControlStandard.class).stream().findFirst();
        ControlSystem system = cell.controlSystem();
        if (!system.recomputed().isEmpty()) {
            control.ifPresent(standard -> {
                chapters.add(FunctionChapter.chapter(system.functions(), standard));
                chapters.add(SubsystemChapter.chapter(system, standard, workings));
            });
        }
        chapters.add(ModeChapter.chapter(
                cell.operations(),
                cell.safeguards().stream().map(Guarding::safeguard).toList(),
                cell.complementary().stream().map(Complement::device).toList()));
        chapters.add(EnergyChapter.chapter(cell.energies(), identity));
        chapters.add(RescueChapter.chapter(cell.rescue(), identity.facts()));
        chapters.add(SignsChapter.chapter(cell.toPost()));
        chapters.add(VerificationChapter.chapter(cell.verification()));
        chapters.add(StoppingChapter.chapter(cell.trends(), identity));
        chapters.add(RegisterChapters.configurations(cell.registers(), identity));
        chapters.add(RegisterChapters.registers(
                cell.registers(), ComplementChapter.emergencyStops(cell.complementary()), identity));
        if (!cell.sheets().briefings().isEmpty()) {
            chapters.add(Briefing.chapter(cell.sheets().briefings(), identity));
        }
        chapters.add(SheetChapter.chapter(cell.posted(), identity));
        if (!system.dues().isEmpty()) {
            control.ifPresent(standard -> identity.facts()
                    .asOf()
                    .value()
                    .ifPresent(asOf -> chapters.add(ReplacementChapter.chapter(
                            system, standard, asOf, identity.dates().warnAhead()))));
        }
        identity.facts().asOf().value().ifPresent(asOf -> chapters.add(DueChapter.chapter(cell.dues(), asOf)));
        chapters.add(Deviations.chapter(cell.deviations()));
        chapters.add(register(cell));
        chapters.add(notCovered());
        chapters.add(cautions());
        chapters.add(SigningChapter.chapter(cell.signing(), cell.copies().isCopy(), titles(chapters)));
        chapters.add(IdentityChapter.revisions(identity));
        chapters.add(sources(cell));
        return CopyNotes.in(chapters, cell);
    }

    /** Safeguards and complementary devices with their names, in the order they are described. */
    private static Map<String, String> named(Cell cell) {
        Map<String, String> named = new LinkedHashMap<>();
        cell.safeguards()
                .forEach(one -> named.put(one.tag(), one.safeguard().name().characters()));
        cell.complementary()
                .forEach(one -> named.put(one.tag(), one.device().name().characters()));
        return named;
    }

    /** Every fixed value and table the derived values rest on, and every rule in words a device, a subsystem or a mode was held against. */
    public static Set<Reference> references(Cell cell) {
        Set<Reference> references = inOrder();
        cell.derived().values().forEach(derived -> references.addAll(derived.references()));
        cell.complementary().forEach(device -> references.addAll(device.rules()));
        cell.controlSystem().subsystems().forEach(subsystem -> references.addAll(subsystem.rules()));
        cell.operations().forEach(mode -> references.addAll(mode.rules()));
        cell.controlSystem().functions().forEach(function -> references.addAll(function.rules()));
        return new LinkedHashSet<>(references);
    }

    /** What only the values under editions named for comparison rest on. */
    private static Set<Reference> comparedReferences(Cell cell) {
        Set<Reference> references = inOrder();
        for (Edition edition : cell.identity().standards().compared()) {
            OtherEdition.of(cell.safeguards(), edition)
                    .forEach(row -> row.under().derived().forEach(derived -> references.addAll(derived.references())));
        }
        references.removeAll(references(cell));
        return references;
    }

    /** A value that depends on the safeguard stands there once for each, and a table with each standing it has. */
    private static Set<Reference> inOrder() {
        return new TreeSet<>(Comparator.comparing(Reference::id)
                .thenComparing(Reference::name)
                .thenComparing(reference -> reference.standing().words()));
    }

    private static Chapter register(Cell cell) {
        Set<Reference> compared = comparedReferences(cell);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Values and rules that a standard fixes, as this program holds them. \"Published\" names where the value was"
                        + " read in public; \"from memory\" means that no public source was found, and that a named"
                        + " person who holds the standard has to confirm it; \"read in a copy\" means that such a"
                        + " person stated it and it was used, with what is held here beside it; \"not publicly"
                        + " known\" means that only a copy can tell. Clause numbers are from memory where nobody"
                        + " stated them from a copy; the standard itself governs."));
        if (!compared.isEmpty()) {
            blocks.add(new Paragraph(
                    "Values used for comparison only stand in a table of their own at the end. Nothing about"
                            + " the cell rests on them, so none of them has to be confirmed."));
        }
        blocks.add(used(references(cell), cell.identity()));
        if (!compared.isEmpty()) {
            blocks.add(compared(compared));
        }
        return new Chapter("register", "Register of fixed values", blocks);
    }

    private static Table used(Set<Reference> references, Identity identity) {
        return new Table(
                "Fixed values, tables and rules used",
                List.of(
                        Column.text("Value", 4),
                        Column.text("What it is", 5),
                        Column.text("Edition and clause", 4),
                        Column.text("Standing", 6),
                        Column.text("Confirmed by", 4)),
                references.stream()
                        .map(reference -> List.of(
                                reference.id(),
                                reference.name(),
                                reference.clause().toString(),
                                reference.standing().words(),
                                confirmed(reference, identity)))
                        .toList());
    }

    private static Table compared(Set<Reference> references) {
        return new Table(
                "Used for comparison only",
                List.of(
                        Column.text("Value", 4),
                        Column.text("What it is", 5),
                        Column.text("Edition and clause", 4),
                        Column.text("Standing", 10)),
                references.stream()
                        .map(reference -> List.of(
                                reference.id(),
                                reference.name(),
                                reference.clause().toString(),
                                reference.standing().words()))
                        .toList());
    }

    private static String confirmed(Reference reference, Identity identity) {
        if (reference.standing() instanceof ReadInCopy read) {
            return read.by() + ", " + read.on() + ", " + read.copy();
        }
        if (reference.standing() instanceof NotPublic) {
            return "asked for";
        }
        return confirmation(reference, identity)
                .map(one -> identity.nameOf(one.by()) + ", " + one.on().characters() + ", "
                        + one.copy().characters())
                .or(() -> readAlike(reference, identity))
                .orElse(reference.fromMemory() ? "nobody yet" : "–");
    }

    /** Who read a published value in a copy: it is the same there, as another one is refused. */
    private static Optional<String> readAlike(Reference reference, Identity identity) {
        return identity.copyValues().stream()
                .filter(one -> reference.standing() instanceof Published
                        && one.value().characters().equals(reference.id()))
                .findFirst()
                .map(one -> identity.nameOf(one.by()) + ", " + one.on().characters() + ", "
                        + one.copy().characters());
    }

    /** The confirmation of a value, if somebody gave one. */
    public static Optional<Confirmation> confirmation(Reference reference, Identity identity) {
        return identity.confirmations().stream()
                .filter(one -> one.value().characters().equals(reference.id()))
                .findFirst();
    }

    private static Chapter notCovered() {
        return new Chapter(
                "not-covered",
                "What this file does not cover",
                List.of(
                        new Paragraph("The following is not recomputed here and has to be settled elsewhere:"),
                        new Points(List.of(
                                "whether the hazards listed are all there are, whether they were judged rightly, and whether what"
                                        + " remains of them can be left: that is for those who assessed the risks",
                                "the figures of makers, the category and the monitoring stated for a subsystem, faults that were ruled"
                                        + " out, failures that are systematic, the software of safety functions and their validation",
                                "muting, fields that are switched, and whatever else suspends a safeguard while the cell runs",
                                "collaborative operation beyond the measured values and limits listed for its mode: contact with the"
                                        + " robot, distances that change with speed and position, hand guiding",
                                "vertical movements: axes that sink when their drive lets go, loads that fall, approach from"
                                        + " above or below",
                                "children under 14 years, and persons who run, jump, fall or climb",
                                "reaching under a field, passing around the side of one, and the measures named against passing below or"
                                        + " standing behind it",
                                "that an opening in a guard is covered on all sides by the safeguard named for it",
                                "getting out from behind a locked guard, and freeing somebody who is caught",
                                "what the makers' instructions of a safeguard ask beyond the facts and rules listed here",
                                "gaps in which somebody can be crushed and that are not listed as clearances, gaps between two moving parts,"
                                        + " and the measures named in place of a gap",
                                "whether the modes work at the machine as the matrix of modes has it, the change from one to another,"
                                        + " and observation from close by",
                                "emergency stops, enabling devices, mode selectors and resets beyond the facts and rules listed here:"
                                        + " their circuits, their function, and whether there are enough of them",
                                "ejected parts, radiation, noise, heat, substances, electrical equipment",
                                "whether the files describe the machine as it stands: that is for those who sign"))));
    }

    private static Chapter cautions() {
        return new Chapter(
                "cautions",
                "Cautions",
                List.of(
                        new Box(
                                Tone.CAUTION,
                                "A robot can kill",
                                List.of(new Points(List.of(
                                        "Enter the cell only as its operating instructions allow. A stop that looks complete is"
                                                + " not one: energy may be stored, and movement may start again.",
                                        "A figure in this file is right only for the tool, part, speed and software it names.",
                                        "After any change, have the values recomputed, the stop measured and every safeguard"
                                                + " tested before the cell is used again.",
                                        "Never defeat, bridge or bypass a safeguard. Report one that was defeated.")))),
                        new Paragraph(
                                "This file was computed from what named people stated. Where it says that a value was recomputed and"
                                        + " agrees with the recorded value, it says that and no more: it does not say that the"
                                        + " cell may be used. That is for the people who sign, under the law of the place."),
                        new Paragraph(
                                "Laws and codes of the place where the cell stands, the standards themselves and the makers'"
                                        + " instructions govern over anything printed here. Work that the law reserves for"
                                        + " licensed or competent persons stays with them.")));
    }

    private static Map<String, String> titles(List<Chapter> chapters) {
        Map<String, String> titles = new LinkedHashMap<>();
        chapters.forEach(chapter -> titles.put(chapter.id(), chapter.title()));
        titles.put("revisions", "Revisions");
        return titles;
    }

    private static Chapter sources(Cell cell) {
        Table table = new Table(
                "Files this description was read from, attached to this PDF",
                List.of(Column.text("File", 5), Column.figures("Lines", 1), Column.text("SHA-256", 14)),
                cell.sources().stream()
                        .map(file ->
                                List.of(file.path(), String.valueOf(file.lines().size()), Digest.sha256(file.text())))
                        .toList());
        return new Chapter(
                "sources",
                "Sources",
                List.of(
                        new Paragraph(
                                "Whoever has only this PDF can save the attached files, run the generator on them and compare (keep their names; where a name holds a"
                                        + " folder, make that folder first). The"
                                        + " places given beside each input are lines and columns of these files."),
                        table));
    }
}
