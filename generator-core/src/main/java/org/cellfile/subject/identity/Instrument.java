package org.cellfile.subject.identity;

import java.time.LocalDate;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/** A measuring instrument and its calibration. */
public record Instrument(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> serial,
        Stated<Quantity> resolution,
        Stated<String> certificate,
        Stated<LocalDate> calibrated,
        Stated<LocalDate> due) {

    public static final String SORT = "instrument";

    /** An instrument was used on a day on which its calibration did not hold. */
    public static final FindingId NOT_CALIBRATED = new FindingId("instrument.not-calibrated");

    static Instrument read(Section section) {
        return new Instrument(
                section.tag(SORT),
                section.text("name"),
                section.text("serial"),
                section.anyQuantity("resolution"),
                section.text("certificate"),
                section.date("calibrated"),
                section.date("calibration-due"));
    }

    /**
     * The finding when the calibration did not hold on the day of a measurement.
     *
     * @param used where the measurement names the instrument
     */
    public Optional<Finding> notCalibrated(String about, Stated<String> used, Stated<LocalDate> on) {
        if (on.value().isEmpty() || calibrated.value().isEmpty() || due.value().isEmpty()) {
            return Optional.empty();
        }
        LocalDate day = on.value().get();
        if (!day.isBefore(calibrated.value().get()) && !day.isAfter(due.value().get())) {
            return Optional.empty();
        }
        return Optional.of(Finding.refuses(
                NOT_CALIBRATED,
                about,
                used.where(),
                "`" + used.characters() + "` measured `" + about + "` on " + day + ", outside its calibration from "
                        + calibrated.value().get() + " to " + due.value().get() + " ("
                        + due.where().position() + ")",
                "measure again with a calibrated instrument, or state the certificate that held on that day"));
    }
}
