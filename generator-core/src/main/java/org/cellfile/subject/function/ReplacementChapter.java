package org.cellfile.subject.function;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.quantity.Interval;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;

/** When which part of the control system has to go, the earliest first. */
public final class ReplacementChapter {

    private ReplacementChapter() {}

    /** One that is replaced as a whole, with its row. */
    private record Replaced(LocalDate by, String tag, List<String> row) {}

    /**
     * The chapter.
     *
     * @param asOf the day from which is counted
     * @param ahead how long before it falls due a replacement is told as due soon
     */
    public static Chapter chapter(
            ControlSystem system, ControlStandard standard, LocalDate asOf, Stated<Interval> ahead) {
        List<Replaced> all = Stream.concat(
                        system.parts().stream()
                                .flatMap(life ->
                                        life.replaceBy().stream().map(day -> part(life, day, system, standard))),
                        system.subsystems().stream()
                                .flatMap(level ->
                                        level.replaceBy().stream().map(day -> subsystem(level, day, system, standard))))
                .sorted(Comparator.comparing(Replaced::by).thenComparing(Replaced::tag))
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "A part that wears is replaced before a tenth of such parts has failed dangerously (T10_D), and"
                        + " every part and subsystem at the end of its mission time at the latest, whichever comes first ("
                        + standard.missionTime().reference().clause()
                        + "). The days are counted from the days of installation, with"
                        + " the shorter of the two times as printed, as of " + asOf
                        + "; they stand among what falls due as well."));
        blocks.add(new Table(
                "What is replaced, by day",
                List.of(
                        Column.text("Replace by", 3),
                        Column.text("Thing", 14),
                        Column.text("Used", 7),
                        Column.text("Installed", 3),
                        Column.figures("T10_D", 3),
                        Column.figures("Mission time", 3)),
                all.stream().map(one -> marked(one, asOf, ahead)).toList()));
        return new Chapter("replacement", "Replacement of worn parts", blocks);
    }

    private static List<String> marked(Replaced one, LocalDate asOf, Stated<Interval> ahead) {
        String mark = one.by().isBefore(asOf)
                ? "\noverdue"
                : ahead.value()
                        .filter(interval -> !one.by().isAfter(interval.after(asOf)))
                        .map(interval -> "\ndue within " + interval)
                        .orElse("");
        List<String> row = new ArrayList<>(List.of(one.by() + mark));
        row.addAll(one.row());
        return row;
    }

    private static Replaced part(PartLife life, LocalDate by, ControlSystem system, ControlStandard standard) {
        Part part = life.part();
        String used = system.subsystems().stream()
                .filter(level -> level.parts().contains(life))
                .map(level ->
                        level.tag() + ", " + Uses.of(level, system.functions()).counted())
                .collect(Collectors.joining("; "));
        return new Replaced(
                by,
                life.tag(),
                List.of(
                        life.tag() + "\n" + part.name().characters(),
                        used.isEmpty() ? "in no subsystem" : used,
                        part.installed().characters(),
                        life.worn().map(Workings::shown).orElse("–"),
                        mission(part.missionTime(), standard)));
    }

    private static Replaced subsystem(
            SubsystemLevel level, LocalDate by, ControlSystem system, ControlStandard standard) {
        Subsystem.Maker maker = level.subsystem().maker().orElseThrow();
        return new Replaced(
                by,
                level.tag(),
                List.of(
                        level.tag() + "\n" + level.subsystem().name().characters(),
                        Uses.of(level, system.functions()).counted(),
                        maker.installed().characters(),
                        "–",
                        mission(maker.missionTime(), standard)));
    }

    private static String mission(Stated<Quantity> stated, ControlStandard standard) {
        return stated.value().isPresent()
                ? stated.characters()
                : standard.missionTime().quantity().toString();
    }
}
