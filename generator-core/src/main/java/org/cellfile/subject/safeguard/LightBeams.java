package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
import org.cellfile.standard.PositioningStandard.Beams;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** One to four separate light beams that detect a body walking through them, and no arm between them. */
@AutoService(Kind.class)
public final class LightBeams implements Kind {

    /** The beams are not listed from the lowest to the highest. */
    public static final FindingId UPSIDE_DOWN = new FindingId("light-beams.upside-down");

    @Override
    public String id() {
        return "light-beams";
    }

    @Override
    public boolean stopsTheHazard() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        List<Stated<Quantity>> heights = section.positives("beams", Dimension.LENGTH);
        Optional<Integer> first = firstNotAbove(heights);
        first.ifPresent(beam -> section.report(Finding.refuses(
                UPSIDE_DOWN,
                tag,
                heights.get(beam).where(),
                "beam " + (beam + 1) + " of `" + tag + "` at "
                        + heights.get(beam).characters() + " is not above beam " + beam + " at "
                        + heights.get(beam - 1).characters(),
                "list the beams from the lowest to the highest, each measured from the floor people stand on")));
        return new Grid(heights, first.isEmpty(), section.statementIfStated("space-below"), Behind.read(section));
    }

    private static Optional<Integer> firstNotAbove(List<Stated<Quantity>> heights) {
        for (int beam = 1; beam < heights.size(); beam++) {
            Optional<Quantity> below = heights.get(beam - 1).value();
            if (heights.get(beam)
                    .value()
                    .filter(height -> below.isPresent() && height.compareTo(below.get()) <= 0)
                    .isPresent()) {
                return Optional.of(beam);
            }
        }
        return Optional.empty();
    }

    /**
     * The beams of one safeguard; heights from the floor.
     *
     * @param ascending false when they are out of order, which was reported
     * @param spaceBelow what closes the space below the lowest, if something does
     * @param gapBehind the space between them and the machine
     */
    private record Grid(List<Stated<Quantity>> heights, boolean ascending, Stated<String> spaceBelow, Behind gapBehind)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(new Fact(
                    "Beams",
                    heights.stream().map(Stated::characters).collect(Collectors.joining(", ")),
                    "above the floor")));
            LevelField.below(spaceBelow).ifPresent(facts::add);
            facts.addAll(gapBehind.facts());
            return facts;
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            List<Term> beams = new ArrayList<>();
            for (Stated<Quantity> height : heights) {
                String symbol = "h_" + (beams.size() + 1);
                beams.add(
                        ascending
                                ? new Given(symbol, "height of beam " + (beams.size() + 1), height)
                                : new Withheld(symbol, "the beams are out of order"));
            }
            return around.positioning()
                    .beams(new Beams(around.approach(), beams))
                    .map(position -> Positioning.of(position, claims(position), faults(around.tag(), position)));
        }

        private List<Claim> claims(Position position) {
            List<Claim> claims = new ArrayList<>();
            position.limit("greatest-lower-edge")
                    .filter(limit -> ascending
                            && !heights.isEmpty()
                            && spaceBelow.value().isEmpty())
                    .ifPresent(limit -> claims.add(new Claim(
                            "height of the lowest beam",
                            heights.get(0),
                            Relation.AT_MOST,
                            limit,
                            UprightField.PASSING_UNDER,
                            "add a lower beam, or close the way below and state what closes it as `space-below`")));
            gapBehind.claim(position).ifPresent(claims::add);
            return claims;
        }

        private List<Finding> faults(String tag, Position position) {
            List<Finding> faults = new ArrayList<>();
            if (!heights.isEmpty()) {
                for (Derived part : position.parts()) {
                    faults.addAll(Requirement.covered(
                            tag,
                            heights.get(0),
                            part.expression(),
                            "set the beams to the heights listed for their number, or use a light curtain"));
                }
            }
            return faults;
        }

        @Override
        public Optional<Behind> behind() {
            return Optional.of(gapBehind);
        }

        @Override
        public Map<String, Object> drawing() {
            Map<String, Stated<Quantity>> beams = new TreeMap<>();
            heights.forEach(height -> beams.put("beam" + (beams.size() + 1), height));
            return Millimetres.of(beams);
        }
    }
}
