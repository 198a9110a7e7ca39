package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.HashMap;
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
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Given;

/**
 * A field through which people pass, approached at a right angle unless an inclination is stated. Heights are from the floor.
 *
 * @param spaceBelow what closes the space below the field, if something does
 */
record UprightField(
        Stated<Quantity> lowerEdge,
        Stated<Quantity> upperEdge,
        Stated<String> spaceBelow,
        Behind behind,
        Optional<Inclination> inclination) {

    /** The lower edge of the field is above its upper edge. */
    static final FindingId UPSIDE_DOWN = new FindingId("field.upside-down");

    /** The height of the side furthest from the hazard is that of neither edge. */
    static final FindingId NEITHER_EDGE = new FindingId("field.neither-edge");

    /** Somebody can pass below the field. */
    static final FindingId PASSING_UNDER = new FindingId("installed.lowest-beam-too-high");

    static UprightField read(Section section, String tag) {
        UprightField field = new UprightField(
                section.quantity("lower-edge", Dimension.LENGTH),
                section.positive("upper-edge", Dimension.LENGTH),
                section.statementIfStated("space-below"),
                Behind.read(section),
                Inclination.read(section));
        if (field.upsideDown()) {
            section.report(Finding.refuses(
                    UPSIDE_DOWN,
                    tag,
                    field.upperEdge.where(),
                    "the upper edge of the field of `" + tag + "`, " + field.upperEdge.characters()
                            + ", is not above its lower edge, " + field.lowerEdge.characters(),
                    "measure both from the floor people stand on"));
            return field.edgesNotKnown();
        }
        if (field.farSideIsNoEdge()) {
            Stated<Quantity> height = field.inclination.orElseThrow().height();
            section.report(Finding.refuses(
                    NEITHER_EDGE,
                    tag,
                    height.where(),
                    "the side of the field of `" + tag + "` furthest from the hazard is said to be "
                            + height.characters() + " above the floor, and its edges are at "
                            + field.lowerEdge.characters() + " and " + field.upperEdge.characters(),
                    "that side is one of the two edges: state the height of the one that people reach first"));
            return field.edgesNotKnown();
        }
        boolean angleNotKnown = field.inclination
                .filter(inclined -> inclined.angle().value().isEmpty())
                .isPresent();
        return angleNotKnown ? field.edgesNotKnown() : field;
    }

    private boolean upsideDown() {
        return lowerEdge
                .value()
                .flatMap(lower -> upperEdge.value().map(upper -> lower.compareTo(upper) >= 0))
                .orElse(false);
    }

    private boolean farSideIsNoEdge() {
        Optional<Quantity> far =
                inclination.flatMap(inclined -> inclined.height().value());
        return far.isPresent()
                && lowerEdge.value().isPresent()
                && upperEdge.value().isPresent()
                && !far.equals(lowerEdge.value())
                && !far.equals(upperEdge.value());
    }

    /** The same after something about its shape was found, so that nothing that rests on the shape is found besides. */
    private UprightField edgesNotKnown() {
        return new UprightField(
                new Stated.Missing<>(lowerEdge.where(), "lower-edge"),
                new Stated.Missing<>(upperEdge.where(), "upper-edge"),
                spaceBelow,
                behind,
                inclination.map(Inclination::heightNotKnown));
    }

    List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Field", "from " + lowerEdge.characters() + " to " + upperEdge.characters() + " above the floor"));
        LevelField.below(spaceBelow).ifPresent(facts::add);
        facts.addAll(behind.facts());
        inclination.ifPresent(inclined -> facts.add(inclined.fact()));
        return facts;
    }

    /** Its position under an edition that has a rule for it. */
    Optional<Positioning> position(
            Surroundings around, Given resolution, List<Supplement> supplements, boolean startsCycle) {
        if (inclination.isEmpty()) {
            return across(around, resolution, supplements, startsCycle, List.of());
        }
        Optional<Fixed> least = around.positioning().leastRightAngle();
        if (least.isEmpty()) {
            return Optional.empty();
        }
        Inclination inclined = inclination.get();
        List<Derived> angles = inclined.derived(around.tag(), least.get());
        return alongPlane(around)
                ? new LevelField(inclined.height(), "height of the side furthest from the hazard", spaceBelow)
                        .position(around, resolution, supplements, angles)
                : across(around, resolution, supplements, startsCycle, angles);
    }

    /** True when it counts as approached along its plane. */
    boolean alongPlane(Surroundings around) {
        return inclination
                .flatMap(inclined -> around.positioning().leastRightAngle().map(inclined::alongPlane))
                .orElse(false);
    }

    private Optional<Positioning> across(
            Surroundings around,
            Given resolution,
            List<Supplement> supplements,
            boolean startsCycle,
            List<Derived> first) {
        return around.positioning()
                .perpendicular(new PerpendicularField(
                        around.approach(),
                        resolution,
                        new Given("e", "lower edge of the field", lowerEdge),
                        new Given("b", "upper edge of the field", upperEdge),
                        Supplement.terms(supplements),
                        startsCycle))
                .map(position -> Positioning.with(
                        position, first, claims(position), faults(around.tag(), resolution.stated(), position)));
    }

    private List<Claim> claims(Position position) {
        List<Claim> claims = new ArrayList<>();
        position.limit("greatest-lower-edge")
                .filter(limit -> spaceBelow.value().isEmpty())
                .ifPresent(limit -> claims.add(new Claim(
                        "lower edge",
                        lowerEdge,
                        Relation.AT_MOST,
                        limit,
                        PASSING_UNDER,
                        "lower the field, or close the way below it and state what closes it as `space-below`")));
        behind.claim(position).ifPresent(claims::add);
        return claims;
    }

    private List<Finding> faults(String tag, Stated<Quantity> resolution, Position position) {
        List<Finding> faults = new ArrayList<>();
        for (Derived part : position.parts()) {
            boolean over = part.name().startsWith("reach-over");
            faults.addAll(Requirement.covered(
                    tag,
                    over ? upperEdge : resolution,
                    part.expression(),
                    over
                            ? "use a field whose upper edge is higher, or close the way over it by a fixed guard"
                            : "use a device of finer resolution, or separate beams, which are the kind `light-beams`"));
        }
        return faults;
    }

    /** Figures for the drawing, in mm and degrees. */
    Map<String, Object> drawing() {
        Map<String, Object> data =
                new HashMap<>(Millimetres.of(Map.of("lowerEdge", lowerEdge, "upperEdge", upperEdge)));
        inclination.ifPresent(inclined -> {
            inclined.angle().value().ifPresent(angle -> data.put("angle", angle.coherent()));
            inclined.height().value().ifPresent(height -> data.put("farHeight", height.coherent()));
        });
        return data;
    }
}
