package org.cellfile.subject.function;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Case;

/** The frequencies of dangerous failure of all functions as bars on a logarithmic scale, before the ranges of the performance levels. */
final class LevelChart {

    private static final int MOST_BARS = 30;

    private LevelChart() {}

    /** As many drawings of about the same length as it takes to keep the bars readable. */
    static List<Drawing> drawings(List<FunctionLevel> functions) {
        int count = (functions.size() + MOST_BARS - 1) / MOST_BARS;
        return IntStream.range(0, count)
                .mapToObj(part -> drawing(
                        functions.subList(functions.size() * part / count, functions.size() * (part + 1) / count)))
                .toList();
    }

    private static Drawing drawing(List<FunctionLevel> functions) {
        List<Map<String, Object>> ranges = ranges(functions.get(0));
        FunctionLevel last = functions.get(functions.size() - 1);
        return new Drawing(
                "drawings/function-levels.svg.ftl",
                "Frequency of dangerous failure in an hour (PFH_D) of "
                        + functions.get(0).tag()
                        + (functions.size() > 1 ? " to " + last.tag() : "")
                        + ". Thick mark: bound below which the required level lies; white bar: falls short."
                        + " Where the level reached is lower than the range in which a bar ends, a subsystem limits it.",
                "Bars on a logarithmic scale from 1e-10 to 1e-4 in an hour: "
                        + String.join(
                                "; ",
                                functions.stream()
                                        .map(function -> function.tag() + " " + Workings.shown(function.pfh())
                                                + ", reached " + Workings.shown(function.reached()) + ", required "
                                                + Workings.shown(function.required()))
                                        .toList()),
                Map.of(
                        "bars",
                        functions.stream()
                                .map(function -> bar(function, ranges))
                                .toList(),
                        "ranges",
                        ranges));
    }

    /** The upper bound of each level, the best level first, as the edition in force compares with them. */
    private static List<Map<String, Object>> ranges(FunctionLevel function) {
        List<Map<String, Object>> ranges = new ArrayList<>();
        if (function.levelBySum().expression() instanceof Case levels) {
            for (Case.Branch branch : levels.branches()) {
                Optional<Quantity> bound = branch.condition().right().value();
                Optional<Quantity> level = branch.term().value();
                if (bound.isPresent() && level.isPresent()) {
                    ranges.add(Map.of("letter", letter(level.get()), "upTo", place(bound.get())));
                }
            }
        }
        return ranges;
    }

    private static Map<String, Object> bar(FunctionLevel function, List<Map<String, Object>> ranges) {
        Map<String, Object> bar = new TreeMap<>();
        bar.put("tag", function.tag());
        bar.put(
                "frequency",
                function.pfh()
                        .rounded()
                        .map(pfh -> pfh.toString().replace(" 1/h", ""))
                        .orElse("–"));
        bar.put("reached", function.reached().value().map(LevelChart::letter).orElse("–"));
        bar.put("required", function.required().value().map(LevelChart::letter).orElse("–"));
        bar.put("short", fallsShort(function));
        function.pfh().rounded().ifPresent(pfh -> bar.put("place", place(pfh)));
        bound(function, ranges).ifPresent(place -> bar.put("bound", place));
        return bar;
    }

    private static Optional<Object> bound(FunctionLevel function, List<Map<String, Object>> ranges) {
        return function.required()
                .value()
                .map(LevelChart::letter)
                .flatMap(letter -> ranges.stream()
                        .filter(range -> letter.equals(range.get("letter")))
                        .flatMap(range -> Stream.ofNullable(range.get("upTo")))
                        .findFirst());
    }

    private static boolean fallsShort(FunctionLevel function) {
        return function.required()
                .value()
                .filter(required -> function.reached()
                        .value()
                        .filter(reached -> reached.compareTo(required) >= 0)
                        .isEmpty())
                .isPresent();
    }

    private static String letter(Quantity level) {
        return level.toString().replace("PL ", "");
    }

    private static BigDecimal place(Quantity frequency) {
        return Logarithm.of(frequency.in(Unit.PER_HOUR).number());
    }
}
