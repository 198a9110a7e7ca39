package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** ISO 13849-1:2015; the clause numbers are from memory. */
@AutoService(Edition.class)
public final class Iso13849Part1Ed2015 extends FixedValues implements ControlStandard {

    private static final String ID = "ISO 13849-1:2015";
    private static final Quantity MEDIUM = Quantity.of("90", Unit.PERCENT);
    private static final Quantity CATEGORY_ONE_FROM = Quantity.years("30");

    /** The letters by the three parameters. */
    private final Map<String, Fixed> graph = rows("path", graph());

    private final Map<String, Fixed> scores = rows("measure", scores());

    private final Map<String, Fixed> bounds = rows("level", bounds());

    private final Map<String, Fixed> highest = rows("category", highest());

    private final FailureTable failures = failures();

    private final Reference structures = reference(
            "structures",
            "one channel in the categories B, 1 and 2, two in 3 and 4, and no part in both of them or in a channel and in its"
                    + " test equipment",
            clause("6.2.3 to 6.2.7"),
            new FromMemory("one channel with a test as the counterpart of category 2 is published by GT Engineering"));

    private final Reference wellTried =
            reference("well-tried", "well-tried components in category 1", clause("6.2.4"), new FromMemory(""));

    private final Fixed dangerousShare = fixed(
            "r_D",
            Quantity.of("50", Unit.PERCENT),
            "dangerous-share",
            "share of failures that is dangerous, where nothing is known about it",
            clause("C.2"),
            new Published("ReeR, MTTF_D value; LinMot C1100 installation guide, p. 18"));

    private final Fixed wornShare = factor(
            "0.1",
            "worn-share",
            "share of parts that has failed dangerously after B10_D operations",
            clause("C.4.2"),
            new Published(
                    "JUMO safety manuals; Beckhoff application guide, p. 16; LinMot C1100 installation guide, p. 18"));

    private final Fixed missionTime = fixed(
            "T_M",
            Quantity.years("20"),
            "mission-time",
            "mission time",
            clause("4.5.4"),
            new Published("Beckhoff application guide, calculation of safety parameters, p. 16"));

    private final Fixed most = most("100", "channel-limit", "");
    private final Fixed mostInFour = most("2500", "channel-limit-4", " in category 4");

    private final Fixed least = fixed(
            "MTTF_D,min",
            Quantity.years("3"),
            "channel-least",
            "least mean time to dangerous failure of a channel",
            clause("4.5.2, table 5"),
            new Published(
                    "Keyence, parameters of the performance level; WEKA, MTTF_D; Pizzato general catalogue 2025, p. 425"));

    private final Fixed high = fixed(
            "MTTF_D,high",
            CATEGORY_ONE_FROM,
            "channel-high",
            "least mean time to dangerous failure of a channel in the categories 1 and 4",
            clause("6.2.4, 6.2.7"),
            new FromMemory("the range from 30 years on is published as high"));

    private final Fixed low = coverage("60", "coverage-low", "the categories 2 and 3", "6.2.5, 6.2.6");
    private final Fixed nearlyAll = coverage("99", "coverage-high", "category 4", "6.2.7");

    private final Fixed leastScore = fixed(
            "CCF_min",
            Quantity.of("65", Unit.POINT),
            "common-cause-least",
            "least score of the measures against failures of common cause, in the categories 2 to 4",
            clause("Annex F"),
            new Published("Keyence, parameters of the performance level; Dold data sheet, p. 13"));

    private final Fixed testsForEachDemand = number(
            "100",
            "100",
            "tests-for-each-demand",
            "tests for each demand, in category 2",
            clause("4.5.4"),
            new FromMemory("the same ratio is published for architecture C of IEC 62061 by GT Engineering"));

    private final Fixed shareOfTestEquipment = factor(
            "0.5",
            "test-equipment-share",
            "part of the mean time to dangerous failure of the tested channel that the test equipment has at least",
            clause("4.5.4"),
            new Published("GT Engineering, IEC 62061 basic subsystem architectures"));

    /** As its values are held here. */
    public Iso13849Part1Ed2015() {
        this(CopyValues.NONE);
    }

