package org.cellfile.subject.identity;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * A measuring instrument and its calibrations.
 *
 * @param calibration the latest
 * @param earlier those before, under which older measurements were made
 */
public record Instrument(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> serial,
        Stated<Quantity> resolution,
        Calibration calibration,
        List<Calibration> earlier) {

    /**
     * A calibration.
     *
     * @param due the last day on which it holds
     */
    public record Calibration(Stated<String> certificate, Stated<LocalDate> calibrated, Stated<LocalDate> due) {
        static Calibration read(Section section) {
            Stated<LocalDate> calibrated = section.date("calibrated");
            return new Calibration(
                    section.text("certificate"),
                    calibrated,
                    section.inOrder("calibrated", calibrated, "calibration-due", section.date("calibration-due")));
        }

        /** True when it held on that day. Open where a date could not be read. */
        boolean holds(LocalDate day) {
            return calibrated.value().filter(day::isBefore).isEmpty()
                    && due.value().filter(day::isAfter).isEmpty();
        }

        private String words() {
            return "from " + calibrated.characters() + " to " + due.characters();
        }
    }

    public static final String SORT = "instrument";

    /** An instrument was used on a day on which its calibration did not hold. */
    public static final FindingId NOT_CALIBRATED = new FindingId("instrument.not-calibrated");

    static Instrument read(Section section) {
        Instrument instrument = new Instrument(
                section.tag(SORT),
                section.text("name"),
                section.text("serial"),
                section.anyQuantity("resolution"),
                Calibration.read(section),
                Section.each(section.listIfStated("earlier-calibrations"), Calibration::read));
        for (Calibration earlier : instrument.earlier) {
            section.inOrder(
                    "earlier-calibrations", earlier.calibrated, "calibrated", instrument.calibration.calibrated);
        }
        return instrument;
    }

    /** Every calibration, the latest first. */
    public List<Calibration> calibrations() {
        return Stream.concat(Stream.of(calibration), earlier.stream()).toList();
    }

    /**
     * The finding when the calibration did not hold on the day of a measurement.
     *
     * @param used where the measurement names the instrument
     */
    public Optional<Finding> notCalibrated(String about, Stated<String> used, Stated<LocalDate> on) {
        if (on.value().isEmpty()
                || calibrations().stream().anyMatch(one -> one.holds(on.value().get()))) {
            return Optional.empty();
        }
        return Optional.of(Finding.refuses(
                NOT_CALIBRATED,
                about,
                used.where(),
                "`" + used.characters() + "` measured `" + about + "` on "
                        + on.value().get() + ", outside its calibration "
                        + calibrations().stream().map(Calibration::words).collect(Collectors.joining(" and ")) + " ("
                        + calibration.due().where().position() + ")",
                "measure again with a calibrated instrument, or state the certificate that held on that day"));
    }
}
