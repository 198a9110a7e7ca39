package org.cellfile.subject.hazard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Exposure;

/**
 * A hazard somebody meets in a task, what is done against it, and what remains.
 *
 * @param zones where it hurts
 * @param before the exposure with nothing done against it
 * @param after the exposure with all measures taken
 */
public record Hazard(
        Stated<String> tag,
        Stated<String> task,
        Stated<String> hazard,
        List<Stated<String>> zones,
        Exposure before,
        List<Measure> measures,
        Exposure after,
        List<Residual> residual,
        Recorded recorded) {

    public static final String SORT = "hazard";

    /** No hazard of the cell is described. */
    public static final FindingId MISSING = new FindingId("hazard.missing");

    /** Nothing is done against it. */
    public static final FindingId NO_MEASURE = new FindingId("hazard.no-measure");

    /** Something is said to safeguard, and no safeguard is named. */
    public static final FindingId NAMES_NO_SAFEGUARD = new FindingId("hazard.names-no-safeguard");

    /** Something remains, and nobody says what. */
    public static final FindingId NO_RESIDUAL = new FindingId("hazard.no-residual");

    /** The least exposure there is; with it nothing has to remain. */
    private static final String LEAST = "S1-F1-P1";

    /** Things that can safeguard are described after the hazards; these are their sorts. */
    private static final List<String> SAFEGUARDING = List.of("safeguard", "complementary device");

    public static final String DESIGN = "design";
    public static final String SAFEGUARDED = "safeguarding";
    public static final String INFORMATION = "information";

    /** The three steps of ISO 12100, 6.1, in their order. */
    public static final List<String> SORTS = List.of(DESIGN, SAFEGUARDED, INFORMATION);

    /**
     * Something done against it.
     *
     * @param sort {@code design} for inherently safe design, {@code safeguarding}, {@code information} for information for use
     * @param by tags of what safeguards
     */
    public record Measure(Stated<String> sort, Stated<String> measure, List<Stated<String>> by) {
        static Measure read(Section section, String hazard) {
            Measure measure = new Measure(
                    section.word("sort", SORTS),
                    section.statement("measure"),
                    section.referencesIfStated("by", SAFEGUARDING));
            if (measure.is(SAFEGUARDED) && section.without("by")) {
                section.report(Finding.refuses(
                        NAMES_NO_SAFEGUARD,
                        hazard,
                        measure.measure.where(),
                        "a safeguarding measure against `" + hazard + "` names no safeguard",
                        "name under `by` the safeguards that carry it out; where nothing at the machine does, it is a measure of"
                                + " another sort"));
            }
            return measure;
        }

        /** True when it is of that sort. */
        public boolean is(String which) {
            return sort.value().filter(which::equals).isPresent();
        }
    }

    /**
     * What remains, and what people are told about it.
     *
     * @param posted whether it stands on the sheets at the cell
     */
    public record Residual(Stated<String> risk, Stated<String> instruction, Stated<String> posted) {
        static Residual read(Section section) {
            return new Residual(
                    section.statement("risk"),
                    section.statement("instruction"),
                    section.word("posted", Set.of("yes", "no")));
        }

        /** True when it stands on the sheets. */
        public boolean onSheets() {
            return posted.value().filter("yes"::equals).isPresent();
        }
    }

    public static Hazard read(Section section) {
        Stated<String> tag = section.tag(SORT);
        Hazard hazard = new Hazard(
                tag,
                section.text("task"),
                section.text("hazard"),
                section.references("zones", Zone.SORT),
                exposure(section.section("before")),
                Section.each(section.listIfStated("measures"), measure -> Measure.read(measure, tag.characters())),
                exposure(section.section("after")),
                Section.each(section.listIfStated("residual"), Residual::read),
                Recordings.read(section, tag.characters()));
        if (section.without("measures")) {
            section.report(Finding.refuses(
                    NO_MEASURE,
                    tag.characters(),
                    tag.where(),
                    "nothing is done against the hazard `" + tag.characters() + "`",
                    "state under `measures` what is done, design first, then safeguarding, then information for use; where"
                            + " nothing is done yet, the hazard is still open and the cell is not ready"));
        }
        if (section.without("residual")) {
            hazard.remains()
                    .map(exposure -> Finding.barsRelease(
                            NO_RESIDUAL,
                            tag.characters(),
                            hazard.after().severity().where(),
                            "after the measures `" + tag.characters() + "` is left with " + exposure
                                    + ", and nothing is said of what remains",
                            "state under `residual` what remains, what people are told about it, and whether that is"
                                    + " posted at the cell"))
                    .ifPresent(section::report);
        }
        return hazard;
    }

    /** The exposure that is left, where it is more than the least there is; empty when it is not known. */
    private Optional<String> remains() {
        return after.path().filter(path -> !path.equals(LEAST)).map(path -> path.replace("-", ", "));
    }

    private static Exposure exposure(Section section) {
        Exposure exposure = new Exposure(
                section.word("severity", List.of("S1", "S2")),
                section.word("frequency", List.of("F1", "F2")),
                section.word("avoidance", List.of("P1", "P2")));
        section.close();
        return exposure;
    }

    /** The safeguarding measures. */
    public Stream<Measure> safeguarding() {
        return measures.stream().filter(measure -> measure.is(SAFEGUARDED));
    }

    /** True when it is met in that zone. */
    public boolean in(String zone) {
        return zones.stream().anyMatch(one -> one.value().equals(Optional.of(zone)));
    }

    /** True when that safeguard or device is named against it. */
    public boolean servedBy(String device) {
        return measures.stream()
                .flatMap(measure -> measure.by().stream())
                .anyMatch(one -> one.value().equals(Optional.of(device)));
    }
}
