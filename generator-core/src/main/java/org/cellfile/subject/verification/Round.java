package org.cellfile.subject.verification;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.cellfile.read.Evidence;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Missing;
import org.cellfile.subject.identity.CellFacts;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.register.Bypass;

/**
 * Tests that one person did on one day in one mode.
 *
 * @param countersignedBy somebody else, who saw the record; missing where nobody did
 * @param occasion why it was tested
 * @param instrument with which something was measured; missing where nothing was
 * @param neutralised the bypass by which the path that is no safety function was put out of action
 * @param noOtherPath why there is no such path
 */
public record Round(
        Stated<String> tag,
        Stated<LocalDate> on,
        Stated<String> by,
        Stated<String> countersignedBy,
        Stated<String> occasion,
        Stated<String> mode,
        Stated<String> instrument,
        Stated<String> neutralised,
        Stated<String> noOtherPath,
        List<Evidence> evidence,
        List<Result> results) {

    public static final String SORT = "round of tests";

    /** The first three: German technical rule on tests of work equipment, TRBS 1201, section 8.3 (published). */
    private static final Set<String> OCCASIONS = Set.of("first use", "recurring", "after change", "after repair");

    static Round read(Section section) {
        Stated<String> tag = section.tag(SORT);
        boolean bypassed = section.has("neutralised");
        return new Round(
                tag,
                section.date("on"),
                section.reference("by", Person.SORT),
                section.referenceIfStated("countersigned-by", Person.SORT),
                section.word("occasion", OCCASIONS),
                section.reference("mode", CellFacts.MODE),
                section.referenceIfStated("instrument", Instrument.SORT),
                section.referenceIfStated("neutralised", Bypass.SORT),
                bypassed ? new Missing<>(section.where(), "no-other-path") : section.statementIfStated("no-other-path"),
                section.evidence("evidence"),
                Section.each(section.list("results"), Result::read));
    }

    /** True when it says what became of the path that is no safety function. */
    boolean tellsOtherPath() {
        return neutralised.value().isPresent() || noOtherPath.value().isPresent();
    }

    /** What became of that path, for print. */
    String otherPath() {
        return neutralised
                .value()
                .map(bypass -> "neutralised by " + bypass)
                .or(() -> noOtherPath.value().map(reason -> "none: " + reason))
                .orElse("not stated");
    }
}
