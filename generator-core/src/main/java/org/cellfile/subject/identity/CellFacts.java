package org.cellfile.subject.identity;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * Which cell this is, whose, and for what.
 *
 * @param bothUnits whether derived lengths and speeds are printed in millimetres and in inches
 */
public record CellFacts(
        Stated<String> id,
        Stated<String> name,
        Stated<String> site,
        Stated<String> operator,
        Stated<String> integrator,
        Stated<String> revision,
        Stated<LocalDate> asOf,
        Stated<String> page,
        Stated<String> bothUnits,
        Stated<String> emergencyPhone,
        Stated<String> intendedUse,
        List<Stated<String>> limits) {

    /** What a mode of the cell is called where one is named; it is described after all that acts in it. */
    public static final String MODE = "mode";

    /** The cell's short name cannot name a folder. */
    public static final FindingId MALFORMED_ID = new FindingId("cell.malformed-id");

    static CellFacts read(Section cell) {
        CellFacts facts = new CellFacts(
                id(cell),
                cell.text("name"),
                cell.text("site"),
                cell.text("operator"),
                cell.text("integrator"),
                cell.text("revision"),
                cell.date("as-of"),
                cell.wordIfStated("page", Set.of("A4", "Letter")),
                cell.wordIfStated("both-units", Set.of("yes", "no")),
                cell.text("emergency-phone"),
                cell.text("intended-use"),
                cell.texts("limits"));
        cell.close();
        return facts;
    }

    /** How derived values are printed: with {@code both-units} in millimetres and in inches. */
    public Workings workings() {
        return new Workings(bothUnits.value().filter("yes"::equals).isPresent());
    }

    private static Stated<String> id(Section cell) {
        Stated<String> id = cell.text("id");
        if (id.value().isPresent() && !id.characters().matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
            cell.report(Finding.refuses(
                    MALFORMED_ID,
                    "",
                    id.where(),
                    "`" + id.characters() + "` cannot be the short name of a cell",
                    "write lower-case letters, digits and single hyphens; it also names the output folder"));
            return new Stated.Missing<>(id.where(), "id");
        }
        return id;
    }
}
