package org.cellfile.subject.function;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Term;

/** The chain of a function as a reliability block diagram: subsystems in series, in them channels in parallel. */
final class ChainDrawing {

    private ChainDrawing() {}

    static Drawing of(FunctionLevel function) {
        return new Drawing(
                "drawings/function-chain.svg.ftl",
                "",
                "Block diagram, in series: "
                        + function.stages().stream()
                                .map(stage -> told(stage, function.pfh()))
                                .collect(Collectors.joining("; ")),
                Map.of(
                        "stages",
                        function.stages().stream()
                                .map(stage -> stage(stage, function.pfh()))
                                .toList()));
    }

    private static String told(FunctionLevel.Stage stage, Derived whole) {
        String name = stage.element().place().characters() + " "
                + stage.element().subsystem().characters();
        return stage.subsystem()
                .map(level -> name + " (" + String.join(", ", figures(level, whole))
                        + level.channels().stream()
                                .map(channel -> ", channel "
                                        + channel.channel().name().characters() + " of " + tags(channel.parts()))
                                .collect(Collectors.joining())
                        + (level.equipment().isEmpty() ? "" : ", tested by " + tags(level.equipment())) + ")")
                .orElse(name);
    }

    private static String tags(List<PartLife> parts) {
        return parts.stream().map(PartLife::tag).collect(Collectors.joining(" and "));
    }

    private static Map<String, Object> stage(FunctionLevel.Stage stage, Derived whole) {
        List<SubsystemLevel> known = stage.subsystem().stream().toList();
        return Map.of(
                "place",
                stage.element().place().characters(),
                "tag",
                stage.element().subsystem().characters(),
                "figures",
                known.stream().flatMap(level -> figures(level, whole).stream()).toList(),
                "channels",
                known.stream()
                        .flatMap(level -> level.channels().stream())
                        .map(channel -> boxes(channel.parts()))
                        .toList(),
                "equipment",
                known.stream()
                        .flatMap(level -> boxes(level.equipment()).stream())
                        .toList());
    }

    private static List<String> figures(SubsystemLevel level, Derived whole) {
        List<String> figures = new ArrayList<>(List.of(
                "category " + level.subsystem().category().characters() + ", " + Workings.shown(level.level()),
                "PFH_D " + Workings.shown(level.pfh())));
        share(level.pfh(), whole).ifPresent(figures::add);
        return figures;
    }

    private static Optional<String> share(Derived part, Derived whole) {
        return part.value()
                .flatMap(one -> whole.value()
                        .filter(sum -> !sum.zero())
                        .map(sum -> one.coherent()
                                .multiply(BigDecimal.valueOf(100))
                                .divide(sum.coherent(), 1, RoundingMode.HALF_UP))
                        .map(percent -> (percent.signum() == 0 ? "less than 0.1" : percent) + " % of the sum"));
    }

    private static List<Map<String, Object>> boxes(List<PartLife> parts) {
        return parts.stream()
                .map(part -> Map.<String, Object>of("tag", part.tag(), "figures", figures(part)))
                .toList();
    }

    /** A coverage is shown where one is stated. */
    private static List<String> figures(PartLife part) {
        List<String> figures = new ArrayList<>(List.of("MTTF_D " + Workings.shown(part.mttfd())));
        Term coverage = part.coverage();
        coverage.value()
                .filter(share -> !share.zero())
                .map(Quantity::toString)
                .ifPresent(share -> figures.add("DC " + share));
        return figures;
    }
}
