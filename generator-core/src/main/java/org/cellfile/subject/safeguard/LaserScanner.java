package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.trace.Given;

/** A laser scanner whose field lies parallel to the floor or stands up like that of a light curtain. */
@AutoService(Kind.class)
public final class LaserScanner implements Kind {

    @Override
    public String id() {
        return "laser-scanner";
    }

    @Override
    public boolean stopsTheHazard() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        Stated<String> field = section.wordIfStated("field", Set.of("parallel", "vertical"));
        Stated<Quantity> resolution = section.positive("resolution", Dimension.LENGTH);
        return field.value().filter("vertical"::equals).isPresent()
                ? new Vertical(resolution, UprightField.read(section, tag), Supplement.read(section))
                : new Parallel(
                        resolution, section.quantity("field-height", Dimension.LENGTH), Supplement.read(section));
    }

    /** One scanner with a field parallel to the floor; height from the floor. */
    private record Parallel(Stated<Quantity> resolution, Stated<Quantity> height, List<Supplement> supplements)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(
                    new Fact("Resolution", resolution.characters()),
                    new Fact("Height of the field", height.characters() + " above the floor")));
            supplements.forEach(supplement -> facts.add(supplement.fact()));
            return facts;
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            return new LevelField(height, "height of the field", false)
                    .position(around, new Given("d", "resolution", resolution), supplements, List.of());
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("fieldHeight", height));
        }
    }

    /** One scanner with an upright field. */
    private record Vertical(Stated<Quantity> resolution, UprightField field, List<Supplement> supplements)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(new Fact("Resolution", resolution.characters())));
            facts.addAll(field.facts());
            supplements.forEach(supplement -> facts.add(supplement.fact()));
            return facts;
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            Demands passing = field.alongPlane(around) ? Demands.NONE : WalkThrough.demands(around, field);
            return field.position(around, new Given("d", "resolution", resolution), supplements, false)
                    .map(positioning -> positioning.and(passing));
        }

        @Override
        public Map<String, Object> drawing() {
            return field.drawing();
        }
    }
}
