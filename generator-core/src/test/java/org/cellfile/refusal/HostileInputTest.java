package org.cellfile.refusal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.finding.FindingReport;
import org.cellfile.verdict.Verdict;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are broken, huge or meant to do harm end in findings, soon, and never in a failure of the program. */
class HostileInputTest {

    private static final Duration SOON = Duration.ofSeconds(20);

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        BaseCell.copyTo(folder);
    }

    private Verdict checkSoon() {
        return Assertions.assertTimeoutPreemptively(SOON, () -> {
            Verdict verdict = BaseCell.check(folder);
            assertThat(BaseCell.printed(verdict)).isNotEmpty();
            return verdict;
        });
    }

    private List<String> found() {
        return BaseCell.ids(checkSoon().findings());
    }

    @Test
    void tenThousandLevels() throws IOException {
        Files.writeString(
                folder.resolve("deep.yaml"), "cellfile: 1\ndeep: " + "[".repeat(10_000) + "]".repeat(10_000) + "\n");
        assertThat(found()).containsExactly("read.too-deep");

        Files.writeString(folder.resolve("deep.yaml"), "cellfile: 1\ndeep: " + "{a: ".repeat(10_000) + "\n");
        assertThat(found()).containsExactly("read.too-deep");

        String steps = IntStream.range(0, 1_000)
                .mapToObj(level -> " ".repeat(level) + "a:\n")
                .collect(Collectors.joining());
        Files.writeString(folder.resolve("deep.yaml"), "cellfile: 1\n" + steps);
        assertThat(found()).containsExactly("read.too-deep");
    }

    @Test
    void aFileOfAHundredMegabytesIsNotRead() throws IOException {
        for (String name : List.of("large.yaml", "runs/large.csv")) {
            try (RandomAccessFile file =
                    new RandomAccessFile(folder.resolve(name).toFile(), "rw")) {
                file.setLength(100L << 20);
            }
        }
        Verdict verdict = checkSoon();
        assertThat(BaseCell.ids(verdict.findings())).containsExactly("read.too-large", "read.too-large");
        assertThat(verdict.findings().get(0).sentence()).contains("104857600 bytes");
    }

    @Test
    void aLinkOutOfTheFolderIsNotOpened(@TempDir Path elsewhere) throws IOException {
        Path secret = elsewhere.resolve("secret.yaml");
        Files.writeString(secret, "cellfile: 1\nsecret: hidden-word\n");
        Files.createSymbolicLink(folder.resolve("more.yaml"), secret);

        Verdict verdict = checkSoon();
        assertThat(BaseCell.ids(verdict.findings())).containsExactly("read.outside-the-folder");
        assertThat(BaseCell.printed(verdict)).doesNotContain("hidden-word");
    }

    @Test
    void aFolderThatIsALinkIsNotEntered(@TempDir Path elsewhere) throws IOException {
        Files.writeString(elsewhere.resolve("runs.csv"), "run,time [ms],distance [mm]\n");
        Files.createSymbolicLink(folder.resolve("linked"), elsewhere);
        BaseCell.change(folder, "stops.yaml", "runs/warm.csv", "linked/runs.csv");

        assertThat(found()).contains("read.no-such-file");
    }

    @Test
    void linksInACircleAreNotFollowed() throws IOException {
        Files.createSymbolicLink(folder.resolve("one.yaml"), Path.of("two.yaml"));
        Files.createSymbolicLink(folder.resolve("two.yaml"), Path.of("one.yaml"));
        Files.createSymbolicLink(folder.resolve("runs/back"), Path.of(".."));

        assertThat(found()).containsExactly("read.outside-the-folder", "read.outside-the-folder");
    }

    @Test
    void aFolderNamedLikeAFileIsPassedOver() throws IOException {
        Files.createDirectory(folder.resolve("old.yaml"));
        Files.createDirectory(folder.resolve("runs/old.csv"));

        assertThat(found()).isEmpty();
    }

    @Test
    void aMillionCharacters() throws IOException {
        String million = "x".repeat(1_000_000);
        Files.writeString(folder.resolve("long.yaml"), "cellfile: 1\n" + "? " + million + "\n: y\n");
        assertThat(found()).containsExactly("read.unknown-key");

        Files.delete(folder.resolve("long.yaml"));
        for (String value : List.of("tag: curtain", "kind: light-curtain", "resolution: 14 mm", "stop-tests: [stop]")) {
            BaseCell.copyTo(folder);
            String key = value.substring(0, value.indexOf(' '));
            BaseCell.change(folder, "safeguards.yaml", value + "\n", key + " " + million + "\n");
            Verdict verdict = checkSoon();
            assertThat(verdict.word()).isEqualTo("refused");
            assertThat(BaseCell.printed(verdict).length()).isLessThan(50_000);
        }
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "safeguards.yaml", "resolution: 14 mm", "resolution: " + "9".repeat(1_000_000) + " mm");
        assertThat(found()).containsExactly("quantity.not-a-number");
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "safeguards.yaml", "14 ms", "0.014" + " ".repeat(1_000_000) + "s");
        assertThat(found()).isEmpty();
    }

    @Test
    void aHundredThousandKeys() throws IOException {
        String keys = IntStream.range(0, 100_000)
                .mapToObj(number -> "  key-" + number + ": 1\n")
                .collect(Collectors.joining());
        BaseCell.change(folder, "cell.yaml", "cell:\n", "cell:\n" + keys);

        assertThat(found()).hasSize(100_000).containsOnly("read.unknown-key");
    }

    @Test
    void aThousandRuns() throws IOException {
        String rows = IntStream.rangeClosed(1, 1_000)
                .mapToObj(number -> number + "," + (180 + number % 10) + "," + (80 + number % 7) + "\n")
                .collect(Collectors.joining());
        Files.writeString(folder.resolve("runs/warm.csv"), "run,time [ms],distance [mm]\n" + rows);
        assertThat(found()).doesNotContain("csv.row").isNotEmpty();

        Files.writeString(folder.resolve("runs/warm.csv"), "run,time [ms],distance [mm]\n" + rows + "1001,180,80\n");
        assertThat(found()).contains("csv.row");
    }

    @Test
    void lineEndsOfWindowsAndAByteOrderMarkChangeNothing() throws IOException {
        for (String change : List.of("resolution: 14 mm", "installed: {distance: 1300 mm")) {
            BaseCell.copyTo(folder);
            BaseCell.change(folder, "safeguards.yaml", change, change.replaceAll("\\d+", "90"));
            String before = BaseCell.printed(BaseCell.check(folder));
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(path -> path.toString().matches(".*\\.(yaml|csv)"))
                        .toList()) {
                    Files.writeString(file, "\uFEFF" + Files.readString(file).replace("\n", "\r\n"));
                }
            }
            assertThat(before).contains("error:");
            assertThat(BaseCell.printed(BaseCell.check(folder))).isEqualTo(before);
        }
        BaseCell.copyTo(folder);
        assertThat(found()).isEmpty();
    }

    @Test
    void placesAreCountedInCharactersAsPeopleSeeThem() throws IOException {
        BaseCell.change(
                folder,
                "robots.yaml",
                "tool: {name: gripper, mass: 10 kg",
                "tool: {name: \"\uD83E\uDD16 Größe\", mass: 10 kilo");
        Verdict verdict = checkSoon();

        assertThat(verdict.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.where().position()).isEqualTo("robots.yaml:9:35"));
    }

    @Test
    void theLanguageAndTheClockOfTheMachineChangeNothing() throws IOException {
        BaseCell.change(folder, "safeguards.yaml", "separation-distance: 931 mm", "separation-distance: 900 mm");
        BaseCell.change(folder, "instruments.yaml", "calibration-due: 2027-03-04", "calibration-due: 2026-09-04");
        String before = BaseCell.printed(BaseCell.check(folder));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String language : List.of("ar-EG-u-nu-arab", "tr-TR", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(language));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertThat(BaseCell.printed(BaseCell.check(folder))).isEqualTo(before);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void damageOfAnySortEndsInFindings() throws IOException {
        Random random = new Random(20261125);
        List<Path> files;
        try (Stream<Path> walk = Files.walk(folder)) {
            files = walk.filter(Files::isRegularFile).sorted().toList();
        }
        for (int round = 0; round < 500; round++) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] whole = Files.readAllBytes(file);
            byte[] damaged = random.nextBoolean() ? lines(whole, random) : bytes(whole, random);
            Files.write(file, damaged);
            String what = "round " + round + ", " + folder.relativize(file) + ":\n" + new String(damaged, UTF_8);
            assertThatNoException().as(what).isThrownBy(() -> {
                Verdict verdict = BaseCell.check(folder);
                assertThat(BaseCell.printed(verdict)).isNotEmpty();
                assertThat(FindingReport.json(verdict.word(), verdict.findings()))
                        .isNotEmpty();
                assertThat(FindingReport.junit(verdict.findings())).isNotEmpty();
            });
            Files.write(file, whole);
        }
    }

    /** Drops, repeats, moves or shifts lines. */
    private static byte[] lines(byte[] whole, Random random) {
        List<String> lines = new ArrayList<>(new String(whole, UTF_8).lines().toList());
        for (int times = 1 + random.nextInt(3); times > 0 && !lines.isEmpty(); times--) {
            int at = random.nextInt(lines.size());
            String line = lines.get(at);
            switch (random.nextInt(5)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, line);
                case 2 -> lines.add(random.nextInt(lines.size()), lines.remove(at));
                case 3 -> lines.set(at, "  " + line);
                default -> lines.set(at, line.replaceAll("\\d+", String.valueOf(random.nextInt())));
            }
        }
        return (String.join("\n", lines) + "\n").getBytes(UTF_8);
    }

    /** Changes, drops or adds bytes, most of them ones that mean something. */
    private static byte[] bytes(byte[] whole, Random random) {
        String telling = "{}[]:,-#&*!|>'\"%@` \t\n\r0123456789.mseE";
        StringBuilder text = new StringBuilder(new String(whole, ISO_8859_1));
        for (int times = 1 + random.nextInt(4); times > 0 && text.length() > 0; times--) {
            int at = random.nextInt(text.length());
            char other = random.nextInt(5) > 0
                    ? telling.charAt(random.nextInt(telling.length()))
                    : (char) random.nextInt(256);
            switch (random.nextInt(3)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.setCharAt(at, other);
                default -> text.insert(at, other);
            }
        }
        return text.toString().getBytes(ISO_8859_1);
    }

    /** Exponents and lives that nobody means are refused where they stand, and nothing is computed with them. */
    @Test
    void rateAndLifeBeyondBelief() throws IOException {
        for (String slip : List.of(
                "pfh: 1e-99 1/h, level",
                "pfh: 1e99 1/h, level",
                "pfh: 999999999999e99 1/h, level",
                "pfh: 5.0e-9 1/h, mission-time: 1000000 years, level",
                "pfh: 5.0e-9 1/h, mission-time: 999999999999.999999999999 h, level")) {
            BaseCell.copyTo(folder);
            BaseCell.change(folder, "functions.yaml", "pfh: 5.0e-9 1/h, level", slip);
            assertThat(found()).as(slip).containsExactly("quantity.absurd");
        }
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "functions.yaml", "pfh: 5.0e-9 1/h", "pfh: 999999999999e99");
        assertThat(found()).containsExactly("quantity.no-unit");
    }

    /** Recorded values are held against the derived ones, whatever their exponent. */
    @Test
    void recordedRateBeyondBelief() throws IOException {
        for (String slip : List.of("1e-99 1/h", "1e99 1/h", "999999999999e99 1/h", "0e-99 1/h")) {
            BaseCell.copyTo(folder);
            BaseCell.change(folder, "functions.yaml", "pfh: 4.29e-8 1/h", "pfh: " + slip);
            assertThat(found()).as(slip).containsExactly("claim.not-equal");
        }
    }

    /** Figures at the ends of what can be written, each of which may be right by itself. */
    @Test
    void operationsWithoutEnd() throws IOException {
        BaseCell.change(
                folder,
                "functions.yaml",
                "b10d: 1000000\n    operations: {days: 230, hours: 16 h, cycle: 15 min}",
                "b10d: 0.000000000001\n    operations: {days: 230, hours: 16 h, cycle: 0.000000000001 s}");
        assertThat(found()).contains("claim.not-equal");
        BaseCell.copyTo(folder);
        BaseCell.change(
                folder,
                "functions.yaml",
                "b10d: 1000000\n    operations: {days: 230, hours: 16 h, cycle: 15 min}",
                "b10d: 999999999999\n    operations: {days: 0.000000000001, hours: 0.000000000001 h, cycle: 99 years}");
        assertThat(found()).contains("claim.not-equal");
    }

    /** A plan as a drawing program exports it: the corners of one outline on a circle, each a tenth of a millimetre apart or more. */
    @Test
    void aHundredThousandCorners() throws IOException {
        BaseCell.withPlan(folder);
        String corners = IntStream.range(0, 100_000)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "[%.1f,%.1f]",
                        20_000 * Math.cos(i * 2 * Math.PI / 100_000),
                        20_000 * Math.sin(i * 2 * Math.PI / 100_000)))
                .collect(Collectors.joining(","));
        BaseCell.change(
                folder,
                "plan.yaml",
                "outline: [[-600, 2000], [600, 2000], [600, 3925], [-600, 3925]]",
                "outline: [" + corners + "]");

        assertThat(found()).containsExactly("plan.too-many-points");
    }

    /** The same going to and fro, so that every edge crosses every other. */
    @Test
    void aThousandEdgesThatCrossEachOther() throws IOException {
        BaseCell.withPlan(folder);
        String corners = IntStream.range(0, 2_000)
                .mapToObj(i -> "[" + (i % 2 == 0 ? -5_000 : 5_000) + "," + (i % 2 == 0 ? i : 4_000 - i) + "]")
                .collect(Collectors.joining(","));
        BaseCell.change(
                folder,
                "plan.yaml",
                "outline: [[-600, 2000], [600, 2000], [600, 3925], [-600, 3925]]",
                "outline: [" + corners + "]");

        assertThat(found()).contains("plan.crosses-itself");
    }

    /** Sixty walls one way and sixty the other: few corners, and thousands of places where they cross. */
    @Test
    void wallsThatCrossEachOther() throws IOException {
        BaseCell.withPlan(folder);
        String walls = IntStream.range(0, 120)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "    - {tag: wall-%d, name: a wall, passable: no, hides: no, measure: nobody gets in between, line: %s}\n",
                        i,
                        i % 2 == 0
                                ? "[[" + i * 10 + ", -9000], [" + i * 10 + ", -7000]]"
                                : "[[-100, " + (i * 10 - 8500) + "], [1900, " + (i * 10 - 8500) + "]]"))
                .collect(Collectors.joining());
        BaseCell.change(folder, "plan.yaml", "  safeguards:\n", walls + "  safeguards:\n");

        assertThat(found()).containsExactly("plan.too-many-points");
    }
}
