package org.cellfile.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.cli.Ran.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.cellfile.refusal.BaseCell;
import org.cellfile.subject.signoff.Signed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signing from outside: what is written, what is left as it was, and what is refused with nothing written. All figures are constructed. */
class SignVerbTest {

    private static final String PASSPHRASE = "quarry-lamp-7";

    @TempDir
    private Path temporary;

    private Path cell;

    @BeforeEach
    void nobodySignedYet() throws IOException {
        cell = BaseCell.signed(Files.createDirectory(temporary.resolve("cell")));
        Files.delete(cell.resolve("sign-offs.yaml"));
    }

    private Ran sign(String by, String words, String role, String on, Object... more) {
        List<Object> arguments =
                new ArrayList<>(List.of("sign", cell, "--by", by, "--words", words, "--role", role, "--on", on));
        arguments.addAll(List.of(more));
        return run(arguments.toArray());
    }

    private Ran tested() {
        return sign("ilse", "tested", "measures", "2026-11-18");
    }

    private Ran checked(Object... more) {
        return sign("bruno", "checked", "checks", "2026-11-19", more);
    }

    private Cell read() {
        return new Generator().check(FolderWorld.of(cell)).cell().orElseThrow();
    }

    private SortedMap<String, String> files() throws IOException {
        SortedMap<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(cell)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                files.put(
                        cell.relativize(path).toString(),
                        new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    private static Path key(String name) {
        return BaseCell.KEYS.resolve(name + ".pem");
    }

    private Path passphrase(String text) throws IOException {
        return Files.writeString(temporary.resolve("passphrase"), text + "\n");
    }

    @Test
    void threePeopleSignAndNothingBarsReleaseAnyMore() throws IOException {
        String digest = read().substance().digest();
        String kept = "signed/" + digest.substring(0, 16) + ".txt";
        SortedMap<String, String> before = files();

        Ran first = tested();
        assertThat(first.code()).as(first.out() + first.err()).isZero();
        assertThat(first.out())
                .contains("signed: `tested` by `ilse`, typed, not proven", "sign-offs.yaml", kept)
                .contains("nobody signed the whole file as `checked`");
        Ran second = checked("--key-file", key("key-bruno-encrypted"), "--passphrase-file", passphrase(PASSPHRASE));
        assertThat(second.code()).as(second.out() + second.err()).isZero();
        assertThat(second.out()).contains("proven with key `key-bruno`");
        Ran third =
                sign("corin", "released for use", "answers for the hall", "2026-11-20", "--key-file", key("key-corin"));
        assertThat(third.code()).as(third.out() + third.err()).isZero();
        assertThat(third.out()).startsWith("nothing found; signed: `released for use` by `corin`, proven");

        SortedMap<String, String> after = files();
        before.forEach((path, text) -> assertThat(after).containsEntry(path, text));
        assertThat(after.keySet()).hasSize(before.size() + 2).contains("sign-offs.yaml", kept);
        assertThat(after.get(kept))
                .isEqualTo(new String(
                        read().substance().text().getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1));
        assertThat(read().substance().digest()).isEqualTo(digest);
        assertThat(read().signing().signed()).extracting(Signed::proven).containsExactly(false, true, true);
        assertThat(run("check", cell).out()).startsWith("nothing found; ");
    }

    @Test
    void everyByteThatStoodThereStands() throws IOException {
        String mine =
                "# Ours.\r\ncellfile: 1\r\n\r\nsign-off-policy:\r\n    - {words: approved, covers: modes}   # by the hall\r\n"
                        + "\r\nsign-offs:\r\n      # nobody yet but:\r\n      - {covers: modes, digest: "
                        + "ab".repeat(32)
                        + ", words: taken note, by: corin, role: drives the fork lift, on: 2026-11-02}";
        Files.writeString(cell.resolve("ours.yaml"), mine);

        Ran ran = tested();

        assertThat(ran.code()).as(ran.out()).isZero();
        assertThat(Files.readString(cell.resolve("ours.yaml")))
                .startsWith(mine + "\r\n      - covers: file\r\n        digest: ")
                .endsWith("        on: 2026-11-18\r\n");
        assertThat(cell.resolve("sign-offs.yaml")).doesNotExist();
        try (Stream<Path> left = Files.walk(cell)) {
            assertThat(left.filter(path -> path.getFileName().toString().startsWith(".")))
                    .isEmpty();
        }
    }

    @Test
    void aFileWithTheKeysOnlyGetsTheList() throws IOException {
        String mine = "cellfile: 1\nsign-off-policy: [{words: approved, covers: modes}]";
        Files.writeString(cell.resolve("sign-offs.yaml"), mine);

        assertThat(tested().code()).isZero();
        assertThat(Files.readString(cell.resolve("sign-offs.yaml")))
                .startsWith(mine + "\n\nsign-offs:\n  - covers: file\n");
    }

    @Test
    void aListThatIsNotLastOrInOneLineIsLeftAlone() throws IOException {
        String entry = "{covers: modes, digest: " + "ab".repeat(32)
                + ", words: taken note, by: corin, role: drives the fork lift, on: 2026-11-02}";
        for (String mine : List.of(
                "cellfile: 1\nsign-offs:\n  - " + entry + "\nsign-off-policy:\n  - {words: approved, covers: modes}\n",
                "cellfile: 1\nsign-offs: [" + entry + "]\n",
                "cellfile: 1\nsign-offs:\n  - " + entry + "\n...\n")) {
            Files.writeString(cell.resolve("ours.yaml"), mine);
            nothingIsWritten(tested(), "no sign-off can be added at the end of `ours.yaml`");
        }
    }

    private void nothingIsWritten(Ran ran, String... told) throws IOException {
        assertThat(ran.code()).as(ran.out() + ran.err()).isEqualTo(1);
        assertThat(ran.out()).contains(told).contains("; nothing was written").doesNotContain("defect");
        assertThat(cell.resolve("sign-offs.yaml")).doesNotExist();
        assertThat(cell.resolve("signed")).doesNotExist();
    }

    @Test
    void whoMayNotSignIsToldWhy() throws IOException {
        nothingIsWritten(sign("bruno", "tested", "checks", "2026-11-18"), "[sign-off.not-competent]");
        nothingIsWritten(sign("ilse", "tested", "checker", "2026-11-18"), "[sign-off.role-not-held]");
        nothingIsWritten(sign("ilse", "tested", "measures", "2026-07-18"), "[sign-off.before-built]");
        nothingIsWritten(sign("ilse", "tested", "measures", "2026-11-22"), "[date.after-as-of]", "voids no sign-off");
        nothingIsWritten(sign("ilse", "tested", "measures", "18.11.2026"), "[read.not-a-date]");
        nothingIsWritten(sign("ilse", "tested", "measures", "9999-12-31"), "is not dated ahead");
        nothingIsWritten(sign("ilse", "proved", "measures", "2026-11-18"), "[read.unknown-word]");
        nothingIsWritten(
                sign("ilsa", "tested", "measures", "2026-11-18"), "there is no person `ilsa`", "`ilse` is nearest");
        nothingIsWritten(
                sign("ilse", "tested", "measures", "2026-11-18", "--covers", "mode"),
                "there is no chapter `mode`",
                "`modes` is nearest");
        assertThat(checked().out()).as("a refusal is no clean run").startsWith("this would be signed too early");
        nothingIsWritten(checked(), "this would be signed too early: first comes `tested` of the whole file");
        nothingIsWritten(sign("ilse", "tested", "a\": {b: c}\n- d", "2026-11-18"), "it cannot be signed so");
    }

    @Test
    void whoTestedNeitherChecksNorReleases() throws IOException {
        assertThat(tested().code()).isZero();
        SortedMap<String, String> before = files();

        assertThat(sign("ilse", "checked", "checks", "2026-11-19").out()).contains("[sign-off.checked-by-tester]");
        assertThat(sign("ilse", "tested", "measures", "2026-11-19").out()).contains("[sign-off.repeated]");
        assertThat(sign("bruno", "checked", "checks", "2026-11-17").out()).contains("[sign-off.too-early]");
        assertThat(checked().code()).isZero();
        assertThat(sign("bruno", "released for use", "checks", "2026-11-20").out())
                .contains("[sign-off.not-the-plant]");
        assertThat(sign("corin", "released for use", "answers for the hall", "2026-11-18")
                        .out())
                .contains("[sign-off.too-early]", "`checked` of the whole file was signed on 2026-11-19");
        assertThat(files().keySet()).isEqualTo(before.keySet());
        assertThat(read().signing().signed()).hasSize(2);
    }

    @Test
    void aTypedNameDoesNotDoWhereProofIsAskedFor() throws IOException {
        Files.writeString(
                cell.resolve("policy.yaml"), "cellfile: 1\nsign-off-policy: [{words: tested, proven: yes}]\n");

        nothingIsWritten(tested(), "[sign-off.not-proven]");
    }

    @Test
    void aKeyThatIsNotThePersonsIsToldApart() throws IOException {
        String keyFile = "--key-file";
        assertThat(tested().code()).isZero();
        SortedMap<String, String> before = files();
        for (Ran ran : List.of(
                told(checked(keyFile, key("key-corin")), "the key file holds another key than `key-bruno`"),
                told(checked(keyFile, key("another")), "the key file holds another key than `key-bruno`"),
                told(checked(keyFile, key("key-corin"), "--key", "key-corin"), "[sign-off.foreign-key]"),
                told(checked(keyFile, key("key-bruno"), "--key", "key-corin"), "another key than `key-corin`"),
                told(checked(keyFile, key("key-bruno"), "--key", "key-brown"), "there is no key `key-brown`"),
                told(checked("--key", "key-bruno"), "and no file that holds the half that signs"),
                told(checked(keyFile, key("of-another-sort")), "a key of another sort"),
                told(checked(keyFile, key("nowhere")), "there is no key file"),
                told(checked(keyFile, cell), "could not be read"),
                told(checked(keyFile, cell.resolve("keys.yaml")), "holds no key that signs"),
                told(
                        sign("bruno", "checked", "checks", "2026-08-31", keyFile, key("key-bruno")),
                        "[sign-off.key-not-in-force]"),
                told(
                        sign("ilse", "approved", "checks", "2026-11-19", keyFile, key("key-bruno")),
                        "there is no key of `ilse` under `keys`; there are `key-bruno` of `bruno`"))) {
            assertThat(ran.code()).isEqualTo(1);
        }
        assertThat(files()).isEqualTo(before);
    }

    private static Ran told(Ran ran, String words) {
        assertThat(ran.out()).contains(words).contains("; nothing was written").doesNotContain("defect");
        return ran;
    }

    @Test
    void thePassphraseComesFromAFileOrAVariableOrAPersonAndMustBeRight() throws IOException {
        assertThat(tested().code()).isZero();
        SortedMap<String, String> before = files();
        Path encrypted = key("key-bruno-encrypted");
        String variable = System.getenv().keySet().stream().sorted().findFirst().orElseThrow();

        told(checked("--key-file", encrypted, "--passphrase-file", passphrase("quarry-lamp-8")), "cannot be opened");
        told(checked("--key-file", encrypted, "--passphrase-file", temporary.resolve("none")), "there is no such file");
        told(checked("--key-file", encrypted, "--passphrase-variable", variable), "cannot be opened");
        told(
                checked("--key-file", encrypted, "--passphrase-variable", "NO_SUCH_VARIABLE_HERE"),
                "there is no environment variable NO_SUCH_VARIABLE_HERE");
        told(checked("--key-file", encrypted), "there is nobody to ask for the passphrase");
        assertThat(checked("--key-file", encrypted, "--passphrase-file", "a", "--passphrase-variable", "b")
                        .code())
                .isEqualTo(2);
        assertThat(checked("--key-file", encrypted, "--passphrase", PASSPHRASE).code())
                .isEqualTo(2);
        assertThat(files()).isEqualTo(before);

        assertThat(checked("--key-file", encrypted, "--passphrase-file", passphrase(PASSPHRASE))
                        .code())
                .isZero();
    }

    @Test
    void aCellThatIsRefusedIsNotSigned() throws IOException {
        Path file = cell.resolve("safeguards.yaml");
        Files.writeString(
                file, Files.readString(file).replace("separation-distance: 931 mm", "separation-distance: 900 mm"));

        nothingIsWritten(tested(), "[claim.not-equal]", "what is refused is not signed");
    }

    @Test
    void aCopyFromWhichPartsWereLeftOutIsNotSigned() throws IOException {
        Files.writeString(
                cell.resolve("copies.yaml"),
                "cellfile: 1\nleft-out: [{chapter: registers, digest: " + "ab".repeat(32) + "}]\n");

        nothingIsWritten(tested(), "this is a copy from which parts were left out");
    }

    /** What is wrong with an earlier sign-off hinders nobody to sign. */
    @Test
    void whatWasSignedBeforeAChangeIsSignedAnew() throws IOException {
        assertThat(tested().code()).isZero();
        Path file = cell.resolve("cell.yaml");
        Files.writeString(file, Files.readString(file).replace("Boxes up to 20 kg", "Boxes up to 25 kg"));
        assertThat(run("check", cell).out())
                .contains("[sign-off.superseded]", "cell/limits: [Boxes up to 20 kg.] → [Boxes up to 25 kg.]");

        Ran again = sign("ilse", "tested", "measures", "2026-11-20");

        assertThat(again.code()).as(again.out()).isZero();
        assertThat(again.out()).doesNotContain("superseded");
        try (Stream<Path> kept = Files.list(cell.resolve("signed"))) {
            assertThat(kept).hasSize(2);
        }
    }

    @Test
    void theDayOfTheRunIsTheDayOfSigningUnlessStated() throws IOException {
        String today = FolderWorld.of(cell).today().toString();
        Path file = cell.resolve("cell.yaml");
        Files.writeString(file, Files.readString(file).replace("as-of: 2026-11-20", "as-of: " + today));
        Path dates = cell.resolve("dates.yaml");
        Files.writeString(dates, Files.readString(dates).replace("2028-02-11", "9998-02-11"));

        Ran ran = run("sign", cell, "--by", "ilse", "--words", "tested", "--role", "measures");

        assertThat(ran.code()).as(ran.out()).isZero();
        assertThat(read().signing().signed().get(0).signOff().on().value()).contains(LocalDate.parse(today));
    }

    @Test
    void wrongUseIsTwo() {
        for (Ran ran : List.of(
                run("sign", cell),
                run("sign", cell, "--by", "ilse", "--words", "tested"),
                run("sign", temporary.resolve("nowhere"), "--by", "ilse", "--words", "tested", "--role", "measures"))) {
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).isNotBlank().doesNotContain("Exception");
        }
    }
}
