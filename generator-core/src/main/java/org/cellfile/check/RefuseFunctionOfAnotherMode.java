package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.function.FunctionLevel;
import org.cellfile.subject.function.SafetyFunction;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.safeguard.Safeguard;

/** A function acts in a mode in which what triggers it does not, or does not act in one in which that does: the mode matrix says which. */
@AutoService(Check.class)
public final class RefuseFunctionOfAnotherMode implements Check {

    public static final FindingId AT_REST = new FindingId("function.trigger-at-rest");
    public static final FindingId LEFT_OUT = new FindingId("function.mode-left-out");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (FunctionLevel function : cell.controlSystem().functions()) {
            for (Stated<String> named : function.function().modes()) {
                mode(named, cell)
                        .ifPresent(mode -> atRest(function, named, mode, cell).ifPresent(findings::add));
            }
        }
        cell.modes().forEach(mode -> findings.addAll(leftOut(mode, cell)));
        return findings;
    }

    private static Optional<Mode> mode(Stated<String> tag, Cell cell) {
        return cell.modes().stream()
                .filter(mode ->
                        mode.tag().value().isPresent() && mode.tag().value().equals(tag.value()))
                .findFirst();
    }

    private static Optional<Finding> atRest(FunctionLevel function, Stated<String> named, Mode mode, Cell cell) {
        List<String> rest = new ArrayList<>();
        function.triggers().stream()
                .map(trigger -> trigger.safeguard())
                .filter(safeguard -> doesNotAct(safeguard, mode))
                .forEach(safeguard -> rest.add("`" + safeguard.tag().characters() + "` is "
                        + mode.state(safeguard).words() + ", "
                        + mode.place(safeguard).where().position()));
        // An emergency stop that a mode leaves out is refused at the mode.
        function.devices().stream()
                .filter(device -> device.sort() instanceof EnablingDevice && !enables(device, mode))
                .filter(device -> !lacksOne(mode, cell))
                .forEach(device -> rest.add("`" + device.tag().characters() + "` is not among the enabling devices of `"
                        + mode.tag().characters() + "`, " + mode.tag().where().position()));
        return rest.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                                AT_REST,
                                function.tag(),
                                named.where(),
                                "`" + function.tag() + "` acts in `" + named.characters()
                                        + "`, in which not everything that triggers it does",
                                "see at the machine what acts in this mode, and correct the function or the mode; what"
                                        + " triggers it in other modes only is a function of its own")
                        .because(rest));
    }

    /** That one is suspended in automatic is refused as such. */
    private static boolean doesNotAct(Safeguard safeguard, Mode mode) {
        return mode.state(safeguard) == State.NOT_APPLICABLE
                || (mode.state(safeguard) == State.SUSPENDED && !mode.is(Mode.AUTOMATIC));
    }

    /** That a mode names no enabling device where one is due is refused at the mode. */
    private static boolean lacksOne(Mode mode, Cell cell) {
        return (mode.manual() || mode.inside() > 0)
                && cell.complementary().stream()
                        .map(complement -> complement.device())
                        .noneMatch(device -> device.sort() instanceof EnablingDevice && enables(device, mode));
    }

    private static boolean enables(ComplementaryDevice device, Mode mode) {
        return mode.enablingDevices().stream()
                .anyMatch(tag -> tag.value().equals(device.tag().value()));
    }

    /** Everything that acts in a mode and triggers functions, none of which acts in it: a finding for all that trigger the same. */
    private static List<Finding> leftOut(Mode mode, Cell cell) {
        Map<List<SafetyFunction>, List<String>> left = new LinkedHashMap<>();
        acting(mode, cell).forEach(tag -> {
            List<SafetyFunction> functions = cell.controlSystem().described().functions().stream()
                    .filter(function -> function.triggeredBy(tag))
                    .toList();
            Predicate<SafetyFunction> acts = function -> function.modes().stream()
                    .anyMatch(one -> one.value().equals(mode.tag().value()));
            if (!functions.isEmpty() && functions.stream().noneMatch(acts)) {
                left.computeIfAbsent(functions, none -> new ArrayList<>()).add(tag);
            }
        });
        // A function whose modes are not all known was reported, and may act in this one.
        return left.entrySet().stream()
                .filter(entry -> mode.tag().value().isPresent()
                        && entry.getKey().stream().allMatch(one -> modesKnown(one, cell)))
                .map(entry -> leftOut(mode, entry.getKey(), entry.getValue()))
                .toList();
    }

    private static boolean modesKnown(SafetyFunction function, Cell cell) {
        return !function.modes().isEmpty()
                && function.modes().stream().allMatch(named -> mode(named, cell).isPresent());
    }

    private static List<String> acting(Mode mode, Cell cell) {
        Stream<String> safeguards = cell.safeguards().stream()
                .map(guarding -> guarding.safeguard())
                .filter(safeguard -> safeguard.kind().stopsTheHazard() && mode.state(safeguard) == State.ACTIVE)
                .map(safeguard -> safeguard.tag().characters());
        Stream<String> devices = cell.complementary().stream()
                .map(complement -> complement.device())
                .filter(device -> device.sort() instanceof EmergencyStop
                        ? mode.stopsBy(device)
                        : device.sort() instanceof EnablingDevice && enables(device, mode))
                .map(device -> device.tag().characters());
        return Stream.concat(safeguards, devices).toList();
    }

    private static Finding leftOut(Mode mode, List<SafetyFunction> functions, List<String> triggers) {
        SafetyFunction first = functions.get(0);
        String tags =
                functions.stream().map(one -> one.tag().characters()).collect(Collectors.joining("`, `", "`", "`"));
        return Finding.refuses(
                        LEFT_OUT,
                        first.tag().characters(),
                        first.modes().get(0).where(),
                        "`" + String.join("`, `", triggers) + "` " + (triggers.size() == 1 ? "acts" : "act") + " in `"
                                + mode.tag().characters() + "`, and " + tags + " "
                                + (functions.size() == 1 ? "does" : "do")
                                + " not",
                        "see at the machine what happens in this mode, and correct the function or the mode; where it does"
                                + " something else there, describe that as a function of its own")
                .because(List.of("`" + mode.tag().characters() + "` is described at "
                        + mode.tag().where().position()));
    }
}
