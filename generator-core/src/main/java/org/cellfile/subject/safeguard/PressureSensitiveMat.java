package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
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
import org.cellfile.standard.PositioningStandard.Mat;
import org.cellfile.trace.Given;

/** A mat, or a floor, that detects who stands on it. Its distance is measured from the edge people come from. */
@AutoService(Kind.class)
public final class PressureSensitiveMat implements Kind {

    /** Somebody can step over the mat. */
    public static final FindingId TOO_NARROW = new FindingId("installed.mat-too-narrow");

    @Override
    public String id() {
        return "pressure-sensitive-mat";
    }

    @Override
    public boolean stopsTheHazard() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        return new Surface(section.quantity("step", Dimension.LENGTH), section.positive("width", Dimension.LENGTH));
    }

    /**
     * The surface of one mat.
     *
     * @param step height of what it lies on above the floor people come from; zero when it lies on that floor
     * @param width in the direction of approach
     */
    private record Surface(Stated<Quantity> step, Stated<Quantity> width) implements Device {

        @Override
        public List<Fact> facts() {
            return List.of(
                    new Fact("Width", width.characters(), "in the direction of approach"),
                    new Fact(
                            "Step",
                            step.characters(),
                            "height of what the mat lies on above the floor people come from"));
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            return around.positioning()
                    .mat(new Mat(around.approach(), new Given("H", "height of the step", step)))
                    .map(position -> Positioning.of(position, claims(position), faults(around.tag(), position)));
        }

        private List<Finding> faults(String tag, Position position) {
            return position.parts().stream()
                    .flatMap(part -> Requirement.covered(
                            tag,
                            step,
                            part.expression(),
                            "lay the mat on a lower surface, or use another kind of safeguard")
                            .stream())
                    .toList();
        }

        private List<Claim> claims(Position position) {
            return position.limit("least-width").stream()
                    .map(limit -> new Claim(
                            "width of the mat",
                            width,
                            Relation.AT_LEAST,
                            limit,
                            TOO_NARROW,
                            "lay a wider mat, or one more behind it without a gap; until then a named person may state a"
                                    + " deviation"))
                    .toList();
        }

        @Override
        public Footprint footprint() {
            return Footprint.AREA;
        }

        @Override
        public Optional<Stated<Quantity>> depth() {
            return Optional.of(width);
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("step", step, "width", width));
        }
    }
}
