package org.cellfile.subject.complement;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.finding.Deviation;
import org.cellfile.subject.safeguard.Deviations;

/** How the complementary devices are printed. */
public final class ComplementChapter {

    private ComplementChapter() {}

    public static Chapter chapter(List<Complement> devices, List<Deviation> deviations) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Emergency stops, enabling devices, mode selectors, pendants and resets complement the safeguards. They never"
                        + " guard a hazard zone: each needs somebody to act in time, and none keeps anybody away."));
        if (devices.isEmpty()) {
            blocks.add(new Paragraph("None is listed for this cell."));
        } else {
            blocks.add(listed(devices));
            blocks.add(Demands.table(devices.stream().map(Complement::demands).toList()));
        }
        devices.forEach(device -> deviations.stream()
                .filter(deviation -> deviation.of().equals(device.tag()))
                .forEach(deviation -> blocks.add(Deviations.box(deviation))));
        return new Chapter("complementary", "Complementary devices", blocks);
    }

    private static Table listed(List<Complement> devices) {
        return new Table(
                "Complementary devices of the cell",
                List.of(
                        Column.text("Tag", 4),
                        Column.text("Sort", 4),
                        Column.text("Device and position", 7),
                        Column.text("As stated", 8)),
                devices.stream()
                        .map(Complement::device)
                        .map(device -> List.of(
                                device.tag().characters(),
                                device.sort().words(),
                                device.name().characters() + ", "
                                        + device.model().characters() + "; "
                                        + device.position().characters()
                                        + device.robot()
                                                .value()
                                                .map(robot -> "; of " + robot)
                                                .orElse(""),
                                device.sort().facts().stream()
                                        .map(ComplementChapter::brief)
                                        .collect(Collectors.joining("; "))))
                        .toList());
    }

    /** Where the emergency stops are. */
    public static Block emergencyStops(List<Complement> devices) {
        List<List<String>> rows = devices.stream()
                .map(Complement::device)
                .filter(device -> device.sort() instanceof EmergencyStop)
                .map(device -> row(device, (EmergencyStop) device.sort()))
                .toList();
        return rows.isEmpty()
                ? new Paragraph("No emergency stop is listed.")
                : new Table(
                        "Where the emergency stops are",
                        List.of(
                                Column.text("Tag", 4),
                                Column.text("Position", 7),
                                Column.text("Mounted", 3),
                                Column.figures("Height", 3),
                                Column.text("Serves", 6)),
                        rows);
    }

    private static List<String> row(ComplementaryDevice device, EmergencyStop stop) {
        return List.of(
                device.tag().characters(),
                device.position().characters(),
                stop.mounted().characters(),
                stop.heightWords(),
                stop.serves().characters());
    }

    private static String brief(Fact fact) {
        String brief = fact.label() + " " + fact.value();
        return fact.remark().isEmpty() ? brief : brief + ", " + fact.remark();
    }
}
