package org.cellfile.subject.stopping;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.claim.Recorded;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.CellFacts;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.identity.Person;

/**
 * A stop that was measured.
 *
 * @param brakeMonitor time at which a monitor of the brake reports a slow stop; missing where there is no such monitor
 * @param carriedTime the stopping time used in the distances, stated by whoever answers for the measurement
 * @param carriedDistance the stopping distance used in the hazard zones
 * @param usedAt what the machine is used with in production
 * @param repeat how often it is measured again
 * @param repeatStated true when that is written, whether it could be read or not
 * @param history earlier measurements of the same stop
 */
public record StopTest(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> mode,
        Stated<String> category,
        Stated<String> method,
        Stated<String> instrument,
        Stated<String> measuredBy,
        Stated<LocalDate> on,
        List<StopCondition> conditions,
        Stated<Quantity> brakeMonitor,
        Stated<Quantity> carriedTime,
        Stated<Quantity> carriedDistance,
        UsedAt usedAt,
        Optional<Repeat> repeat,
        boolean repeatStated,
        List<EarlierMeasurement> history,
        Optional<WearAllowance> wearAllowance,
        Recorded recorded) {

    public static final String SORT = "stop test";

    public static StopTest read(Section section) {
        Stated<String> tag = section.tag(SORT);
        Section carried = section.section("carried-forward");
        StopTest test = new StopTest(
                tag,
                section.text("name"),
                section.reference("mode", CellFacts.MODE),
                section.word("stop-category", Set.of("0", "1", "2")),
                section.text("method"),
                section.reference("instrument", Instrument.SORT),
                section.reference("measured-by", Person.SORT),
                section.date("on"),
                Section.each(section.list("conditions"), condition -> StopCondition.read(condition, tag.characters())),
                section.quantityIfStated("brake-monitor", Dimension.TIME),
                carried.positive("time", Dimension.TIME),
                carried.quantity("distance", Dimension.LENGTH),
                UsedAt.read(section),
                section.sectionIfStated("interval").map(Repeat::read),
                section.has("interval"),
                Section.each(section.listIfStated("history"), EarlierMeasurement::read),
                section.sectionIfStated("wear-allowance").map(WearAllowance::read),
                Recordings.read(section, tag.characters()));
        carried.close();
        return test;
    }
}
