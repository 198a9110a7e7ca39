package org.cellfile.subject.complement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.finding.Deviation;
import org.cellfile.subject.safeguard.Deviations;
import org.cellfile.trace.Derived;

/** How the complementary devices are printed. */
public final class ComplementChapter {

    private ComplementChapter() {}

    public static Chapter chapter(List<Complement> devices, List<Deviation> deviations) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Emergency stops, enabling devices, mode selectors, pendants and resets complement the safeguards. They never"
                        + " guard a hazard zone: each needs somebody to act in time, and none keeps anybody away. The rules they were held against, and the standing of each, are"
                        + " listed in the register of fixed values."));
        if (devices.isEmpty()) {
            blocks.add(new Paragraph("None is listed for this cell."));
        } else {
            blocks.add(table(devices));
            devices.forEach(device -> section(device, deviations).ifPresent(blocks::add));
        }
        return new Chapter("complementary", "Complementary devices", blocks);
    }

    private static Table table(List<Complement> devices) {
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
                                        + device.position().characters(),
                                device.sort().facts().stream()
                                        .map(ComplementChapter::brief)
                                        .collect(Collectors.joining("; "))))
                        .toList());
    }

    /** What bounds a device, and where it falls short as declared; nothing for a device of which neither can be said. */
    private static Optional<Section> section(Complement device, List<Deviation> deviations) {
        List<Block> blocks = new ArrayList<>();
        deviations.stream()
                .filter(deviation -> deviation.of().equals(device.tag()))
                .forEach(deviation -> blocks.add(Deviations.box(deviation)));
        if (!device.derived().isEmpty()) {
            String clauses =
                    device.derived().stream().map(Derived::clause).distinct().collect(Collectors.joining("; "));
            blocks.add(Workings.rows("What bounds it: " + clauses, device.derived(), device.recorded()));
        }
        return blocks.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section(device.tag(), device.device().name().characters(), blocks));
    }

    private static String brief(Fact fact) {
        String brief = fact.label() + ": " + fact.value();
        return fact.remark().isEmpty() ? brief : brief + ", " + fact.remark();
    }
}
