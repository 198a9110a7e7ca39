package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.En574;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.trace.Given;

/** A control that both hands have to work as long as the hazard lasts. It protects who works it, and nobody else. */
@AutoService(Kind.class)
public final class TwoHandControl implements Kind {

    /** There are fewer stations than operators. */
    public static final FindingId TOO_FEW_STATIONS = new FindingId("two-hand-control.too-few-stations");

    /** The device accepts actuators worked too long after one another for its type. */
    public static final FindingId NOT_TOGETHER = new FindingId("two-hand-control.asynchrony-too-long");

    /** The type does not ask that both actuators are worked nearly together. */
    public static final FindingId NOT_SYNCHRONOUS = new FindingId("two-hand-control.not-synchronous");

    /** The actuators can be worked with another part of the body. */
    public static final FindingId TOO_LOW = new FindingId("installed.actuators-too-low");

    private static final String YES = "yes";
    private static final String HORIZONTAL = "horizontal";

    @Override
    public String id() {
        return "two-hand-control";
    }

    @Override
    public boolean stopsTheHazard() {
        return true;
    }

    @Override
    public boolean protectsOnlyItsUser() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        Stated<String> type = section.word("type", En574.TYPES);
        boolean synchronous = type.value().filter(En574::synchronous).isPresent();
        Stated<String> shrouded = section.word("shrouded", List.of(YES, "no"));
        if (type.value().isPresent() && !synchronous) {
            section.report(
                    Finding.warns(
                            NOT_SYNCHRONOUS,
                            tag,
                            type.where(),
                            "`" + tag + "` is of type " + type.characters()
                                    + ", with which one actuator may be held down long before the other is worked",
                            "use a control of type III, or say in the risk assessment why holding one down gains nothing here"));
        }
        return new Control(
                type,
                synchronous
                        ? section.quantity("asynchrony", Dimension.TIME)
                        : section.quantityIfStated("asynchrony", Dimension.TIME),
                shrouded,
                shrouded.value().filter(YES::equals).isPresent()
                        ? section.statement("shroud")
                        : section.statementIfStated("shroud"),
                section.positive("height", Dimension.LENGTH),
                section.word("surface", List.of(HORIZONTAL, "inclined", "upright")),
                section.count("operators"),
                section.count("stations"),
                section.sectionIfStated("clutch").map(Clutch::read));
    }

    /**
     * A clutch that goes through its turn once it has engaged.
     *
     * @param points at which it engages in one turn, a count
     * @param turn time of one turn
     */
    private record Clutch(Stated<Quantity> points, Stated<Quantity> turn) {
        static Clutch read(Section section) {
            Clutch clutch = new Clutch(section.count("points"), section.positive("turn", Dimension.TIME));
            section.close();
            return clutch;
        }

        PositioningStandard.Clutch asked() {
            return new PositioningStandard.Clutch(
                    new Given("N", "points at which the clutch engages in one turn", points),
                    new Given("t_r", "time of one turn", turn));
        }
    }

    /**
     * One two-hand control.
     *
     * @param asynchrony longest time between both actuators that it accepts
     * @param shroud what keeps hands back from the hazard while it is worked
     * @param height of the actuators above the floor
     * @param surface how the surface lies in which the actuators are
     * @param clutch of a machine that cannot be stopped within its turn
     */
    private record Control(
            Stated<String> type,
            Stated<Quantity> asynchrony,
            Stated<String> shrouded,
            Stated<String> shroud,
            Stated<Quantity> height,
            Stated<String> surface,
            Stated<Quantity> operators,
            Stated<Quantity> stations,
            Optional<Clutch> clutch)
            implements Device {

        private boolean isShrouded() {
            return shrouded.value().filter(YES::equals).isPresent();
        }

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>();
            facts.add(new Fact(
                    "Type", type.characters(), type.value().map(En574::does).orElse("")));
            asynchrony
                    .value()
                    .ifPresent(time -> facts.add(new Fact(
                            "Asynchrony",
                            asynchrony.characters(),
                            "longest time between both actuators that it accepts")));
            facts.add(new Fact("Shrouded", shrouded.characters(), shroud.value().orElse("")));
            facts.add(new Fact(
                    "Actuators",
                    height.characters() + " above the floor",
                    "in a surface that is " + surface.characters()));
            facts.add(new Fact(
                    "Stations", stations.characters(), "operators in reach of the hazard: " + operators.characters()));
            clutch.ifPresent(one -> facts.add(new Fact(
                    "Clutch",
                    "turn of " + one.turn.characters(),
                    "engages at " + one.points.characters() + " points of a turn and cannot stop within it")));
            return facts;
        }

        @Override
        public Set<String> features() {
            Set<String> features = new TreeSet<>();
            if (type.value().filter(En574::reinitiating).isPresent()) {
                features.add("re-initiation");
            }
            if (type.value().filter(En574::synchronous).isPresent()) {
                features.add("synchronous");
            }
            return features;
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            return around.positioning()
                    .twoHandControl(new PositioningStandard.TwoHandControl(
                            around.approach(), isShrouded(), clutch.map(Clutch::asked)))
                    .map(position -> Positioning.of(position, List.of(), List.of()));
        }

        @Override
        public List<Claim> requirements(String about) {
            List<Claim> requirements = new ArrayList<>();
            requirements.add(new Claim(
                    "number of stations",
                    stations,
                    Relation.AT_LEAST,
                    En574.leastStations(about, new Given("n_o", "operators in reach of the hazard", operators)),
                    TOO_FEW_STATIONS,
                    "give each operator a station, or keep the others away from the hazard by another" + " safeguard"));
            if (type.value().filter(En574::synchronous).isPresent()) {
                requirements.add(new Claim(
                        "asynchrony",
                        asynchrony,
                        Relation.AT_MOST,
                        En574.longestAsynchrony(about),
                        NOT_TOGETHER,
                        "set the device, or choose one, so that a later second hand starts nothing, and test it"));
            }
            if (surface.value().filter(HORIZONTAL::equals).isPresent()) {
                requirements.add(new Claim(
                        "height of the actuators",
                        height,
                        Relation.AT_LEAST,
                        En574.leastHeight(about),
                        TOO_LOW,
                        "raise the actuators, or cover them so that nothing but a hand can work them and let a named person"
                                + " state a deviation"));
            }
            return requirements;
        }

        @Override
        public Footprint footprint() {
            return Footprint.SPOT;
        }

        @Override
        public Map<String, Object> drawing() {
            Map<String, Object> data = new TreeMap<>(Millimetres.of(Map.of("actuators", height)));
            if (isShrouded()) {
                data.put("shrouded", true);
            }
            return data;
        }
    }
}
