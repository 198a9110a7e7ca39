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
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Position;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;

/** A light curtain whose field is approached at a right angle. */
@AutoService(Kind.class)
public final class LightCurtain implements Kind {

    /** The lower edge of the field is above its upper edge. */
    public static final FindingId UPSIDE_DOWN = new FindingId("light-curtain.upside-down");

    /** Somebody can pass below a field that detects bodies only. */
    public static final FindingId PASSING_UNDER = new FindingId("installed.lowest-beam-too-high");

    @Override
    public String id() {
        return "light-curtain";
    }

    @Override
    public boolean stopsTheHazard() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        Field field = new Field(
                section.positive("resolution", Dimension.LENGTH),
                section.quantity("lower-edge", Dimension.LENGTH),
                section.positive("upper-edge", Dimension.LENGTH));
        if (field.lowerEdge.value().isPresent()
                && field.upperEdge.value().isPresent()
                && field.lowerEdge
                                .value()
                                .get()
                                .compareTo(field.upperEdge.value().get())
                        >= 0) {
            section.report(Finding.refuses(
                    UPSIDE_DOWN,
                    tag,
                    field.upperEdge.where(),
                    "the upper edge of the field of `" + tag + "`, " + field.upperEdge.characters()
                            + ", is not above its lower edge, " + field.lowerEdge.characters(),
                    "measure both from the floor people stand on"));
        }
        return field;
    }

    /** The field of one light curtain; heights from the floor. */
    private record Field(Stated<Quantity> resolution, Stated<Quantity> lowerEdge, Stated<Quantity> upperEdge)
            implements Device {

        @Override
        public List<Fact> facts() {
            return List.of(
                    new Fact("Resolution", resolution.characters()),
                    new Fact(
                            "Field",
                            "from " + lowerEdge.characters() + " to " + upperEdge.characters() + " above the floor"));
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            return around.positioning()
                    .perpendicular(new PerpendicularField(
                            around.approach(),
                            new Given("d", "resolution", resolution),
                            new Given("e", "lower edge of the field", lowerEdge),
                            new Given("b", "upper edge of the field", upperEdge),
                            List.of(),
                            false))
                    .map(position -> Positioning.of(position, claims(position), faults(around.tag(), position)));
        }

        private List<Finding> faults(String tag, Position position) {
            List<Finding> faults = new ArrayList<>();
            for (Derived part : position.parts()) {
                boolean over = part.name().equals("reach-over");
                faults.addAll(Requirement.covered(
                        tag,
                        over ? upperEdge : resolution,
                        part.expression(),
                        over
                                ? "use a field whose upper edge is higher, or close the way over it by a fixed guard"
                                : "use a device of finer resolution, or another kind of safeguard"));
            }
            return faults;
        }

        private List<Claim> claims(Position position) {
            return position.limit("greatest-lower-edge").stream()
                    .map(limit -> new Claim(
                            "lower edge",
                            lowerEdge,
                            Relation.AT_MOST,
                            limit,
                            PASSING_UNDER,
                            "lower the field, or close the way below it by a fixed guard"))
                    .toList();
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("lowerEdge", lowerEdge, "upperEdge", upperEdge));
        }
    }
}
