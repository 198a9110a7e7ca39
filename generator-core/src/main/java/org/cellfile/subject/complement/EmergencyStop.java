package org.cellfile.subject.complement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Given;

/**
 * An emergency stop device.
 *
 * @param serves the operator place it is for
 * @param noYellow why the background is not yellow, where it is not
 * @param fixed where it is mounted; absent when it is carried by hand, as on a pendant
 */
public record EmergencyStop(
        Stated<String> mounted,
        Stated<String> serves,
        Stated<String> stopCategory,
        Stated<String> latches,
        Stated<String> colour,
        Optional<Stated<String>> noYellow,
        Optional<Fixture> fixed)
        implements Sort {

    public static final FindingId TOO_LOW = new FindingId("installed.emergency-stop-too-low");
    public static final FindingId TOO_HIGH = new FindingId("installed.emergency-stop-too-high");

    /** Further away than the risk assessment of the cell allows. */
    public static final FindingId TOO_FAR = new FindingId("installed.emergency-stop-too-far");

    /** It stops by a category that the edition does not allow for it. */
    public static final FindingId STOP_CATEGORY = new FindingId("installed.emergency-stop-category");

    public static final FindingId NOT_LATCHING = new FindingId("installed.emergency-stop-not-latching");
    public static final FindingId NOT_RED = new FindingId("installed.emergency-stop-not-red");

    /**
     * Where a fixed device is.
     *
     * @param height of the actuator above the level people stand on
     * @param reach from the operator place to the actuator
     * @param longestReach that the risk assessment of the cell allows, if it says
     */
    record Fixture(Stated<Quantity> height, Stated<Quantity> reach, Optional<LongestReach> longestReach) {
        static Fixture read(Section section) {
            return new Fixture(
                    section.positive("height", Dimension.LENGTH),
                    section.quantity("reach", Dimension.LENGTH),
                    section.sectionIfStated("longest-reach").map(LongestReach::read));
        }
    }

    /** The longest reach, and where the cell's risk assessment says so. */
    record LongestReach(Stated<Quantity> distance, Stated<String> source) {
        static LongestReach read(Section section) {
            LongestReach longest =
                    new LongestReach(section.positive("distance", Dimension.LENGTH), section.text("source"));
            section.close();
            return longest;
        }
    }

    static EmergencyStop read(Section section) {
        Stated<String> mounted = section.word("mounted", Set.of("fixed", "hand-held"));
        Stated<String> colour = section.word("colour", Set.of("red-on-yellow", "red", "another"));
        return new EmergencyStop(
                mounted,
                section.text("serves"),
                section.word("stop-category", Set.of("0", "1", "2")),
                section.word("latches", ComplementaryDevice.YES_OR_NO),
                colour,
                colour.characters().equals("red") ? Optional.of(section.text("no-yellow-because")) : Optional.empty(),
                mounted.characters().equals("hand-held") ? Optional.empty() : Optional.of(Fixture.read(section)));
    }

    /** The longest reach that the risk assessment of the cell allows to it; empty where that says nothing. */
    public Optional<Stated<Quantity>> longestReach() {
        return fixed.flatMap(Fixture::longestReach).map(LongestReach::distance);
    }

    /** True when it is carried by hand. */
    public boolean handHeld() {
        return mounted.characters().equals("hand-held");
    }

    /** Its height as stated; a word for one that has none. */
    String heightWords() {
        return fixed.map(one -> one.height.characters()).orElse("carried");
    }

    @Override
    public String id() {
        return "emergency-stop";
    }

    @Override
    public String words() {
        return "Emergency stop";
    }

    @Override
    public List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("serves", serves.characters()));
        facts.add(new Fact("mounted", mounted.characters()));
        fixed.ifPresent(one -> {
            facts.add(new Fact("height", one.height.characters()));
            facts.add(new Fact("reach", one.reach.characters()));
        });
        facts.add(new Fact("stop category", stopCategory.characters()));
        facts.add(new Fact("latches", latches.characters()));
        facts.add(new Fact(
                "colour",
                colour.characters(),
                noYellow.map(reason -> "no yellow because " + reason.characters())
                        .orElse("")));
        return facts;
    }

    @Override
    public Demands demands(String tag, Surroundings around) {
        Demands demands = new Demands(tag);
        around.emergencyStops().ifPresent(standard -> {
            fixed.ifPresent(one -> heights(tag, one, standard, demands));
            rules(standard, demands);
        });
        fixed.ifPresent(one -> one.longestReach.ifPresent(longest -> reach(tag, one, longest, demands)));
        if (handHeld() && around.devices().stream().noneMatch(device -> Pendant.carries(device, tag))) {
            demands.fault(
                    Pendant.PARTS,
                    mounted,
                    "is carried by hand, and no pendant names it as its emergency stop",
                    "the bounds of height are left out only for what a pendant carries",
                    "name it under `emergency-stop` of its pendant, or write `fixed` and state its height and reach");
        }
        return demands;
    }

    private static void heights(String tag, Fixture fixture, EmergencyStopStandard standard, Demands demands) {
        demands.bound(
                "height",
                fixture.height,
                Relation.AT_LEAST,
                height(
                        tag,
                        "least-height",
                        "least height of an emergency stop",
                        "h_1",
                        standard.leastHeight(),
                        Rounding.Side.UP),
                TOO_LOW,
                "move the actuator up; measure from the level people stand on when they press it");
        demands.bound(
                "height",
                fixture.height,
                Relation.AT_MOST,
                height(
                        tag,
                        "greatest-height",
                        "greatest height of an emergency stop",
                        "h_2",
                        standard.greatestHeight(),
                        Rounding.Side.DOWN),
                TOO_HIGH,
                "move the actuator down; measure from the level people stand on when they press it");
    }

    private static Derived height(
            String tag, String name, String words, String symbol, Fixed bound, Rounding.Side side) {
        return new Derived(
                tag,
                name,
                words,
                symbol,
                bound.reference().clause().toString(),
                bound,
                new Rounding(side, Quantity.millimetres("1")));
    }

    private static void reach(String tag, Fixture fixture, LongestReach longest, Demands demands) {
        demands.bound(
                "reach",
                fixture.reach,
                Relation.AT_MOST,
                new Derived(
                        tag,
                        "longest-reach",
                        "longest reach the risk assessment allows",
                        "l",
                        longest.source.characters(),
                        new Given("l_max", "longest reach, " + longest.source.characters(), longest.distance),
                        Rounding.down(Quantity.millimetres("1"))),
                TOO_FAR,
                "move the actuator closer to the operator place, or fit one more");
    }

    private void rules(EmergencyStopStandard standard, Demands demands) {
        demands.rule(
                standard.stopCategory(),
                stopCategory,
                Set.of("0", "1"),
                STOP_CATEGORY,
                "stops by stop category " + stopCategory.characters(),
                "have the stop ended with the power to the drives off: category 0 or 1");
        demands.rule(
                standard.latching(),
                latches,
                Set.of("yes"),
                NOT_LATCHING,
                "does not latch when it is pressed",
                "fit a device that stays engaged until it is released by hand");
        demands.rule(
                standard.colours(),
                colour,
                Set.of("red-on-yellow", "red"),
                NOT_RED,
                "has an actuator that is not red",
                "fit a red actuator on a yellow background; write `red` where yellow is not practicable, and say why");
    }
}
