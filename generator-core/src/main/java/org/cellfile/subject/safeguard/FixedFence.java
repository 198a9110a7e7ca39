package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Position;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;

/**
 * A fence that is fixed and stands in the way by itself: nobody reaches through its mesh, over it, through the gap below it, through
 * an opening in it or around its ends.
 */
@AutoService(Kind.class)
public final class FixedFence implements Kind {

    /** The fence is lower than the edition asks for. */
    public static final FindingId TOO_LOW = new FindingId("installed.fence-too-low");

    /** The gap below the fence lets a body through. */
    public static final FindingId GAP_TOO_WIDE = new FindingId("installed.gap-too-wide");

    /** What shortens the distance to keep, by the name of the reach that governs it. */
    private static final Map<String, String> CURES = Map.of(
            "reach-through", "choose a closer mesh",
            "reach-with-legs", "choose a closer mesh",
            "reach-over", "raise it",
            "reach-below", "close the gap below it");

    private static final Rounding DISTANCE = Rounding.up(Quantity.millimetres("1"));
    private static final Rounding GAP = Rounding.down(Quantity.millimetres("1"));

    @Override
    public String id() {
        return "fixed-fence";
    }

    @Override
    public boolean stopsTheHazard() {
        return false;
    }

    @Override
    public Device read(Section section, String tag) {
        Section mesh = section.section("mesh");
        Stated<Quantity> height = section.positive("height", Dimension.LENGTH);
        Fence fence = new Fence(
                height,
                section.quantity("gap-below", Dimension.LENGTH),
                Aperture.read(mesh),
                section.text("fixings"),
                Section.each(section.listIfStated("openings"), opening -> FenceOpening.read(opening, tag, height)),
                Section.each(section.listIfStated("ends"), FenceEnd::read));
        mesh.close();
        return fence;
    }