    private Iso13849Part1Ed2015(CopyValues copy) {
        super("iso-13849-1-2015", copy);
    }

    @Override
    public Iso13849Part1Ed2015 reading(CopyValues copy) {
        return new Iso13849Part1Ed2015(copy);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Safety-related parts of control systems, part 1: general principles for design";
    }

    private static Clause clause(String place) {
        return new Clause(ID, place.startsWith("Annex") ? place : "cl. " + place);
    }

    private Map<String, Fixed> graph() {
        Reference reference = reference(
                "risk-graph",
                "required performance level by severity, frequency and possibility of avoiding",
                clause("Annex A"),
                new FromMemory("the meaning of the parameters is published, which level they lead to is not"));
        Map<String, Fixed> graph = new LinkedHashMap<>();
        Map.of(
                        "S1-F1-P1", "a",
                        "S1-F1-P2", "b",
                        "S1-F2-P1", "b",
                        "S1-F2-P2", "c",
                        "S2-F1-P1", "c",
                        "S2-F1-P2", "d",
                        "S2-F2-P1", "d",
                        "S2-F2-P2", "e")
                .forEach((path, letter) -> graph.put(path, new Fixed("PL_r", Quantity.level(letter), reference)));
        return graph;
    }

    private Map<String, Fixed> scores() {
        Reference reference = reference(
                "common-cause",
                "scores of the measures against failures of common cause",
                clause("Annex F, table F.1"),
                new FromMemory(""));
        Map<String, Fixed> scores = new LinkedHashMap<>();
        Map.of(
                        "separation", "15",
                        "diversity", "20",
                        "overload-protection", "15",
                        "well-tried-components", "5",
                        "failure-analysis", "5",
                        "competence", "5",
                        "electromagnetic-compatibility", "25",
                        "environment", "10")
                .forEach((measure, points) ->
                        scores.put(measure, new Fixed("p", Quantity.of(points, Unit.POINT), reference)));
        return scores;
    }

    private Map<String, Fixed> bounds() {
        Reference reference = reference(
                "level-ranges",
                "frequency of dangerous failure below which each performance level lies",
                clause("4.5.1, table 2"),
                new Published("Keyence, performance level; KEBA engineering manual, p. 13"));
        Map<String, Fixed> bounds = new LinkedHashMap<>();
        Map.of("e", "1e-7", "d", "1e-6", "c", "3e-6", "b", "1e-5", "a", "1e-4")
                .forEach((level, bound) ->
                        bounds.put(level, new Fixed("PFH_D," + level, Quantity.perHour(bound), reference)));
        return bounds;
    }

    private Map<String, Fixed> highest() {
        Reference reference = reference(
                "highest-level",
                "highest performance level of the categories B, 1 and 2",
                clause("6.2.3 to 6.2.5"),
                new FromMemory("for category 1 published in safety manuals of JUMO"));
        Map<String, Fixed> highest = new LinkedHashMap<>();
        Map.of(Category.B, "b", Category.ONE, "c", Category.TWO, "d")
                .forEach((category, letter) ->
                        highest.put(category.word(), new Fixed("PL_max", Quantity.level(letter), reference)));
        return highest;
    }

    private FailureTable failures() {
        FailureTable ours = new FailureTable(
                "iso-13849-1-2015-annex-k.csv",
                Map.of(
                        "1-30", published("1-30", "a contribution to a forum of controls engineers, 2010 (two digits)"),
                        "4-high-30", published("4-high-30", "a contribution to a forum of controls engineers, 2010"),
                        "4-high-2500",
                                published(
                                        "4-high-2500", "Siemens SINAMICS DCM, functional safety, 2016, p. 56 and 59")),
                reference(
                        "annex-k",
                        "frequency of dangerous failure by structure, coverage and mean time to dangerous failure",
                        clause("Annex K, table K.1"),
                        new FromMemory("held against the arithmetic behind it in the tests of this program")));
        return ours.counting(rows("cell", ours.cells()));
    }

    private Reference published(String cell, String source) {
        return reference(
                "annex-k-" + cell, "a cell of the same table", clause("Annex K, table K.1"), new Published(source));
    }

