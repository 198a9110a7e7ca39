package org.cellfile.subject.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.register.Configuration.Displayed;

/** How the registers are printed. */
public final class RegisterChapters {

    private RegisterChapters() {}

    /** Which configuration was tested, is installed and is posted. */
    public static Chapter configurations(Registers registers, Identity identity) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Paragraph(
                        "What a safety controller, a robot or a scanner does is set in its configuration. The value by which a"
                                + " configuration is told from every other was read when the safeguards were tested, at the machine as"
                                + " it stands, and on the sheet posted there. A device may show several values, and one in its files may"
                                + " be another than the one on its screen: compare the one named here, character by character."));
        blocks.add(listed(
                "configuration",
                "Which value is meant",
                List.of(
                        Column.text("Tag", 5),
                        Column.text("Of", 5),
                        Column.text("What", 7),
                        Column.text("Shown at", 7)),
                registers.configurations(),
                one -> List.of(
                        one.tag().characters(),
                        one.of()
                                .value()
                                .flatMap(of -> one.device().value().map(device -> of + ", " + device))
                                .orElse(one.thing()),
                        one.what().characters(),
                        one.shownAt().characters())));
        if (!registers.configurations().isEmpty()) {
            blocks.add(values(registers, identity));
        }
        return new Chapter("configurations", "Configuration identity", blocks);
    }

    private static Table values(Registers registers, Identity identity) {
        List<List<String>> rows = new ArrayList<>();
        for (Configuration one : registers.configurations()) {
            for (Displayed displayed : one.displayed()) {
                rows.add(List.of(
                        one.tag().characters(),
                        "as " + displayed.state(),
                        displayed.value().characters(),
                        displayed.on().characters(),
                        identity.nameOf(displayed.by())));
            }
            if (one.posted().isEmpty()) {
                rows.add(List.of(one.tag().characters(), "as posted", "not posted yet", "–", "–"));
            }
        }
        return new Table(
                "The values that were read",
                List.of(
                        Column.text("Tag", 6),
                        Column.text("State", 4),
                        Column.text("Value", 5),
                        Column.text("Read on", 4),
                        Column.text("By", 5)),
                rows);
    }

    /**
     * What is kept under control while the cell is used.
     *
     * @param emergencyStops where they are
     */
    public static Chapter registers(Registers registers, Block emergencyStops, Identity identity) {
        List<Block> blocks = new ArrayList<>(List.of(
                new Section("", "Open points", List.of(openPoints(registers, identity))),
                new Section("", "Bypasses", List.of(bypasses(registers, identity))),
                new Section("", "Spare actuators", spareActuators(registers, identity)),
                new Section("", "Mode keys", List.of(modeKeys(registers, identity))),
                new Section("", "Positions of the emergency stops", List.of(emergencyStops)),
                new Section("", "Changes", List.of(changes(registers, identity)))));
        if (!registers.decisions().isEmpty()) {
            blocks.add(new Section("", "Is a change a substantial modification?", decisions(registers, identity)));
        }
        return new Chapter("registers", "Registers", blocks);
    }

    private static List<Block> decisions(Registers registers, Identity identity) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "The decision lies with the one in whose name the change is made; the law of the place governs. This program holds the"
                        + " conclusion against the answers and decides nothing. " + ModificationDecision.SOURCES));
        registers.decisions().forEach(decision -> blocks.addAll(decision(decision, identity)));
        return blocks;
    }

    /** The questions and answers of one decision, and what was concluded. */
    public static List<Block> decision(ModificationDecision decision, Identity identity) {
        List<List<String>> rows = new ArrayList<>();
        for (ModificationDecision.Question question : decision.answered()) {
            rows.add(List.of(
                    (rows.size() + 1) + ". " + question.words(),
                    question.answer().value().orElse("not asked")));
        }
        rows.add(List.of(
                "A substantial modification? "
                        + decision.follows()
                                .filter(follows ->
                                        follows.equals(decision.substantial().characters()))
                                .map(agrees ->
                                        "(recomputed from the answers 1 to 4, agrees with the recorded conclusion)")
                                .orElse("(does not follow from the answers 1 to 4)"),
                decision.substantial().characters()));
        return List.of(
                new Table(
                        decision.of().characters() + ", decided by " + identity.nameOf(decision.by()) + " on "
                                + decision.on().characters(),
                        List.of(Column.text("Question", 7), Column.text("Answer", 1)),
                        rows),
                new Paragraph("Because: " + decision.because().characters()));
    }

    private static Block openPoints(Registers registers, Identity identity) {
        return listed(
                "open point",
                "What is still to be done, and what was done",
                List.of(
                        Column.text("Tag", 4),
                        Column.text("What", 8),
                        Column.text("Owner", 4),
                        Column.text("Since and until", 4),
                        Column.text("Closed", 5)),
                registers.openPoints(),
                point -> List.of(
                        point.tag().characters(),
                        point.what().characters() + (point.barsRelease() ? "; to be closed before release" : ""),
                        identity.nameOf(point.owner()),
                        point.since().characters() + " to " + point.until().characters(),
                        ended(point.closed(), point.closedBy(), identity)));
    }

    private static Block bypasses(Registers registers, Identity identity) {
        return listed(
                "bypass",
                "What was put out of action for a time",
                List.of(
                        Column.text("Tag", 4),
                        Column.text("Of", 4),
                        Column.text("What and why", 7),
                        Column.text("Compensation", 6),
                        Column.text("From and until, by", 5),
                        Column.text("Ended", 4)),
                registers.bypasses(),
                bypass -> List.of(
                        bypass.tag().characters(),
                        bypass.of().isEmpty() ? "no safeguard" : tags(bypass.of()),
                        bypass.what().characters() + "; " + bypass.why().characters(),
                        bypass.compensation().characters(),
                        bypass.from().characters() + " to " + bypass.until().characters() + ", "
                                + identity.nameOf(bypass.by()),
                        ended(bypass.ended(), bypass.endedBy(), identity)));
    }

    private static String ended(Stated<LocalDate> on, Stated<String> by, Identity identity) {
        return on.value().map(day -> day + ", " + identity.nameOf(by)).orElse("open");
    }

    private static List<Block> spareActuators(Registers registers, Identity identity) {
        Block listed = listed(
                "spare actuator",
                "Spare actuators of interlocked doors",
                List.of(
                        Column.text("Tag", 4),
                        Column.text("Fits", 5),
                        Column.figures("Count", 2),
                        Column.text("Locked at", 7),
                        Column.text("Held by", 4)),
                registers.spareActuators(),
                spare -> List.of(
                        spare.tag().characters(),
                        tags(spare.fits()),
                        spare.count().characters(),
                        spare.lockedAt().characters(),
                        identity.nameOf(spare.holder())));
        return registers
                .noSpares()
                .value()
                .map(words -> registers.spareActuators().isEmpty()
                        ? List.<Block>of(new Paragraph("There are none. Where they went: " + words))
                        : List.of(listed, new Paragraph("Of the doors not named there: " + words)))
                .orElse(List.of(listed));
    }

    private static Block modeKeys(Registers registers, Identity identity) {
        return listed(
                "mode key",
                "Keys, codes and transponders with which the mode can be changed",
                List.of(
                        Column.text("Number", 3),
                        Column.text("Selector", 4),
                        Column.text("Held by", 5),
                        Column.text("Kept at", 6),
                        Column.text("Received", 3)),
                registers.modeKeys(),
                key -> List.of(
                        key.number().characters(),
                        key.selector().characters(),
                        key.holder()
                                .value()
                                .map(holder -> identity.nameOf(key.holder()))
                                .orElse("–"),
                        key.keptAt().value().orElse("–"),
                        key.received().characters()));
    }

    private static Block changes(Registers registers, Identity identity) {
        return listed(
                "change",
                "Changes of the cell since it was built",
                List.of(
                        Column.text("Tag", 4),
                        Column.text("On", 3),
                        Column.text("What", 9),
                        Column.text("By", 4),
                        Column.text("Touches", 5)),
                registers.changes(),
                change -> List.of(
                        change.tag().characters(),
                        change.on().characters(),
                        change.what().characters(),
                        identity.nameOf(change.by()),
                        tags(change.touches())));
    }

    private static String tags(List<Stated<String>> tags) {
        return tags.stream().map(Stated::characters).collect(Collectors.joining(", "));
    }

    /** A table, or the words that there is nothing to stand in it. */
    private static <T> Block listed(
            String sort, String caption, List<Column> columns, List<T> rows, Function<T, List<String>> row) {
        return rows.isEmpty()
                ? new Paragraph("No " + sort + " is stated.")
                : new Table(caption, columns, rows.stream().map(row).toList());
    }
}
