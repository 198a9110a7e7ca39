package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.trace.Given;

/** A laser scanner whose field lies parallel to the floor or stands up like that of a light curtain. */
@AutoService(Kind.class)
public final class LaserScanner implements Kind {

    /**
     * No supplement is stated. Makers ask for one for measuring tolerance, commonly 100 mm (Datalogic Laser Sentinel manual, p. 16;
     * SICK S300 operating instructions 8010948, p. 39).
     */
    static final FindingId NO_SUPPLEMENT = new FindingId("laser-scanner.no-supplement");

    @Override
    public String id() {
        return "laser-scanner";
    }

    @Override
    public boolean stopsTheHazard() {
        return true;
    }

    /** Its fields. */
    @Override
    public boolean configured() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        Stated<String> field = section.wordIfStated("field", Set.of("parallel", "vertical"));
        Stated<Quantity> resolution = section.positive("resolution", Dimension.LENGTH);
        List<Supplement> supplements = Supplement.read(section);
        if (supplements.isEmpty()) {
            section.report(
                    Finding.warns(
                            NO_SUPPLEMENT,
                            tag,
                            section.where(),
                            "nothing is listed that the maker of `" + tag + "` asks to be added to the distance",
                            "makers of scanners ask for a supplement for the tolerance of the measurement, commonly 100 mm: state under"
                                    + " `supplements` what the instructions of this one say, 0 mm with its source where they ask for none"));
        }
        return field.value().filter("vertical"::equals).isPresent()
                ? new Vertical(resolution, UprightField.read(section, tag), supplements)
                : new Parallel(
                        resolution,
                        new LevelField(
                                section.quantity("field-height", Dimension.LENGTH),
                                "height of the field",
                                section.statementIfStated("space-below")),
                        supplements);
    }

    /** One scanner with a field parallel to the floor; height from the floor. */
    private record Parallel(Stated<Quantity> resolution, LevelField field, List<Supplement> supplements)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(
                    new Fact("Resolution", resolution.characters()),
                    new Fact("Height of the field", field.height().characters() + " above the floor")));
            LevelField.below(field.spaceBelow()).ifPresent(facts::add);
            supplements.forEach(supplement -> facts.add(supplement.fact()));
            return facts;
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            return field.position(around, new Given("d", "resolution", resolution), supplements, List.of());
        }

        @Override
        public Optional<Quantity> testPiece() {
            return resolution.value();
        }

        @Override
        public Footprint footprint() {
            return Footprint.AREA;
        }

        @Override
        public boolean looksFromOnePlace() {
            return true;
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("fieldHeight", field.height()));
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
            return field.position(around, new Given("d", "resolution", resolution), supplements, false)
                    .map(positioning -> field.alongPlane(around)
                            ? positioning
                            : positioning.and(WalkThrough.demands(around, field, positioning.position())));
        }

        @Override
        public Optional<Quantity> testPiece() {
            return resolution.value();
        }

        @Override
        public Optional<Behind> behind() {
            return Optional.of(field.behind());
        }

        @Override
        public Map<String, Object> drawing() {
            return field.drawing();
        }
    }
}
