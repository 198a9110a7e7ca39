package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Chapter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a stated deviation is printed: beside what falls short, and once more in the chapter that gathers all. Figures constructed. */
class DeviationsTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    @BeforeEach
    void aDoorThatStandsTooClose() throws IOException {
        BaseCell.overlay(BaseCell.REFUSALS.resolve("installed.too-close/covered-by-a-deviation"), folder);
    }

    private Chapter chapter(String id) {
        return Composition.compose(new Generator()
                        .check(new FolderWorld(folder, DAY))
                        .cell()
                        .orElseThrow())
                .chapters()
                .stream()
                .filter(chapter -> chapter.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Box> boxes(List<Block> blocks) {
        return blocks.stream()
                .filter(Box.class::isInstance)
                .map(Box.class::cast)
                .toList();
    }

    @Test
    void besideTheSafeguardItIsAboutAndNoOther() {
        List<Block.Section> sections = chapter("safeguards").blocks().stream()
                .filter(Block.Section.class::isInstance)
                .map(Block.Section.class::cast)
                .toList();

        assertThat(sections).extracting(Block.Section::tag).contains("curtain", "door");
        assertThat(sections)
                .filteredOn(section -> !boxes(section.blocks()).isEmpty())
                .singleElement()
                .satisfies(section -> assertThat(boxes(section.blocks()))
                        .singleElement()
                        .satisfies(box -> assertThat(box.title()).endsWith(": " + section.tag())));
    }

    /** A mistyped key in a deviation is no matter to be passed over. */
    @Test
    void aWordThatNobodyKnowsInADeviationIsReported() throws IOException {
        BaseCell.change(folder, "deviations.yaml", "    until: ", "    colour: red\n    until: ");

        assertThat(BaseCell.check(folder).findings())
                .extracting(finding -> finding.id().toString())
                .contains("read.unknown-key");
    }

    @Test
    void inTheChapterThatGathersAll() throws IOException {
        assertThat(boxes(chapter("deviations").blocks())).hasSize(1);
        assertThat(chapter("deviations").blocks().toString()).contains("this file is a draft");

        folder = BaseCell.copyTo(folder.resolve("without"));
        assertThat(chapter("deviations").blocks().toString()).contains("No deviation is stated");
    }
}
