package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.register.Change;
import org.cellfile.subject.register.Configuration;

/** Nobody can tell which configuration a robot or a scanner has, or it was read too early, or it is not posted. */
@AutoService(Check.class)
public final class BarMissingConfiguration implements Check {

    public static final FindingId MISSING = new FindingId("configuration.missing");
    public static final FindingId NOT_POSTED = new FindingId("configuration.not-posted");
    public static final FindingId BEFORE_CHANGE = new FindingId("configuration.before-change");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        cell.robots().forEach(robot -> missing(cell, robot.robot().tag(), findings));
        cell.safeguards().stream()
                .filter(guarding -> guarding.safeguard().kind().configured())
                .forEach(guarding -> missing(cell, guarding.safeguard().tag(), findings));
        for (Configuration configuration : cell.registers().configurations()) {
            String tag = configuration.tag().characters();
            if (configuration.posted().isEmpty()) {
                findings.add(
                        Finding.barsRelease(
                                NOT_POSTED,
                                tag,
                                configuration.tag().where(),
                                "the configuration `" + tag + "` is not posted at the machine yet",
                                "post the sheet printed with the draft, read the value off it there, and state it under `posted`"));
            }
            cell.registers().changes().stream()
                    .filter(change ->
                            configuration.of().value().filter(change::touches).isPresent())
                    .filter(change -> change.on()
                            .value()
                            .filter(day -> readBefore(configuration, day))
                            .isPresent())
                    .findFirst()
                    .ifPresent(change -> findings.add(beforeChange(configuration, change)));
        }
        return findings;
    }

    private static void missing(Cell cell, Stated<String> tag, List<Finding> findings) {
        if (tag.value().isPresent()
                && cell.registers().configurations().stream().noneMatch(one -> one.isOf(tag.characters()))) {
            findings.add(Finding.barsRelease(
                    MISSING,
                    tag.characters(),
                    tag.where(),
                    "nothing under `configurations` tells which configuration `" + tag.characters()
                            + "` was tested with",
                    "read the checksum or signature of its safety configuration where the maker's instructions say, and state"
                            + " which of the displayed values it is"));
        }
    }

    private static boolean readBefore(Configuration configuration, LocalDate day) {
        return configuration.installed().on().value().filter(day::isAfter).isPresent();
    }

    private static Finding beforeChange(Configuration configuration, Change change) {
        String tag = configuration.tag().characters();
        return Finding.barsRelease(
                BEFORE_CHANGE,
                tag,
                configuration.installed().on().where(),
                "the configuration `" + tag + "` was read on "
                        + configuration.installed().on().characters() + ", and `"
                        + configuration.of().characters() + "` was changed after that, on "
                        + change.on().characters() + " (`" + change.tag().characters() + "`, "
                        + change.tag().where().position() + ")",
                "test what the change touched, and read the value again at the machine");
    }
}
