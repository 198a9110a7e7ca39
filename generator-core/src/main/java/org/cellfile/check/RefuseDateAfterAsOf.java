package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.verification.Round;

/** Something that is said to have happened after the day the description speaks of. */
@AutoService(Check.class)
public final class RefuseDateAfterAsOf implements Check {

    public static final FindingId ID = new FindingId("date.after-as-of");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Stated<LocalDate> asOf = cell.identity().facts().asOf();
        List<Finding> findings = new ArrayList<>();
        asOf.value()
                .ifPresent(last -> dates(cell).forEach((date, what) -> {
                    if (date.value().isPresent() && date.value().get().isAfter(last)) {
                        findings.add(Finding.refuses(
                                ID,
                                "",
                                date.where(),
                                what + " is dated " + date.characters() + ", after the day this description speaks of, "
                                        + last + " (" + asOf.where().position() + ")",
                                help(cell, date)));
                    }
                }));
        return findings;
    }

    private static String help(Cell cell, Stated<LocalDate> date) {
        return cell.signOffs().signed().stream().anyMatch(one -> one.on().equals(date))
                ? "correct the date, or move `as-of` to the day of signing, which voids no sign-off, and look at what falls due"
                : "correct the date, or move `as-of` forward and look at everything again";
    }

    private static Map<Stated<LocalDate>, String> dates(Cell cell) {
        Map<Stated<LocalDate>, String> dates = new LinkedHashMap<>();
        cell.identity()
                .revisions()
                .forEach(revision -> dates.put(
                        revision.on(), "revision `" + revision.revision().characters() + "`"));
        cell.identity()
                .confirmations()
                .forEach(confirmation -> dates.put(
                        confirmation.on(),
                        "the confirmation of `" + confirmation.value().characters() + "`"));
        cell.identity()
                .copyValues()
                .forEach(copy ->
                        dates.put(copy.on(), "the reading of `" + copy.value().characters() + "` in a copy"));
        dates.put(cell.identity().dates().built(), "the building of the cell");
        cell.identity()
                .instruments()
                .forEach(instrument -> instrument
                        .calibrations()
                        .forEach(calibration -> dates.put(
                                calibration.calibrated(),
                                "a calibration of `" + instrument.tag().characters() + "`")));
        dates.putAll(DatesAtTheCell.of(cell));
        cell.registers().otherDates().forEach(dates::put);
        cell.energies().ifPresent(energies -> dates.putAll(energies.dates()));
        cell.sheets()
                .inLanguages()
                .reviews()
                .forEach(review -> dates.put(
                        review.on(),
                        "the review of the wording in `" + review.language().characters() + "`"));
        // A part may have served elsewhere before this cell was built, but it cannot be in it before it is put there.
        cell.controlSystem()
                .parts()
                .forEach(part -> dates.put(part.part().installed(), "the installation of `" + part.tag() + "`"));
        cell.controlSystem()
                .subsystems()
                .forEach(subsystem -> subsystem
                        .subsystem()
                        .maker()
                        .ifPresent(maker ->
                                dates.put(maker.installed(), "the installation of `" + subsystem.tag() + "`")));
        cell.stops().forEach(stop -> dates.put(stop.test().on(), "the stop test `" + stop.tag() + "`"));
        cell.signOffs()
                .signed()
                .forEach(one -> dates.put(
                        one.on(),
                        "the sign-off `" + one.words().characters() + "` by `"
                                + one.by().characters() + "`"));
        cell.sheets()
                .briefings()
                .forEach(briefing -> dates.put(
                        briefing.on(), "a briefing by `" + briefing.by().characters() + "`"));
        for (Round round : cell.verification().rounds()) {
            String tag = "`" + round.tag().characters() + "`";
            dates.put(round.on(), "the round of tests " + tag);
            round.results()
                    .forEach(result -> result.remedy()
                            .ifPresent(remedy -> dates.put(remedy.on(), "the remedy of a defect found in " + tag)));
        }
        return dates;
    }
}