    /** One fence; heights from the floor. */
    private record Fence(
            Stated<Quantity> height,
            Stated<Quantity> gapBelow,
            Aperture mesh,
            Stated<String> fixings,
            List<FenceOpening> openings,
            List<FenceEnd> ends)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(
                    new Fact("Height", height.characters()),
                    new Fact("Gap below", gapBelow.characters()),
                    new Fact("Openings of the mesh", mesh.words()),
                    new Fact("Fixings", fixings.characters())));
            openings.forEach(opening -> facts.add(opening.fact()));
            ends.forEach(end -> facts.add(end.fact()));
            return facts;
        }

        @Override
        public List<Place> places() {
            return Stream.concat(
                            IntStream.range(0, openings.size())
                                    .mapToObj(i -> openings.get(i).place(i + 1))
                                    .flatMap(Optional::stream),
                            IntStream.range(0, ends.size())
                                    .mapToObj(i -> ends.get(i).place(i + 1)))
                    .toList();
        }

        @Override
        public List<LeftOpen> leftOpen() {
            return openings.stream().map(FenceOpening::leftOpen).toList();
        }

        @Override
        public String whenTooClose(Derived distance) {
            List<String> governing = distance.expression().operands().stream()
                    .filter(reach -> reach.value().equals(distance.value()))
                    .flatMap(reach -> reach instanceof Derived named ? Stream.of(named.name()) : Stream.empty())
                    .map(CURES::get)
                    .distinct()
                    .toList();
            return "move the fence away from the hazard zone, or " + String.join(" and ", governing)
                    + "; until then a named person may state a deviation";
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            Surroundings.Reach reach = around.reach();
            Derived through = reached(
                    around,
                    "reach-through",
                    "reach through the mesh",
                    "s_r",
                    reach.clause("table 4"),
                    mesh.reach("s_r", "opening of the mesh", reach::through));
            Derived withLegs = reached(
                    around,
                    "reach-with-legs",
                    "reach through the mesh with the legs",
                    "s_l",
                    reach.clause("table 7"),
                    mesh.reach("s_l", "opening of the mesh", reach::throughWithLegs));
            Derived over = reached(
                    around,
                    "reach-over",
                    "reach over the fence",
                    "c",
                    reach.clause("table 2"),
                    reach.over(
                            around.approach().zoneLowest(),
                            around.approach().zoneHighest(),
                            new Given("b", "height of the fence", height)));
            Derived below = reached(
                    around,
                    "reach-below",
                    "reach through the gap below",
                    "s_b",
                    reach.clause("tables 4 and 7"),
                    below(reach));
            Demands bounds = bounds(around);
            boolean passable = bounds.claims().stream()
                    .anyMatch(claim ->
                            claim.id().equals(GAP_TOO_WIDE) && claim.finding().isPresent());
            // A gap that lets a body through is refused by itself; until it is closed the fence must be right in all
            // else.
            List<Term> needed = passable ? List.of(through, withLegs, over) : List.of(through, withLegs, over, below);
            Derived distance = reached(
                    around, "separation-distance", "separation distance", "S", reach.names(), new Greatest(needed));
            List<Finding> faults = new ArrayList<>(Requirement.covered(
                    around.tag(),
                    mesh.size(),
                    Greatest.of(through.expression(), withLegs.expression()),
                    "use a closer mesh"));
            faults.addAll(Requirement.covered(around.tag(), height, over.expression(), "raise the fence"));
            if (!passable) {
                faults.addAll(Requirement.covered(around.tag(), gapBelow, below.expression(), "close the gap"));
            }
            Demands own = new Demands(List.of(through, withLegs, over, below), List.of(), faults);
            Demands all = Demands.of(Stream.of(
                            Stream.of(own, bounds),
                            IntStream.range(0, openings.size())
                                    .mapToObj(i -> openings.get(i).demands(around, i + 1)),
                            IntStream.range(0, ends.size())
                                    .mapToObj(i -> ends.get(i).demands(around, i + 1)))
                    .flatMap(parts -> parts)
                    .toList());
            return Optional.of(new Positioning(
                    new Position(distance, Optional.empty(), List.of(), List.of(), false, Optional.empty(), List.of()),
                    all.derived(),
                    all.claims(),
                    // What no edition in force knows is said once, at the first figure that needs it.
                    all.faults().stream()
                            .collect(Collectors.toMap(
                                    Finding::sentence, fault -> fault, (first, again) -> first, LinkedHashMap::new))
                            .values()
                            .stream()
                            .toList(),
                    all.margins()));
        }

        private Derived reached(
                Surroundings around, String name, String words, String symbol, String clause, Term expression) {
            return new Derived(around.tag(), name, words, symbol, clause, expression, DISTANCE.beside(height.value()));
        }

        /** With arms or legs; above the slots that arms are known for, legs reach farther than a whole arm. */
        private Term below(Surroundings.Reach reach) {
            Opening gap = new Opening("slot", new Given("e", "gap below the fence", gapBelow), Optional.empty());
            Term arms = reach.through(gap, edition -> edition.throughWithLegs(gap));
            Term legs = reach.throughWithLegs(gap);
            return arms.equals(legs) ? legs : Greatest.of(arms, legs);
        }

        private Demands bounds(Surroundings around) {
            Derived leastHeight = Requirement.bound(
                            around.tag(), "least-height", around.rules().leastFenceHeight(), Rounding.Side.UP)
                    .at(DISTANCE.beside(height.value()));
            Derived widestGap = Requirement.bound(
                            around.tag(), "widest-gap-below", around.rules().widestGapBelow(), Rounding.Side.DOWN)
                    .at(GAP.beside(gapBelow.value()));
            return new Demands(
                    List.of(leastHeight, widestGap),
                    List.of(
                            new Claim(
                                    "height",
                                    height,
                                    Relation.AT_LEAST,
                                    leastHeight,
                                    TOO_LOW,
                                    "raise the fence, or state what additional measure keeps people out and cover it by a"
                                            + " deviation until it is raised"),
                            new Claim(
                                    "gap below", gapBelow, Relation.AT_MOST, widestGap, GAP_TOO_WIDE, "close the gap")),
                    List.of());
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("height", height, "gapBelow", gapBelow));
        }
    }
}
