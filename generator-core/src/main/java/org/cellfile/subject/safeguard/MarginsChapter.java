package org.cellfile.subject.safeguard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;

/** What is left at each safeguard, the least first, and which one governs each hazard zone. */
public final class MarginsChapter {

    /** As many bars as fit a page with its text. */
    private static final int MOST_BARS = 30;

    private MarginsChapter() {}

    /** What is left of one measured distance, and at which safeguard. */
    private record Left(Guarding guarding, Margin margin) {
        /** The tag of the safeguard, with the name of the place that has a distance of its own. */
        String about() {
            return margin.about(guarding.tag());
        }

        /** What is left at the safeguard itself; times count for its own distance only. */
        boolean own() {
            return margin.place().isEmpty();
        }

        boolean countsFor(String zone) {
            return zones().anyMatch(zone::equals);
        }

        Stream<String> zones() {
            return margin.zones(guarding.safeguard().protects()).stream()
                    .map(Stated::value)
                    .flatMap(Optional::stream);
        }
    }

    public static Chapter chapter(List<Guarding> safeguards, Workings workings) {
        List<Left> ranked = leastMarginFirst(safeguards);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "The least margin comes first: it is used up first when a stop takes longer, a tool gets heavier or a"
                        + " safeguard is moved. An opening or an end of a fence that has a distance of its own is ranked by itself."
                        + " The nearest position is what a tape may show at the least; response time and stopping time are the"
                        + " longest that the installed distance still allows."));
        blocks.addAll(charts(ranked));
        blocks.add(budgets(ranked, workings));
        blocks.add(governing(ranked, workings));
        return new Chapter("margins", "Margins and budgets", blocks);
    }

    /** Those whose margin is not known come before all others. */
    private static List<Left> leastMarginFirst(List<Guarding> safeguards) {
        return safeguards.stream()
                .flatMap(guarding -> guarding.margins().stream().map(margin -> new Left(guarding, margin)))
                .sorted(Comparator.comparing(
                                (Left left) -> left.margin().margin().value(),
                                Comparator.comparing(margin ->
                                        margin.map(Quantity::coherent).orElse(new BigDecimal(Long.MIN_VALUE))))
                        .thenComparing(Left::about))
                .toList();
    }

    private static List<Drawing> charts(List<Left> ranked) {
        List<Left> known = ranked.stream()
                .filter(left -> left.margin().margin().value().isPresent())
                .toList();
        return IntStream.range(0, (known.size() + MOST_BARS - 1) / MOST_BARS)
                .mapToObj(part ->
                        chart(known.subList(part * MOST_BARS, Math.min(known.size(), (part + 1) * MOST_BARS))))
                .toList();
    }

    private static Drawing chart(List<Left> ranked) {
        List<Map<String, Object>> bars = ranked.stream()
                .map(left -> Map.<String, Object>of(
                        "tag", left.about(),
                        "margin", left.margin().margin().value().orElseThrow().coherent(),
                        "words", Workings.shown(left.margin().margin())))
                .toList();
        String least = ranked.get(0).about() + " with "
                + Workings.shown(ranked.get(0).margin().margin());
        return new Drawing(
                "drawings/margins.svg.ftl",
                "Margins of the installed distances, the least first",
                "Bars of " + ranked.size() + " margins, from " + least,
                Map.of("bars", bars));
    }

    private static Table budgets(List<Left> ranked, Workings workings) {
        List<List<String>> rows = new ArrayList<>();
        for (Left left : ranked) {
            Optional<Guarding> timed = Optional.of(left.guarding()).filter(guarding -> left.own());
            rows.add(List.of(
                    String.valueOf(rows.size() + 1),
                    left.about(),
                    workings.inUnits(left.margin().margin()),
                    workings.inUnits(left.margin().nearest()),
                    timed.flatMap(guarding -> guarding.governing().longestTime())
                            .map(Workings::shown)
                            .orElse("–"),
                    timed.flatMap(guarding -> guarding.budget().longestStop())
                            .map(Workings::shown)
                            .orElse("–")));
        }
        return new Table(
                "What each safeguard still allows",
                List.of(
                        Column.figures("No.", 1),
                        Column.text("Safeguard", 7),
                        Column.figures("Margin", 3),
                        Column.figures("Nearest position", 4),
                        Column.figures("Response time", 3),
                        Column.figures("Stopping time", 3)),
                rows);
    }

    private static Table governing(List<Left> ranked, Workings workings) {
        List<String> zones =
                ranked.stream().flatMap(Left::zones).distinct().sorted().toList();
        return new Table(
                "Which safeguard governs each hazard zone",
                List.of(
                        Column.text("Hazard zone", 4),
                        Column.text("Governed by", 5),
                        Column.figures("Margin", 3),
                        Column.text("Measured to", 5),
                        Column.text("Also protected by", 6)),
                zones.stream().map(zone -> governed(zone, ranked, workings)).toList());
    }

    /** The distance may have been measured to another zone that is nearer; the table says to what. */
    private static List<String> governed(String zone, List<Left> ranked, Workings workings) {
        List<Left> protecting =
                ranked.stream().filter(left -> left.countsFor(zone)).toList();
        Left least = protecting.get(0);
        String others = protecting.stream()
                .map(left -> left.guarding().tag())
                .filter(tag -> !tag.equals(least.guarding().tag()))
                .distinct()
                .collect(Collectors.joining(", "));
        return List.of(
                zone,
                least.about(),
                workings.inUnits(least.margin().margin()),
                least.margin().installed().to().characters(),
                others.isEmpty() ? "nothing else" : others);
    }
}
