package org.cellfile.subject.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.identity.Identity;

/**
 * The registers of the cell.
 *
 * @param changes in the order written
 * @param bypasses open ones and ended ones
 * @param noSpares where the spare actuators went that are listed nowhere, and who saw it; missing where nobody says so
 * @param openPoints open ones and closed ones
 * @param decisions whether changes are substantial
 */
public record Registers(
        List<Change> changes,
        List<Bypass> bypasses,
        List<SpareActuator> spareActuators,
        Stated<String> noSpares,
        List<ModeKey> modeKeys,
        List<OpenPoint> openPoints,
        List<Configuration> configurations,
        List<ModificationDecision> decisions) {

    public static Registers read(Section top) {
        return new Registers(
                Section.each(top.listIfStated("changes"), Change::read),
                Section.each(top.listIfStated("bypasses"), Bypass::read),
                Section.each(top.listIfStated("spare-actuators"), SpareActuator::read),
                top.statementIfStated("no-spares"),
                Section.each(top.listIfStated("mode-keys"), ModeKey::read),
                Section.each(top.listIfStated("open-points"), OpenPoint::read),
                Section.each(top.listIfStated("configurations"), Configuration::read),
                Section.each(top.listIfStated("decisions"), ModificationDecision::read));
    }

    /** The days on which something happened at the cell, with what it was. */
    public Map<Stated<LocalDate>, String> dates() {
        Map<Stated<LocalDate>, String> dates = new LinkedHashMap<>();
        changes.forEach(
                change -> dates.put(change.on(), "the change `" + change.tag().characters() + "`"));
        bypasses.forEach(
                bypass -> dates.put(bypass.from(), "the bypass `" + bypass.tag().characters() + "`"));
        configurations.forEach(configuration -> configuration
                .displayed()
                .forEach(displayed -> dates.put(
                        displayed.on(),
                        "the reading of the configuration `"
                                + configuration.tag().characters() + "` as " + displayed.state())));
        return dates;
    }

    /** Further days that cannot lie ahead, and may lie before the cell was built or follow from others. */
    public Map<Stated<LocalDate>, String> otherDates() {
        Map<Stated<LocalDate>, String> dates = new LinkedHashMap<>();
        bypasses.forEach(bypass -> dates.put(
                bypass.ended(), "the end of the bypass `" + bypass.tag().characters() + "`"));
        decisions.forEach(decision ->
                dates.put(decision.on(), "the decision `" + decision.tag().characters() + "`"));
        modeKeys.forEach(key -> dates.put(
                key.received(), "the receipt of the mode key `" + key.number().characters() + "`"));
        openPoints.forEach(point -> {
            dates.put(point.since(), "the open point `" + point.tag().characters() + "`");
            dates.put(
                    point.closed(),
                    "the closing of the open point `" + point.tag().characters() + "`");
        });
        return dates;
    }

    /** The ends of what is still open. */
    public List<Due> dues(Identity identity) {
        List<Due> dues = new ArrayList<>();
        for (Bypass bypass : bypasses) {
            if (bypass.open()) {
                bypass.until()
                        .value()
                        .ifPresent(until -> dues.add(new Due(
                                until,
                                bypass.tag().characters(),
                                "take the bypass out: " + bypass.what().characters(),
                                "register of bypasses, answered for by " + identity.nameOf(bypass.by()),
                                bypass.until().where())));
            }
        }
        for (OpenPoint point : openPoints) {
            if (point.open()) {
                point.until()
                        .value()
                        .ifPresent(until -> dues.add(new Due(
                                until,
                                point.tag().characters(),
                                "close the open point: " + point.what().characters(),
                                "list of open points, answered for by " + identity.nameOf(point.owner()),
                                point.until().where())));
            }
        }
        return dues;
    }
}
