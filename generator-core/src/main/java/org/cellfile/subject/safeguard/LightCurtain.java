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

/** A light curtain: an upright field, some beams of which may be blanked. */
@AutoService(Kind.class)
public final class LightCurtain implements Kind {

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
        Stated<Quantity> resolution = section.positive("resolution", Dimension.LENGTH);
        return new Curtain(
                resolution,
                UprightField.read(section, tag),
                Blanking.read(section, tag, resolution),
                section.wordIfStated("initiates-cycle", Set.of("yes", "no")));
    }

    /**
     * One light curtain.
     *
     * @param initiatesCycle {@code yes} when the machine starts as soon as the field is left
     */
    private record Curtain(
            Stated<Quantity> resolution, UprightField field, Optional<Blanking> blanking, Stated<String> initiatesCycle)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(new Fact("Resolution", resolution.characters())));
            blanking.ifPresent(blanked -> facts.add(blanked.fact()));
            facts.addAll(field.facts());
            if (startsCycle()) {
                facts.add(new Fact("Start", "the machine starts as soon as the field is left"));
            }
            return facts;
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            Given counted = blanking.map(blanked -> blanked.counted(resolution))
                    .orElseGet(() -> new Given("d", "resolution", resolution));
            return field.position(around, counted, List.of(), startsCycle());
        }

        @Override
        public Optional<Quantity> testPiece() {
            return blanking.map(blanked -> blanked.counted(resolution).value()).orElseGet(resolution::value);
        }

        private boolean startsCycle() {
            return initiatesCycle.value().filter("yes"::equals).isPresent();
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
