package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.finding.Finding;
import org.cellfile.refusal.BaseCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** More than a page holds: every sheet that overflows is named with what does, and nothing is printed. The texts are constructed. */
class OverfullSheetsTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);
    private static final String STEP =
            "    - {sheet: automatic-operation, part: start, do: Turn the key to automatic.}\n";

    @TempDir
    private Path folder;

    private void change(String file, String from, String to) throws IOException {
        BaseCell.copyTo(folder);
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    private List<Finding> overflows() {
        Generator.Generated generated = new Generator().generate(new FolderWorld(folder, DAY));
        assertThat(generated.files()).isEmpty();
        return generated.verdict().findings().stream()
                .filter(finding -> finding.id().equals(Renderer.OVERFLOW))
                .toList();
    }

    @Test
    void fortyStepsOfThePlants() throws IOException {
        change(
                "sheets.yaml",
                STEP,
                IntStream.range(0, 40)
                        .mapToObj(i -> STEP.replace("Turn the key to automatic.", "Look at gauge " + i + "."))
                        .collect(Collectors.joining()));

        assertThat(overflows()).singleElement().satisfies(finding -> {
            assertThat(finding.about()).isEqualTo("automatic-operation-en");
            assertThat(finding.because().get(0)).contains("`Starting` ", "`In an emergency` ");
            assertThat(finding.because().get(1)).contains("Look at gauge ");
        });
    }

    @Test
    void aPlaceThatIsALongStory() throws IOException {
        change(
                "complementary.yaml",
                "position: west side, beside the door",
                "position: "
                        + "west side behind the third pillar seen from the gate "
                                .repeat(12)
                                .strip());

        Set<String> sheets = overflows().stream().map(Finding::about).collect(Collectors.toSet());
        assertThat(sheets).contains("manual-reduced-speed-en");
    }

    @Test
    void fortyResetsWithLongNames() throws IOException {
        String reset = "  - tag: reset-west\n";
        BaseCell.copyTo(folder);
        String text = Files.readString(folder.resolve("complementary.yaml"));
        String described = text.substring(text.indexOf(reset));
        StringBuilder more = new StringBuilder(text);
        for (int i = 0; i < 40; i++) {
            more.append(described
                    .replace("reset-west", "reset-west-with-a-tag-as-long-as-any-" + i)
                    .replace("name: Reset at the door", "name: Reset at the door of bay " + i));
        }
        Files.writeString(folder.resolve("complementary.yaml"), more);

        Set<String> sheets = overflows().stream().map(Finding::about).collect(Collectors.toSet());
        assertThat(sheets).contains("automatic-operation-en");
    }
}
