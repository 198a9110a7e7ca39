package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.function.FunctionLevel;
import org.cellfile.subject.function.SafetyFunction;

/** A function stops by another category than the stop its trigger was measured with, or than its emergency stop; or by none stated. */
@AutoService(Check.class)
public final class RefuseAnotherStopCategory implements Check {

    public static final FindingId ANOTHER = new FindingId("function.another-stop-category");
    public static final FindingId NONE = new FindingId("function.no-stop-category");

    /**
     * A stop that the function triggers.
     *
     * @param words what it belongs to
     */
    private record Stop(String words, Stated<String> category) {}

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (FunctionLevel function : cell.controlSystem().functions()) {
            if (function.function().stopCategoryStated()) {
                another(function.function(), stops(function, cell)).ifPresent(findings::add);
            } else {
                none(function).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static List<Stop> stops(FunctionLevel function, Cell cell) {
        Stream<Stop> measured = function.triggers().stream()
                .flatMap(trigger -> trigger.safeguard().stopTests().stream())
                .flatMap(tag -> cell.stops().stream()
                        .map(stop -> stop.test())
                        .filter(test -> test.tag().value().equals(tag.value())))
                .distinct()
                .map(test -> new Stop("the stop test `" + test.tag().characters() + "`", test.category()));
        // An emergency stop by category 2 is refused at the device.
        Stream<Stop> emergency = emergencyStops(function)
                .filter(stop -> !stop.category().characters().equals("2"));
        return Stream.concat(measured, emergency).toList();
    }

    private static Stream<Stop> emergencyStops(FunctionLevel function) {
        return function.devices().stream()
                .filter(device -> device.sort() instanceof EmergencyStop)
                .map(device -> new Stop(
                        "the emergency stop `" + device.tag().characters() + "`",
                        ((EmergencyStop) device.sort()).stopCategory()));
    }

    private static Optional<Finding> another(SafetyFunction function, List<Stop> stops) {
        String tag = function.tag().characters();
        List<String> differing = stops.stream()
                .filter(stop -> stop.category().value().isPresent())
                .filter(stop ->
                        !stop.category().value().equals(function.stopCategory().value()))
                .map(stop -> stop.words() + " is of category " + stop.category().characters() + ", "
                        + stop.category().where().position())
                .toList();
        return function.stopCategory().value().isEmpty() || differing.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                                ANOTHER,
                                tag,
                                function.stopCategory().where(),
                                "`" + tag + "` stops by category "
                                        + function.stopCategory().characters()
                                        + ", and what it triggers is described with another",
                                "see at the machine when the power to the drives goes off, and correct the entry that is"
                                        + " wrong")
                        .because(differing));
    }

    private static Optional<Finding> none(FunctionLevel function) {
        boolean stops = function.triggers().stream()
                        .anyMatch(trigger -> trigger.safeguard().kind().stopsTheHazard())
                || emergencyStops(function).findAny().isPresent();
        return stops
                ? Optional.of(Finding.refuses(
                        NONE,
                        function.tag(),
                        function.function().tag().where(),
                        "`" + function.tag() + "` stops the machine, and nothing says by which stop category",
                        "state under `stop-category` 0, 1 or 2, as the stop was measured"))
                : Optional.empty();
    }
}
