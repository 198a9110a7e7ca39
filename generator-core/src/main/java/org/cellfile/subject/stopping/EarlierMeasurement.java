package org.cellfile.subject.stopping;

import java.time.LocalDate;
import java.util.Set;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.identity.Person;

/**
 * What an earlier measurement of the same stop came to.
 *
 * @param time that governed over all conditions, as it was reported then
 * @param distance that governed, as it was reported then
 * @param occasion why it was measured
 * @param report in which its runs stand
 * @param load greatest of the conditions then
 * @param speed greatest of the conditions then
 */
public record EarlierMeasurement(
        Stated<LocalDate> on,
        Stated<Quantity> time,
        Stated<Quantity> distance,
        Stated<String> measuredBy,
        Stated<String> instrument,
        Stated<String> occasion,
        Stated<String> report,
        Stated<Quantity> load,
        Stated<Quantity> speed) {

    private static final Set<String> OCCASIONS = Set.of("first use", "recurring", "after change");

    static EarlierMeasurement read(Section section) {
        return new EarlierMeasurement(
                section.date("on"),
                section.positive("time", Dimension.TIME),
                section.quantity("distance", Dimension.LENGTH),
                section.reference("measured-by", Person.SORT),
                section.reference("instrument", Instrument.SORT),
                section.word("occasion", OCCASIONS),
                section.statement("report"),
                section.quantity("load", Dimension.MASS),
                section.positive("speed", Dimension.SPEED));
    }
}
