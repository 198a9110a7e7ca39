package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.cellfile.standard.ReachStandard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A fence that is fixed and stands in the way by itself. */
@AutoService(Kind.class)
public final class FixedFence implements Kind {

    /** The fence is lower than the edition asks for. */
    public static final FindingId TOO_LOW = new FindingId("installed.fence-too-low");

    /** The gap below the fence lets a body through. */
    public static final FindingId GAP_TOO_WIDE = new FindingId("installed.gap-too-wide");

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
        Fence fence = new Fence(
                section.positive("height", Dimension.LENGTH),
                section.quantity("gap-below", Dimension.LENGTH),
                mesh.word("shape", ReachStandard.SHAPES),
                mesh.positive("opening", Dimension.LENGTH),
                section.text("fixings"));
        mesh.close();
        return fence;
    }

    /** One fence; heights from the floor. */
    private record Fence(
            Stated<Quantity> height,
            Stated<Quantity> gapBelow,
            Stated<String> shape,
            Stated<Quantity> opening,
            Stated<String> fixings)
            implements Device {

        @Override
        public List<Fact> facts() {
            return List.of(
                    new Fact("Height", height.characters()),
                    new Fact("Gap below", gapBelow.characters()),
                    new Fact("Openings of the mesh", shape.characters() + ", " + opening.characters()),
                    new Fact("Fixings", fixings.characters()));
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            Surroundings.Reach reach = around.reach();
            Term through = shape.value()
                    .map(known -> reach.through(new ReachStandard.Opening(
                            known, new Given("e", "opening of the mesh", opening), Optional.empty())))
                    .orElseGet(() -> new Withheld("s_r", "the shape of the openings is not known"));
            Term over = reach.over(
                    around.approach().zoneLowest(),
                    around.approach().zoneHighest(),
                    new Given("b", "height of the fence", height));
            Derived reachThrough = new Derived(
                    around.tag(),
                    "reach-through",
                    "reach through the mesh",
                    "s_r",
                    reach.clause("table 4"),
                    through,
                    DISTANCE.beside(opening.value()));
            Derived reachOver = new Derived(
                    around.tag(),
                    "reach-over",
                    "reach over the fence",
                    "c",
                    reach.clause("table 2"),
                    over,
                    DISTANCE.beside(height.value()));
            Derived distance = new Derived(
                    around.tag(),
                    "separation-distance",
                    "separation distance",
                    "S",
                    reach.names(),
                    Greatest.of(reachThrough, reachOver),
                    DISTANCE.beside(height.value()));
            Derived leastHeight = Requirement.bound(
                            around.tag(), "least-height", around.rules().leastFenceHeight(), Rounding.Side.UP)
                    .at(DISTANCE.beside(height.value()));
            Derived widestGap = Requirement.bound(
                            around.tag(), "widest-gap-below", around.rules().widestGapBelow(), Rounding.Side.DOWN)
                    .at(GAP.beside(gapBelow.value()));
            List<Finding> faults =
                    new ArrayList<>(Requirement.covered(around.tag(), opening, through, "use a closer mesh"));
            faults.addAll(Requirement.covered(around.tag(), height, over, "raise the fence"));
            return Optional.of(new Positioning(
                    new Position(distance, Optional.empty(), List.of(), List.of(), false, Optional.empty(), List.of()),
                    List.of(reachThrough, reachOver, leastHeight, widestGap),
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
                    faults));
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("height", height, "gapBelow", gapBelow));
        }
    }
}
