package org.cellfile.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.cli.Ran.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verbs from outside: exit codes, same bytes, nothing written on a refusal. All figures are constructed. */
class MainTest {

    private static final Path KETTLEBROOK = Path.of("..", "examples", "kettlebrook-palletising", "src", "main", "cell");
    private static final String SET = "kettlebrook-palletising";

    @TempDir
    private Path temporary;

    private Path cell;
    private Path output;

    @BeforeEach
    void copyTheCell() throws IOException {
        cell = temporary.resolve("cell");
        output = temporary.resolve("output");
        try (Stream<Path> paths = Files.walk(KETTLEBROOK)) {
            for (Path path : paths.toList()) {
                Path copy = cell.resolve(KETTLEBROOK.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(path, copy);
                }
            }
        }
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = cell.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        Files.writeString(path, text.replace(from, to));
    }

    private SortedMap<String, String> bytes() throws IOException {
        SortedMap<String, String> bytes = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(output.resolve(SET))) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                bytes.put(
                        output.relativize(path).toString(),
                        new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1));
            }
        }
        return bytes;
    }

    @Test
    void aCellThatAgreesIsCheckedWithZero() {
        Ran ran = run("check", cell);
        assertThat(ran.code()).as(ran.out() + ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
    }

    private static String beginning(String path) {
        return path.endsWith(".ics") ? "BEGIN:VCALENDAR\r\n" : path.endsWith(".svg") ? "<svg " : "%PDF-";
    }

    @Test
    void generatingTwiceGivesTheSameBytes() throws IOException {
        Ran first = run("generate", cell, "--to", output);
        assertThat(first.code()).as(first.out() + first.err()).isZero();
        SortedMap<String, String> before = bytes();
        assertThat(before)
                .containsKeys(
                        SET + "/forms/briefing-record-en.pdf",
                        SET + "/forms/shift-check.pdf",
                        SET + "/forms/yearly-inspection.pdf",
                        SET + "/forms/stop-time-measurement.pdf");
        before.keySet().forEach(file -> assertThat(first.out()).contains(file));
        before.forEach((path, file) -> assertThat(file).as(path).startsWith(beginning(path)));
        Ran second = run("generate", cell, "--to", output);
        assertThat(second.code()).isZero();
        assertThat(second.out()).isEqualTo(first.out());
        assertThat(bytes()).isEqualTo(before);
    }

    @Test
    void aWrongNumberIsRefusedAndNothingIsWritten() throws IOException {
        change("safeguards.yaml", "separation-distance: 1238 mm", "separation-distance: 1237 mm");
        Ran ran = run("generate", cell, "--to", output);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains("the stated separation distance of `curtain-north` is 1237 mm, the derived one 1238 mm")
                .contains("[claim.not-equal]")
                .contains("; nothing was written");
        assertThat(output).doesNotExist();
        assertThat(run("check", cell).code()).isEqualTo(1);
    }

    @Test
    void aRefusalLeavesEarlierPagesWithANoteAndTheNextRunTakesItAway() throws IOException {
        Path note = output.resolve(SET + "-not-current.txt");
        assertThat(run("generate", cell, "--to", output).code()).isZero();
        SortedMap<String, String> before = bytes();
        change("safeguards.yaml", "separation-distance: 1238 mm", "separation-distance: 1237 mm");
        assertThat(run("generate", cell, "--to", output).code()).isEqualTo(1);
        assertThat(bytes()).isEqualTo(before);
        assertThat(note).exists();
        change("safeguards.yaml", "separation-distance: 1237 mm", "separation-distance: 1238 mm");
        assertThat(run("generate", cell, "--to", output).code()).isZero();
        assertThat(bytes()).isEqualTo(before);
        assertThat(note).doesNotExist();
    }

    /** The demonstration cell speaks of this day, and nothing was overdue by then. */
    private static final String DAY = "2026-11-20";

    @Test
    void aReleaseIsPrintedWhenItIsAskedForAndNothingBarsIt() throws IOException {
        Ran draft = run("generate", cell, "--to", output);
        assertThat(draft.out()).contains("these pages are a draft, because no release was asked for");
        SortedMap<String, String> before = bytes();
        Ran ran = run("generate", cell, "--to", output, "--release", "--day", DAY);
        assertThat(ran.code()).as(ran.out() + ran.err()).isZero();
        assertThat(ran.out()).contains("nothing bars release; these pages are a release");
        assertThat(bytes()).isNotEqualTo(before).containsOnlyKeys(before.keySet());
        assertThat(run("check", cell, "--day", DAY).code()).isZero();
    }

    @Test
    void aReleaseThatSomethingBarsIsRefusedAndEarlierPagesStay() throws IOException {
        assertThat(run("generate", cell, "--to", output).code()).isZero();
        SortedMap<String, String> before = bytes();
        Files.delete(cell.resolve("sign-offs.yaml"));
        Ran ran = run("generate", cell, "--to", output, "--release", "--day", DAY);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains("error: nobody signed the whole file as `tested`")
                .contains(
                        "; the release was refused, and nothing was written; a draft can be printed by not asking for a"
                                + " release");
        assertThat(bytes()).isEqualTo(before);
        assertThat(output.resolve(SET + "-not-current.txt")).exists();
        assertThat(run("generate", cell, "--to", output, "--release", "--day", DAY, "--findings", "json")
                        .out())
                .contains("\"verdict\" : \"refused\"");
    }

    @Test
    void aDayThatCannotBeIsRefused() {
        Ran early = run("generate", cell, "--to", output, "--release", "--day", "2026-11-19");
        assertThat(early.code()).isEqualTo(1);
        assertThat(early.out())
                .contains("before the day this description speaks of")
                .contains("[day.not-possible]");
        Ran late = run("check", cell, "--day", "2999-01-01");
        assertThat(late.code()).isEqualTo(1);
        assertThat(late.out()).contains("which has not come");
        assertThat(output).doesNotExist();
    }

    @Test
    void theLedgerIsWrittenAndHeld() throws IOException {
        Files.delete(cell.resolve("derived.yaml"));
        Ran first = run("derive", cell);
        assertThat(first.code()).as(first.out() + first.err()).isZero();
        assertThat(first.out()).contains("the ledger was written").contains("changed: 0, dropped: 0");
        assertThat(run("check", cell).code()).isZero();
        change(
                "derived.yaml",
                "curtain-north.separation-distance, value: \"1238\"",
                "curtain-north.separation-distance, value: \"1237\"");
        Ran held = run("generate", cell, "--to", output);
        assertThat(held.code()).isEqualTo(1);
        assertThat(held.out()).contains("[ledger.not-equal]");
        assertThat(run("derive", cell).out()).contains("changed: curtain-north.separation-distance: 1237 mm → 1238 mm");
        assertThat(run("check", cell).code()).isZero();
        change("safeguards.yaml", "separation-distance: 1238 mm", "separation-distance: 1237 mm");
        Ran refused = run("derive", cell);
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.out()).contains("[claim.not-equal]").contains("; the ledger was not written");
    }

    @Test
    void findingsAreToldInTheFormAskedFor() throws IOException {
        change("safeguards.yaml", "separation-distance: 1238 mm", "separation-distance: 1237 mm");
        assertThat(run("check", cell, "--findings", "json").out())
                .startsWith("{")
                .contains("claim.not-equal");
        assertThat(run("check", cell, "--findings", "junit").out())
                .startsWith("<?xml")
                .contains("claim.not-equal");
    }

    @Test
    void aValueIsExplainedFromTheSameObjects() {
        Ran ran = run("explain", "curtain-north.separation-distance", cell);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("S = max(S_RT; S_RO)")
                .contains("1238 mm")
                .contains("recomputed, agrees with the recorded value");
        assertThat(run("explain", "claim.not-equal").code()).isZero();
    }

    @Test
    void wrongUseIsTwo() {
        for (Ran ran : new Ran[] {
            run("frobnicate"),
            run(),
            run("check"),
            run("check", cell, "--no-such-option"),
            run("check", temporary.resolve("nowhere")),
            run("explain", "no.such-thing"),
            run("explain", "no.such-thing", cell),
            run("check", cell, "--findings", "song"),
            run("check", cell, "--day", "20 November 2026"),
            run("check", cell, "--day", "2026-02-30"),
            run("generate", cell, "--day", "2026-11-20"),
            run("derive"),
            run("derive", temporary.resolve("nowhere"))
        }) {
            assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
            assertThat(ran.err()).isNotBlank().doesNotContain("Exception").doesNotContain("\tat ");
        }
    }

    @Test
    void helpAndVersionAreZero() {
        assertThat(run("--help").out())
                .contains("check")
                .contains("generate")
                .contains("derive")
                .contains("explain");
        assertThat(run("--help").code()).isZero();
        assertThat(run("--version").code()).isZero();
    }

    @Test
    void anEmptyFolderIsRefused() throws IOException {
        Path empty = Files.createDirectories(temporary.resolve("empty"));
        Ran ran = run("generate", empty, "--to", output);
        assertThat(ran.code()).as(ran.toString()).isEqualTo(1);
        assertThat(output).doesNotExist();
    }

    @Test
    void editionsAreComparedInLinesThatATerminalShowsWhole() {
        Ran ran = run("editions", cell);

        assertThat(ran.code()).isZero();
        assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(ran.out())
                .containsSubsequence(
                        "ISO 13855:2024 beside ISO 13855:2010",
                        "mat-lift              1806 mm           1866 mm   +60 mm    1837 mm   -29 mm  does not hold",
                        "21 compared; still holds: 7; does not hold: 4; cannot be said: 10",
                        "ISO 13857:2019 beside ISO 13857:2008",
                        "8 compared; still holds: 8; does not hold: 0; cannot be said: 0")
                .containsOnlyOnce("Cannot be said: no rule for such a safeguard is publicly known.");
    }
}
