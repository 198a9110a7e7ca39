package org.cellfile.cell;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.SignatureLine;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Digest;
import org.cellfile.dossier.Dossier;
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.clearance.ClearanceChapter;
import org.cellfile.subject.hazard.HazardChapter;
import org.cellfile.subject.identity.Confirmation;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.IdentityChapter;
import org.cellfile.subject.safeguard.Deviations;
import org.cellfile.subject.safeguard.SafeguardChapters;
import org.cellfile.subject.stopping.StoppingChapter;
import org.cellfile.trace.Reference;

/** From a cell to everything that is printed about it. */
public final class Composition {

    private Composition() {}

    public static Dossier compose(Cell cell) {
        Identity identity = cell.identity();
        List<Chapter> chapters = List.of(
                IdentityChapter.identity(identity, cell.robots()),
                HazardChapter.chapter(cell.zones(), identity),
                ClearanceChapter.chapter(cell.clearances(), identity, tag -> Deviations.about(tag, cell.deviations())),
                SafeguardChapters.safeguards(cell.safeguards(), cell.deviations(), identity),
                SafeguardChapters.distances(cell.safeguards()),
                StoppingChapter.chapter(cell.stops(), identity),
                Deviations.chapter(cell.deviations()),
                register(cell),
                notCovered(),
                cautions(),
                signatures(),
                IdentityChapter.revisions(identity),
                sources(cell));
        return new Dossier(
                IdentityChapter.label(identity.facts()),
                chapters,
                List.of(cell.automaticOperation().sheet(identity, cell.zones(), cell.safeguards())),
                cell.derived().values().stream()
                        .map(derived -> new Dossier.Value(
                                derived.tag(),
                                derived.rounded().map(Quantity::toString).orElse(""),
                                derived.value()
                                        .map(Quantity::plain)
                                        .map(Quantity::toString)
                                        .orElse("")))
                        .toList());
    }

    /** Every fixed value and table the derived values rest on. */
    public static Set<Reference> references(Cell cell) {
        Set<Reference> references = new TreeSet<>(java.util.Comparator.comparing(Reference::id));
        cell.derived().values().forEach(derived -> references.addAll(derived.references()));
        return new LinkedHashSet<>(references);
    }

    private static Chapter register(Cell cell) {
        Table table = new Table(
                "Fixed values and tables used",
                List.of(
                        Column.text("Value", 4),
                        Column.text("What it is", 5),
                        Column.text("Edition and clause", 4),
                        Column.text("Standing", 6),
                        Column.text("Confirmed by", 4)),
                references(cell).stream()
                        .map(reference -> List.of(
                                reference.id(),
                                reference.name(),
                                reference.clause().toString(),
                                reference.standing().words(),
                                confirmed(reference, cell.identity())))
                        .toList());
        return new Chapter(
                "register",
                "Register of fixed values",
                List.of(
                        new Paragraph(
                                "Values that a standard fixes, as this program holds them. \"Published\" names where the value was"
                                        + " read in public; \"from memory\" means that no public source was found, and that a named"
                                        + " person who holds the standard has to confirm it. Clause numbers are from memory"
                                        + " throughout; the standard itself governs."),
                        table));
    }

    private static String confirmed(Reference reference, Identity identity) {
        Optional<Confirmation> confirmation = confirmation(reference, identity);
        return confirmation
                .map(one -> identity.nameOf(one.by()) + ", " + one.on().characters() + ", "
                        + one.copy().characters())
                .orElse(reference.fromMemory() ? "nobody yet" : "–");
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
                                "the risk assessment, the performance levels of the safety functions and the residual risks",
                                "reaching under a field, passing around the side of one, and the measures named against passing below or"
                                        + " standing behind it",
                                "that an opening in a guard is covered on all sides by the safeguard named for it",
                                "muting and fields that are switched",
                                "gaps in which somebody can be crushed and that are not listed as clearances, gaps between two moving parts,"
                                        + " and the measures named in place of a gap",
                                "other modes than automatic, except the limit of manual reduced speed",
                                "emergency stops, enabling devices, mode selectors and reset",
                                "ejected parts, radiation, noise, heat, substances, electrical equipment",
                                "whether the tests of the safeguards were done and are due again",
                                "whether the stops were measured with the load, speed and mode now in use",
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

    private static Chapter signatures() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Paragraph("By signing, a person answers for what the words say, for this revision and no other."));
        blocks.add(new SignatureLine("Measured and recorded", "who measured the stops and the distances"));
        blocks.add(new SignatureLine("Checked", "somebody other than who measured"));
        blocks.add(new SignatureLine("Handed over", "the integrator"));
        blocks.add(new SignatureLine("Released for use", "the plant"));
        return new Chapter("signatures", "Signatures", blocks);
    }

    private static Chapter sources(Cell cell) {
        Table table = new Table(
                "Files this description was read from, attached to this PDF",
                List.of(Column.text("File", 4), Column.figures("Lines", 1), Column.text("SHA-256", 7)),
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
