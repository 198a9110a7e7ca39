package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

    public static Chapter chapter(List<Guarding> safeguards, Workings workings) {
        List<Guarding> ranked = leastMarginFirst(safeguards);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "The least margin comes first: it is used up first when a stop takes longer, a tool gets heavier or a"
                        + " safeguard is moved. The nearest position is what a tape may show at the least; response time and stopping time"
                        + " are the longest that the installed distance still allows."));
        List<Drawing> charts = charts(ranked);
        blocks.addAll(charts);
        blocks.add(budgets(ranked, workings));
        blocks.add(governing(ranked, workings));
        return new Chapter("margins", "Margins and budgets", blocks);
    }

    /** Those whose margin is not known come before all others. */
    public static List<Guarding> leastMarginFirst(List<Guarding> safeguards) {
        return safeguards.stream()
                .sorted(Comparator.comparing(
                                (Guarding guarding) -> guarding.margin().value(),
                                Comparator.comparing(margin -> margin.map(Quantity::coherent)
                                        .orElse(new java.math.BigDecimal(Long.MIN_VALUE))))
                        .thenComparing(Guarding::tag))
                .toList();
    }

    private static List<Drawing> charts(List<Guarding> ranked) {
        List<Guarding> known = ranked.stream()
                .filter(guarding -> guarding.margin().value().isPresent())
                .toList();
        return IntStream.range(0, (known.size() + MOST_BARS - 1) / MOST_BARS)
                .mapToObj(part ->
                        chart(known.subList(part * MOST_BARS, Math.min(known.size(), (part + 1) * MOST_BARS))))
                .toList();
    }

    private static Drawing chart(List<Guarding> ranked) {
        List<Map<String, Object>> bars = ranked.stream()
                .map(guarding -> Map.<String, Object>of(
                        "tag", guarding.tag(),
                        "margin", guarding.margin().value().orElseThrow().coherent(),
                        "words", Workings.shown(guarding.margin())))
                .toList();
        String least =
                ranked.get(0).tag() + " with " + Workings.shown(ranked.get(0).margin());
        return new Drawing(
                "drawings/margins.svg.ftl",
                "Margins of the installed distances, the least first",
                "Bars of the margins of " + ranked.size() + " safeguards, from " + least,
                Map.of("bars", bars));
    }

    private static Table budgets(List<Guarding> ranked, Workings workings) {
        List<List<String>> rows = new ArrayList<>();
        for (Guarding guarding : ranked) {
            rows.add(List.of(
                    String.valueOf(rows.size() + 1),
                    guarding.tag(),
                    workings.inUnits(guarding.margin()),
                    workings.inUnits(guarding.budget().nearest()),
                    guarding.governing().longestTime().map(Workings::shown).orElse("–"),
                    guarding.budget().longestStop().map(Workings::shown).orElse("–")));
        }
        return new Table(
                "What each safeguard still allows",
                List.of(
                        Column.figures("No.", 1),
                        Column.text("Safeguard", 5),
                        Column.figures("Margin", 3),
                        Column.figures("Nearest position", 4),
                        Column.figures("Response time", 3),
                        Column.figures("Stopping time", 3)),
                rows);
    }

    private static Table governing(List<Guarding> ranked, Workings workings) {
        List<String> zones = ranked.stream()
                .flatMap(guarding -> guarding.zones().stream())
                .map(zone -> zone.tag().characters())
                .distinct()
                .sorted()
                .toList();
        return new Table(
                "Which safeguard governs each hazard zone",
                List.of(
                        Column.text("Hazard zone", 4),
                        Column.text("Governed by", 5),
                        Column.figures("Margin", 3),
                        Column.text("Also protected by", 7)),
                zones.stream().map(zone -> governed(zone, ranked, workings)).toList());
    }

    private static List<String> governed(String zone, List<Guarding> ranked, Workings workings) {
        List<Guarding> protecting = ranked.stream()
                .filter(guarding -> guarding.safeguard().protects().stream()
                        .map(Stated::value)
                        .anyMatch(Optional.of(zone)::equals))
                .toList();
        Guarding least = protecting.get(0);
        return List.of(
                zone,
                least.tag(),
                workings.inUnits(least.margin()),
                protecting.size() == 1
                        ? "nothing else"
                        : protecting.stream().skip(1).map(Guarding::tag).collect(Collectors.joining(", ")));
    }
}
