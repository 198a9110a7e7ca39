package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Position;

/**
 * The space between a field and the machine, in which somebody might stand undetected.
 *
 * @param gap from the field to the machine
 * @param measure against standing there, if one is taken
 */
public record Behind(Stated<Quantity> gap, Stated<String> measure) {

    /** Somebody can stand between field and machine. */
    static final FindingId STANDING = new FindingId("installed.standing-behind");

    /** Reads the group of that name in a safeguard. */
    static Behind read(Section safeguard) {
        Section section = safeguard.section("behind");
        Behind behind = new Behind(section.quantity("gap", Dimension.LENGTH), section.statementIfStated("measure"));
        section.close();
        return behind;
    }

    List<Fact> facts() {
        String between = gap.characters() + " between field and machine";
        return List.of(measure.value()
                .map(taken -> new Fact("Gap behind", between, "against standing there: " + taken))
                .orElseGet(() -> new Fact("Gap behind", between)));
    }

    /** The claim that nobody can stand there; none where the edition has no limit, or where a measure is taken. */
    Optional<Claim> claim(Position position) {
        return position.limit("greatest-gap-behind")
                .filter(limit -> measure.value().isEmpty())
                .map(limit -> new Claim(
                        "gap behind the field",
                        gap,
                        Relation.AT_MOST,
                        limit,
                        STANDING,
                        "close the gap, or state under `behind` as `measure` what detects who stands there or keeps the machine from"
                                + " starting"));
    }
}