    private Fixed most(String years, String id, String where) {
        return fixed(
                "MTTF_D,max",
                Quantity.years(years),
                id,
                "most that counts of the mean time to dangerous failure of a channel" + where,
                clause("4.5.2"),
                new Published("GT Engineering, IEC 62061 basic subsystem architectures; Siemens SINAMICS DCM, p. 56"));
    }

    private Fixed coverage(String percent, String id, String of, String place) {
        Standing standing = new FromMemory("the ranges of the coverage are published");
        return fixed(
                "DC_min",
                Quantity.of(percent, Unit.PERCENT),
                id,
                "least average coverage in " + of,
                clause(place),
                standing);
    }

    @Override
    public Term requiredLevel(Exposure exposure) {
        return exposure.path()
                .<Term>map(path -> {
                    Fixed level = of(graph, path);
                    return new Lookup(
                            "PL(" + path.replace("-", ", ") + ")",
                            level.quantity(),
                            level.reference(),
                            List.of(),
                            path.replace("-", ", ") + " leads to " + level.quantity());
                })
                .orElseGet(() -> new Withheld("PL_r", "severity, frequency or possibility of avoiding is not known"));
    }

    @Override
    public Term level(Term pfh) {
        return new Case(
                List.of(below("e", pfh), below("d", pfh), below("c", pfh), below("b", pfh), below("a", pfh)),
                new Withheld("PL", "the frequency of dangerous failure is too high for any performance level"));
    }

    private Branch below(String letter, Term pfh) {
        Fixed bound = of(bounds, letter);
        return new Branch(
                new Condition(pfh, Comparison.LESS, bound),
                new Fixed("PL " + letter, Quantity.level(letter), bound.reference()));
    }

    @Override
    public Term pfh(Category category, Term mttfd, Term averageCoverage) {
        return category.tested()
                ? averageCoverage
                        .value()
                        .map(share -> ofTested(category, mttfd, averageCoverage, share))
                        .orElseGet(() -> new Withheld("PFH_D", "the average coverage is not known"))
                : failures.at(category.word(), mttfd, List.of(mttfd));
    }

    private Term ofTested(Category category, Term mttfd, Term averageCoverage, Quantity share) {
        Fixed least = leastCoverage(category);
        if (share.compareTo(least.quantity()) < 0) {
            return new Withheld(
                    "PFH_D",
                    "the table has no column for " + category + " with less coverage than " + least.quantity());
        }
        String column = category == Category.FOUR ? "-high" : share.compareTo(MEDIUM) < 0 ? "-low" : "-medium";
        return failures.at(category.word() + column, mttfd, List.of(mttfd, averageCoverage));
    }

    @Override
    public Fixed dangerousShare() {
        return dangerousShare;
    }

    @Override
    public Fixed wornShare() {
        return wornShare;
    }

    @Override
    public Fixed missionTime() {
        return missionTime;
    }

    @Override
    public Fixed mostOfChannel(Category category) {
        return category == Category.FOUR ? mostInFour : most;
    }

    @Override
    public Reference structures() {
        return structures;
    }

    @Override
    public Reference wellTriedComponents() {
        return wellTried;
    }

    @Override
    public Optional<Fixed> highestLevel(Category category) {
        return Optional.ofNullable(highest.get(category.word()));
    }

    @Override
    public Fixed leastOfChannel(Category category) {
        return category == Category.ONE || category == Category.FOUR ? high : least;
    }

    @Override
    public Fixed leastCoverage(Category category) {
        return category == Category.FOUR ? nearlyAll : low;
    }

    @Override
    public Set<String> commonCauseMeasures() {
        return new TreeSet<>(scores.keySet());
    }

    @Override
    public Fixed score(String measure) {
        return of(scores, measure);
    }

    @Override
    public Fixed leastScore() {
        return leastScore;
    }

    @Override
    public Fixed testsForEachDemand() {
        return testsForEachDemand;
    }

    @Override
    public Fixed shareOfTestEquipment() {
        return shareOfTestEquipment;
    }

    private static Fixed of(Map<String, Fixed> rows, String word) {
        return Objects.requireNonNull(rows.get(word), word);
    }
}
