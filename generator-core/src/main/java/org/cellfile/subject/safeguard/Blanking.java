package org.cellfile.subject.safeguard;

import java.util.Optional;
import java.util.Set;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.trace.Given;

/**
 * Beams that are switched off for what has to stand in the field.
 *
 * @param effective resolution with these beams switched off
 * @param barricaded whether a solid part fills the place of the beams that are switched off, so that nobody reaches through there
 */
record Blanking(Stated<Quantity> effective, Stated<String> barricaded, Stated<String> source) {

    /** The effective resolution is stated finer than the device's own. */
    static final FindingId FINER = new FindingId("light-curtain.blanking-finer");

    /** Reads {@code blanking}, if it is stated. */
    static Optional<Blanking> read(Section safeguard, String tag, Stated<Quantity> resolution) {
        return safeguard.sectionIfStated("blanking").map(section -> {
            Blanking blanking = new Blanking(
                    section.positive("effective-resolution", Dimension.LENGTH),
                    section.word("barricaded", Set.of("yes", "no")),
                    section.text("source"));
            section.close();
            if (blanking.finerThan(resolution)) {
                section.report(Finding.refuses(
                        FINER,
                        tag,
                        blanking.effective.where(),
                        "the effective resolution of `" + tag + "` with blanked beams is "
                                + blanking.effective.characters() + ", finer than its resolution of "
                                + resolution.characters(),
                        "take the effective resolution from the table in the curtain's instructions"));
            }
            return blanking;
        });
    }

    private boolean finerThan(Stated<Quantity> resolution) {
        return effective
                .value()
                .flatMap(blanked -> resolution.value().map(whole -> blanked.compareTo(whole) < 0))
                .orElse(false);
    }

    /** The resolution that counts. */
    Given counted(Stated<Quantity> resolution) {
        boolean closed = barricaded.value().filter("yes"::equals).isPresent();
        return closed
                ? new Given("d", "resolution, the blanked gap being barricaded", resolution)
                : new Given("d", "effective resolution with blanked beams, " + source.characters(), effective);
    }

    Fact fact() {
        boolean closed = barricaded.value().filter("yes"::equals).isPresent();
        return new Fact(
                "Blanking",
                "effective resolution " + effective.characters() + (closed ? ", blanked gap barricaded" : ""),
                (closed ? "the device's own resolution counts; " : "the effective resolution counts; ")
                        + source.characters());
    }
}
