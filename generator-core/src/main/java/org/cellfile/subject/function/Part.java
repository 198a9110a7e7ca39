package org.cellfile.subject.function;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * A part of a control system, as installed. How often it fails is told in one of several ways.
 *
 * @param mttfd mean time to dangerous failure
 * @param mttf mean time to failure, dangerous or not
 * @param b10d operations after which a tenth of such parts has failed dangerously
 * @param b10 operations after which a tenth has failed, dangerously or not
 * @param failureRate of all failures
 * @param dangerousFailureRate of dangerous failures
 * @param dangerous share of the failures that is dangerous; missing where nobody knows
 * @param coverage the share of its dangerous failures that is found
 * @param coverageStated true when coverage is written, whether it could be read or not
 * @param monitoredBy tags of the parts or subsystems that find them
 * @param monitoring how they do
 * @param wellTried why it is a well-tried component; missing where it is none
 * @param missionTime how long its maker lets it be used
 */
public record Part(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> source,
        Stated<Quantity> mttfd,
        Stated<Quantity> mttf,
        Stated<Quantity> b10d,
        Stated<Quantity> b10,
        Stated<Quantity> failureRate,
        Stated<Quantity> dangerousFailureRate,
        Stated<Quantity> dangerous,
        Optional<Operations> operations,
        Stated<Quantity> coverage,
        boolean coverageStated,
        List<Stated<String>> monitoredBy,
        Stated<String> monitoring,
        Stated<String> wellTried,
        Stated<Quantity> missionTime,
        Stated<LocalDate> installed,
        Recorded recorded) {

    public static final String SORT = "part";

    /** How often it fails is told in no way, or in several. */
    public static final FindingId HOW_OFTEN = new FindingId("part.how-often-it-fails");

    /** Something is stated of it on which nothing rests, as it fails in another way. */
    public static final FindingId NOT_NEEDED = new FindingId("part.not-needed");

    private static final Quantity ALL = Quantity.of("100", Unit.PERCENT);

    private static final List<String> WAYS =
            List.of("mttfd", "mttf", "b10d", "b10", "failure-rate", "dangerous-failure-rate");

    private static final List<String> OF_DANGEROUS = List.of("mttfd", "b10d", "dangerous-failure-rate");

    /**
     * How often it is operated.
     *
     * @param days in a year
     * @param hours in a day
     * @param cycle from one operation to the next
     * @param perDay operations in a day, where these were counted and not the hours and the cycle
     */
    public record Operations(
            Stated<Quantity> days, Stated<Quantity> hours, Stated<Quantity> cycle, Stated<Quantity> perDay) {

        static Operations read(Section section, Stated<String> tag) {
            Stated<Quantity> days = section.number("days").map(number -> new Quantity(number.number(), Unit.PER_YEAR));
            boolean counted = section.has("per-day");
            boolean hours = section.has("hours");
            if (counted && (section.has("cycle") || hours)) {
                section.report(
                        Finding.refuses(
                                NOT_NEEDED,
                                tag.characters(),
                                section.where("per-day"),
                                "the operations of `" + tag.characters()
                                        + "` are counted by the day and told by hours and cycle as well",
                                "state `per-day` where they were counted, or `hours` and `cycle` where they follow from these"));
            }
            Stated<Quantity> none = new Stated.Missing<>(section.where(), "cycle");
            Operations operations = new Operations(
                    days,
                    counted ? none : section.longTime("hours"),
                    counted ? none : section.longTime("cycle"),
                    section.numberIfStated("per-day"));
            section.close();
            return operations;
        }
    }

    public static Part read(Section section) {
        Stated<String> tag = section.tag(SORT);
        boolean told = howOften(section, tag);
        Stated<Quantity> dangerous = section.positiveIfStated("dangerous", Dimension.NONE);
        boolean counts =
                told && (dangerous.value().filter(Part::notMoreThanAll).isPresent() || !section.has("dangerous"));
        Recorded recorded = Recordings.read(section, tag.characters());
        boolean wears = told && (section.has("b10d") || section.has("b10"));
        Optional<Section> coverage = section.sectionIfStated("coverage");
        Part part = new Part(
                tag,
                section.text("name"),
                section.text("source"),
                counted(counts, section.meanTimeIfStated("mttfd")),
                counted(counts, section.meanTimeIfStated("mttf")),
                counted(counts, section.numberIfStated("b10d")),
                counted(counts, section.numberIfStated("b10")),
                counted(counts, section.positiveIfStated("failure-rate", Dimension.RATE)),
                counted(counts, section.positiveIfStated("dangerous-failure-rate", Dimension.RATE)),
                dangerous,
                wears ? Optional.of(Operations.read(section.section("operations"), tag)) : Optional.empty(),
                coverage.map(one -> one.positive("share", Dimension.NONE))
                        .orElseGet(() -> new Stated.Missing<>(section.where(), "coverage")),
                coverage.isPresent(),
                coverage.map(one -> one.referencesIfStated("by", List.of(SORT, Subsystem.SORT)))
                        .orElseGet(List::of),
                coverage.map(one -> one.statement("how"))
                        .orElseGet(() -> new Stated.Missing<>(section.where(), "coverage")),
                section.statementIfStated("well-tried"),
                section.longTimeIfStated("mission-time"),
                section.date("installed"),
                counts ? recorded : new Recorded(recorded.about(), recorded.where(), Map.of()));
        coverage.ifPresent(Section::close);
        return part;
    }

    /** True of a share that can be one. */
    static boolean notMoreThanAll(Quantity share) {
        return share.compareTo(ALL) <= 0;
    }

    /** Of several figures none counts, and none of which the dangerous share could not be read. */
    private static Stated<Quantity> counted(boolean counts, Stated<Quantity> figure) {
        return counts ? figure : new Stated.Missing<>(figure.where(), figure.characters());
    }

    /** True when it is told in one way. */
    private static boolean howOften(Section section, Stated<String> tag) {
        List<String> told = new ArrayList<>(WAYS.stream().filter(section::has).toList());
        if (told.size() != 1) {
            section.report(Finding.refuses(
                    HOW_OFTEN,
                    tag.characters(),
                    section.where(),
                    told.isEmpty()
                            ? "nothing says how often `" + tag.characters() + "` fails"
                            : "how often `" + tag.characters() + "` fails is told in " + told.size() + " ways: `"
                                    + String.join("`, `", told) + "`",
                    "state one of `" + String.join("`, `", WAYS) + "`, as its maker does"));
            section.has("operations");
            return false;
        }
        if (!told.get(0).startsWith("b10") && section.has("operations")) {
            notNeeded(section, tag, "operations", told.get(0), "tells of failures by time, whatever the operations");
        }
        if (OF_DANGEROUS.contains(told.get(0)) && section.has("dangerous")) {
            notNeeded(section, tag, "dangerous", told.get(0), "tells of dangerous failures alone");
        }
        return true;
    }

    private static void notNeeded(Section section, Stated<String> tag, String key, String told, String why) {
        section.report(Finding.refuses(
                NOT_NEEDED,
                tag.characters(),
                section.where(key),
                "nothing rests on `" + key + "` of `" + tag.characters() + "`: its `" + told + "` " + why,
                "take `" + key + "` out, or state the figure that its maker gives with it"));
    }
}
