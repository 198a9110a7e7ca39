package org.cellfile.subject.hazard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.claim.Recorded;
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

    /** Things that can safeguard are described after the hazards; these are their sorts. */
    private static final List<String> SAFEGUARDING = List.of("safeguard", "complementary device");

    /** The three steps of ISO 12100, 6.1, in their order. */
    public static final List<String> SORTS = List.of("design", "safeguarding", "information");

    /**
     * Something done against it.
     *
     * @param sort {@code design} for inherently safe design, {@code safeguarding}, {@code information} for information for use
     * @param by tags of what safeguards
     */
    public record Measure(Stated<String> sort, Stated<String> measure, List<Stated<String>> by) {
        static Measure read(Section section) {
            return new Measure(
                    section.word("sort", SORTS),
                    section.statement("measure"),
                    section.referencesIfStated("by", SAFEGUARDING));
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
        return new Hazard(
                tag,
                section.text("task"),
                section.text("hazard"),
                section.references("zones", Zone.SORT),
                exposure(section.section("before")),
                Section.each(section.listIfStated("measures"), Measure::read),
                exposure(section.section("after")),
                Section.each(section.listIfStated("residual"), Residual::read),
                Recordings.read(section, tag.characters()));
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
        return measures.stream().filter(measure -> measure.is("safeguarding"));
    }

    /** True when that safeguard or device is named against it. */
    public boolean servedBy(String device) {
        return measures.stream()
                .flatMap(measure -> measure.by().stream())
                .anyMatch(one -> one.value().equals(Optional.of(device)));
    }
}
