package org.cellfile.subject.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.Editions;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Least;
import org.cellfile.trace.Term;

/** What a perimeter is held against, by the strictest of the editions in force. */
final class PerimeterLimits {

    private PerimeterLimits() {}

    /** The widest opening through which nobody gets in. */
    static Derived widestOpening(String about, List<RobotCellStandard> editions) {
        List<Fixed> limits =
                editions.stream().map(RobotCellStandard::widestGapBelow).toList();
        Term least = limits.size() == 1 ? limits.get(0) : new Least(List.copyOf(limits));
        return new Derived(
                about,
                "widest-opening",
                "widest opening through which nobody gets in",
                "e_max",
                limits.stream()
                        .map(limit -> limit.reference().clause().toString())
                        .collect(Collectors.joining("; ")),
                least,
                Rounding.down(Quantity.millimetres("1")));
    }

    /**
     * The widest strip of floor beside a field or a mat on which nobody goes undetected: what fills an opening on both of its sides
     * holds a body back, a field holds nobody, and feet go where a body does not fit. The gap behind a field that the editions
     * state is taken for strips on all sides of it, a reading of this program. Empty where nothing covers floor or no edition tells.
     */
    static Optional<Derived> widestStrip(String about, List<Guarding> covering) {
        List<Fixed> limits = covering.stream()
                .flatMap(guarding -> guarding.editions().stream())
                .flatMap(under -> under.edition().widestGapBehind().stream())
                .distinct()
                .toList();
        return limits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Derived(
                        about,
                        "widest-strip",
                        "widest strip beside a field or mat on which nobody goes undetected",
                        "g_s",
                        limits.stream()
                                .map(limit -> limit.reference().clause().toString())
                                .collect(Collectors.joining("; ")),
                        limits.size() == 1 ? limits.get(0) : new Least(List.copyOf(limits)),
                        Rounding.down(Quantity.millimetres("1"))));
    }

    /**
     * The least depth of a field or mat that nobody steps over; empty where nothing covers floor. Of mats as the editions have it under which they are laid. That a field of a scanner is stepped over like a mat is a reading of
     * this program: no edition states a depth for it, and what is published of mats is taken.
     */
    static Optional<Derived> leastDepth(String about, List<Guarding> covering) {
        List<Fixed> limits = covering.stream()
                .flatMap(guarding -> {
                    List<Fixed> stated = statedOfMats(guarding);
                    return stated.isEmpty() ? Stream.of(Editions.depthToStepOver()) : stated.stream();
                })
                .distinct()
                .toList();
        return covering.isEmpty()
                ? Optional.empty()
                : Optional.of(new Derived(
                        about,
                        "least-depth",
                        "least depth of a field or mat that nobody steps over",
                        limits.get(0).symbol(),
                        limits.stream()
                                .map(limit -> limit.reference().clause().toString())
                                .collect(Collectors.joining("; ")),
                        limits.size() == 1 ? limits.get(0) : new Greatest(List.copyOf(limits)),
                        Rounding.up(Quantity.millimetres("1"))));
    }

    private static List<Fixed> statedOfMats(Guarding guarding) {
        return guarding.editions().stream()
                .filter(under ->
                        !under.positioning().position().limit("least-width").isEmpty())
                .flatMap(under -> under.edition().leastDepthToStepOver().stream())
                .toList();
    }
}
