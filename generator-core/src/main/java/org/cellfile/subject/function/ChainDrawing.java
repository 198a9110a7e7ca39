package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Term;

/** The chain of a function as a reliability block diagram: subsystems in series, in them channels in parallel. */
final class ChainDrawing {

    private ChainDrawing() {}

    static Drawing of(FunctionLevel function) {
        return new Drawing(
                "drawings/function-chain.svg.ftl",
                "Chain of " + function.tag(),
                "Block diagram, in series: "
                        + function.stages().stream().map(ChainDrawing::told).collect(Collectors.joining("; ")),
                Map.of(
                        "stages",
                        function.stages().stream().map(ChainDrawing::stage).toList()));
    }

    private static String told(FunctionLevel.Stage stage) {
        String name = stage.element().place().characters() + " "
                + stage.element().subsystem().characters();
        return stage.subsystem()
                .map(level -> name + " (" + String.join(", ", figures(level))
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

    private static Map<String, Object> stage(FunctionLevel.Stage stage) {
        List<SubsystemLevel> known = stage.subsystem().stream().toList();
        return Map.of(
                "place",
                stage.element().place().characters(),
                "tag",
                stage.element().subsystem().characters(),
                "figures",
                known.stream().flatMap(level -> figures(level).stream()).toList(),
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

    private static List<String> figures(SubsystemLevel level) {
        return List.of(
                "category " + level.subsystem().category().characters() + ", " + Workings.shown(level.level()),
                "PFH_D " + Workings.shown(level.pfh()));
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
