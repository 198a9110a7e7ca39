package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Position;
import org.cellfile.standard.PositioningStandard.ParallelField;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;

/** A laser scanner whose field lies parallel to the floor and is approached along its plane. */
@AutoService(Kind.class)
public final class LaserScanner implements Kind {

    /** The field lies lower than its resolution allows. */
    public static final FindingId FIELD_TOO_LOW = new FindingId("installed.field-too-low");

    /** The field lies higher than the edition allows. */
    public static final FindingId FIELD_TOO_HIGH = new FindingId("installed.field-too-high");

    /** The field is so high that somebody may crawl under it. */
    public static final FindingId CRAWLING_UNDER = new FindingId("laser-scanner.crawling-under");

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
        return new Field(
                section.positive("resolution", Dimension.LENGTH),
                section.quantity("field-height", Dimension.LENGTH),
                Section.each(section.listIfStated("supplements"), Supplement::read));
    }

    /** What the maker asks to be added to the distance. */
    private record Supplement(Stated<String> name, Stated<Quantity> distance, Stated<String> source) {
        static Supplement read(Section section) {
            return new Supplement(
                    section.text("name"), section.quantity("distance", Dimension.LENGTH), section.text("source"));
        }
    }

    /** The field of one scanner; height from the floor. */
    private record Field(Stated<Quantity> resolution, Stated<Quantity> height, List<Supplement> supplements)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(
                    new Fact("Resolution", resolution.characters()),
                    new Fact("Height of the field", height.characters() + " above the floor")));
            for (Supplement supplement : supplements) {
                facts.add(new Fact(
                        "Supplement",
                        supplement.distance.characters() + ", " + supplement.name.characters(),
                        supplement.source.characters()));
            }
            return facts;
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            return around.positioning()
                    .parallel(new ParallelField(
                            around.approach(),
                            new Given("d", "resolution", resolution),
                            new Given("H", "height of the field", height),
                            added()))
                    .map(position -> Positioning.of(position, claims(position), crawling(around.tag(), position)));
        }

        private List<Term> added() {
            List<Term> added = new ArrayList<>();
            for (Supplement supplement : supplements) {
                added.add(new Given(
                        supplements.size() == 1 ? "Z" : "Z_" + (added.size() + 1),
                        supplement.name.characters() + ", " + supplement.source.characters(),
                        supplement.distance));
            }
            return added;
        }

        private List<Claim> claims(Position position) {
            List<Claim> claims = new ArrayList<>();
            position.limit("least-height")
                    .ifPresent(limit -> claims.add(new Claim(
                            "height of the field",
                            height,
                            Relation.AT_LEAST,
                            limit,
                            FIELD_TOO_LOW,
                            "raise the field, or use a finer resolution")));
            position.limit("greatest-height")
                    .ifPresent(limit -> claims.add(new Claim(
                            "height of the field",
                            height,
                            Relation.AT_MOST,
                            limit,
                            FIELD_TOO_HIGH,
                            "lower the field; above this height people walk under it")));
            return claims;
        }

        private List<Finding> crawling(String tag, Position position) {
            return position.limit("crawling-height").stream()
                    .filter(limit -> height.value()
                            .flatMap(stated -> limit.value().map(value -> stated.compareTo(value) > 0))
                            .orElse(false))
                    .map(limit -> Finding.warns(
                            CRAWLING_UNDER,
                            tag,
                            height.where(),
                            "the field of `" + tag + "` lies at " + height.characters() + ", above "
                                    + Workings.shown(limit) + ", so that somebody may crawl under it ("
                                    + limit.clause() + ")",
                            "assess it in the risk assessment and say in `position` what closes the space below"))
                    .toList();
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("fieldHeight", height));
        }
    }
}
