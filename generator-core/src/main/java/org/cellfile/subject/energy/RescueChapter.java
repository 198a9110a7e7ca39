package org.cellfile.subject.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.CellFacts;

/** How it is printed by which way somebody is freed. */
public final class RescueChapter {

    private RescueChapter() {}

    public static Chapter chapter(Optional<Rescue> stated, CellFacts facts) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "How somebody who is trapped is freed after the cell was stopped, for each hazard zone. The steps"
                        + " stand on a posted sheet and are to be practised at the machine."));
        stated.ifPresentOrElse(
                rescue -> {
                    blocks.add(ways(rescue));
                    blocks.add(new Facts(List.of(
                            new Fact("Call", facts.emergencyPhone().characters()),
                            new Fact("First aid", rescue.firstAid().characters()),
                            new Fact("First aiders", rescue.aiders().characters()),
                            new Fact(
                                    "Where helpers are met",
                                    rescue.meetingPlace().characters()))));
                },
                () -> blocks.add(new Paragraph("Nothing is stated about freeing somebody from this cell.")));
        return new Chapter("rescue", "Freeing a trapped person", blocks);
    }

    private static Table ways(Rescue rescue) {
        return new Table(
                "Ways of freeing somebody",
                List.of(
                        Column.text("When, and in which zone", 5),
                        Column.text("With what, and who", 6),
                        Column.text("Steps", 8),
                        Column.text("Beware", 4)),
                rescue.ways().stream()
                        .map(way -> List.of(
                                way.when().characters() + " (" + joined(way.of(), ", ") + ")",
                                way.with().characters() + "; " + way.by().characters(),
                                joined(way.steps(), " "),
                                way.beware().value().orElse("–")))
                        .toList());
    }

    private static String joined(List<Stated<String>> texts, String between) {
        return texts.stream().map(Stated::characters).collect(Collectors.joining(between));
    }
}
