package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.subject.signoff.SignOffStatus.NOT_ASKED_FOR;
import static org.cellfile.subject.signoff.SignOffStatus.REPEATED;
import static org.cellfile.subject.signoff.SignOffStatus.SUPERSEDED;
import static org.cellfile.subject.signoff.SignOffStatus.TOO_EARLY;
import static org.cellfile.subject.signoff.SignOffStatus.VALID;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.subject.signoff.KeptTexts;
import org.cellfile.subject.signoff.SignOffStatus;
import org.cellfile.subject.signoff.Signed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a sign-off is worth, and what makes it worth less. All figures are constructed. */
class SigningTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void signed() throws IOException {
        BaseCell.signed(folder);
    }

    private Cell cell() {
        return BaseCell.checked(folder).cell().orElseThrow();
    }

    private List<SignOffStatus> statuses() {
        return cell().signing().signed().stream().map(Signed::status).toList();
    }

    private List<String> found() {
        return BaseCell.ids(BaseCell.checkSigned(folder).findings());
    }

    /** One more sign-off at the end of the list. */
    private void add(String covers, String words, String by, String role, String on) throws IOException {
        Path file = folder.resolve("sign-offs.yaml");
        Files.writeString(file, Files.readString(file) + entry(covers, words, by, role, on));
    }

    private String entry(String covers, String words, String by, String role, String on) {
        return "  - {covers: " + covers + ", digest: \""
                + cell().substance().digest(covers).orElseThrow() + "\", words: " + words + ", by: " + by + ", role: "
                + role + ", on: " + on + "}\n";
    }

    private void keep() throws IOException {
        Substance now = cell().substance();
        Path kept = folder.resolve(KeptTexts.path(now));
        Files.createDirectories(folder.resolve("signed"));
        Files.writeString(kept, now.text());
    }

    @Test
    void aTypedNameIsNotProvenAndASignatureIs() {
        assertThat(statuses()).containsExactly(VALID, VALID, VALID);
        assertThat(cell().signing().signed()).extracting(Signed::proven).containsExactly(false, true, false);
    }

    @Test
    void commentsLayoutTheDayDescribedAndOtherSignOffsVoidNothing() throws IOException {
        BaseCell.change(folder, "cell.yaml", "as-of: 2026-11-20", "as-of: 2026-11-25   # looked at again");
        BaseCell.change(folder, "safeguards.yaml", "resolution: 14 mm", "resolution:   14 mm   # as on the plate");
        BaseCell.change(folder, "keys.yaml", "of: corin,", "of: corin, withdrawn: 2026-11-24,");
        add("file", "taken note", "corin", "drives the fork lift", "2026-11-21");
        keep();

        assertThat(statuses()).containsExactly(VALID, VALID, VALID, NOT_ASKED_FOR);
        assertThat(found()).isEmpty();
    }

    /** Raises the last digit of each number of a file in turn. */
    @Test
    void everyNumberOfASafeguardVoidsWhatWasSignedOfAll() throws IOException {
        Path file = folder.resolve("safeguards.yaml");
        String text = Files.readString(file);
        int tried = 0;
        for (int i = text.indexOf('\n'); i < text.length(); i++) {
            boolean last = Character.isDigit(text.charAt(i))
                    && (i + 1 == text.length() || !Character.isDigit(text.charAt(i + 1)));
            if (last && text.substring(text.lastIndexOf('\n', i) + 1, i).contains(": ")) {
                char other = text.charAt(i) == '7' ? '8' : '7';
                Files.writeString(file, text.substring(0, i) + other + text.substring(i + 1));

                assertThat(statuses())
                        .as(text.substring(Math.max(0, i - 30), i + 1))
                        .containsOnly(SUPERSEDED);
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(20);
    }

    @Test
    void aChangeVoidsTheChapterItStandsInAndNoOther() throws IOException {
        add("safeguards", "approved", "corin", "drives the fork lift", "2026-11-20");
        add("modes", "approved", "corin", "drives the fork lift", "2026-11-20");
        BaseCell.change(folder, "safeguards.yaml", "resolution: 14 mm", "resolution: 20 mm");

        assertThat(statuses()).containsExactly(SUPERSEDED, SUPERSEDED, SUPERSEDED, SUPERSEDED, NOT_ASKED_FOR);
    }

    @Test
    void whatChangedSinceIsListedWithBothValuesAndThePlace() throws IOException {
        keep();
        BaseCell.change(folder, "safeguards.yaml", "distance: 1300 mm", "distance: 1290 mm");
        BaseCell.change(folder, "cell.yaml", "    - Boxes up to 20 kg.", "    - Boxes up to 25 kg.");

        Signed first = cell().signing().signed().get(0);

        assertThat(first.since())
                .startsWith(
                        "cell/limits: [Boxes up to 20 kg.] → [Boxes up to 25 kg.] (cell.yaml:15:5)",
                        "safeguards/curtain/installed/distance: 1300 mm → 1290 mm (safeguards.yaml:19:27)")
                .noneMatch(line -> line.contains("more"));
        assertThat(BaseCell.checkSigned(folder).findings())
                .filteredOn(finding -> finding.id().words().equals("sign-off.superseded"))
                .singleElement()
                .extracting(Finding::because)
                .asInstanceOf(InstanceOfAssertFactories.LIST)
                .containsAll(first.since());
    }

    @Test
    void aLongListOfChangesIsCutShort() throws IOException {
        keep();
        BaseCell.change(folder, "safeguards.yaml", "by: ilse", "by: bruno");
        BaseCell.change(folder, "tests.yaml", "by: ilse", "by: bruno");
        BaseCell.change(folder, "standards.yaml", "by: ilse", "by: bruno");

        assertThat(cell().signing().signed().get(0).since())
                .hasSize(13)
                .last()
                .asString()
                .matches("and \\d+ more");
    }

    @Test
    void whereNothingWasKeptThatIsSaid() throws IOException {
        BaseCell.change(folder, "safeguards.yaml", "resolution: 14 mm", "resolution: 20 mm");

        assertThat(cell().signing().signed().get(0).since())
                .singleElement()
                .asString()
                .contains("not kept under `signed/`");
    }

    @Test
    void theSameDayIsInOrderAndADayEarlierIsNot() throws IOException {
        BaseCell.change(folder, "sign-offs.yaml", "on: 2026-11-18", "on: 2026-11-19");
        assertThat(statuses()).containsExactly(VALID, VALID, VALID);

        BaseCell.change(folder, "sign-offs.yaml", "on: 2026-11-20", "on: 2026-11-18");
        assertThat(statuses()).containsExactly(VALID, VALID, TOO_EARLY);
    }

    @Test
    void whoSignsAgainAfterTheFirstWasTooEarlyIsHeard() throws IOException {
        BaseCell.change(folder, "sign-offs.yaml", "on: 2026-11-20", "on: 2026-11-18");
        add("file", "released for use", "corin", "answers for the hall", "2026-11-20");

        assertThat(statuses()).containsExactly(VALID, VALID, TOO_EARLY, VALID);
        assertThat(found()).isEmpty();
    }

    @Test
    void whoSignsTheSameAgainIsToldAndWhoSignsInAnotherRoleIsNot() throws IOException {
        add("file", "released for use", "corin", "drives the fork lift", "2026-11-20");
        add("file", "released for use", "corin", "answers for the hall", "2026-11-20");

        assertThat(statuses()).containsExactly(VALID, VALID, VALID, VALID, REPEATED);
        assertThat(found()).containsExactly("sign-off.repeated");
    }

    @Test
    void aSignOffOfAllStandsForEachChapterAndOneOfAChapterNotForAll() throws IOException {
        Path policy = folder.resolve("policy.yaml");
        Files.writeString(policy, "cellfile: 1\nsign-off-policy: [{words: checked, covers: modes}]\n");
        // What is asked is signed as well: who asks for something else afterwards has it signed anew.
        assertThat(found()).containsOnly("sign-off.superseded");

        BaseCell.change(folder, "sign-offs.yaml", "words: checked", "words: taken note");
        add("modes", "checked", "bruno", "checks", "2026-11-19");
        assertThat(found()).contains("sign-off.missing");
    }

    /** Whatever a cell asks for, the three that are asked of every cell stay. */
    @Test
    void theMinimumCannotBeLowered() throws IOException {
        Files.delete(folder.resolve("sign-offs.yaml"));
        for (String policy :
                List.of("{words: taken note}", "{words: tested, covers: modes}", "{words: tested, role: checks}")) {
            Files.writeString(folder.resolve("policy.yaml"), "cellfile: 1\nsign-off-policy: [" + policy + "]\n");

            assertThat(cell().signing().asked().stream()
                            .filter(due -> due.covers().equals(Substance.WHOLE))
                            .map(due -> due.words().words()))
                    .as(policy)
                    .contains("tested", "checked", "released for use");
            assertThat(found().stream().filter("sign-off.missing"::equals))
                    .as(policy)
                    .hasSizeGreaterThanOrEqualTo(3);
        }
    }

    /** A sign-off of a chapter goes on counting when a name is spelled otherwise; its signature needs the text that was kept. */
    @Test
    void aNameSpelledOtherwiseSinceIsLookedUpInTheTextThatWasKept() throws IOException {
        BaseCell.change(
                folder,
                "sign-offs.yaml",
                "covers: file\n    digest: \"" + cell().substance().digest() + "\"\n    words: checked",
                "covers: modes\n    digest: \"" + "0".repeat(64) + "\"\n    words: checked");
        String list = Files.readString(folder.resolve("sign-offs.yaml"))
                .replaceFirst("signature: .*", "signature: MADE-HERE");
        Path over = Files.createDirectories(folder.resolveSibling(folder.getFileName() + "-over"));
        Files.writeString(over.resolve("sign-offs.yaml"), list);
        BaseCell.signed(over, folder);
        keep();
        assertThat(cell().signing().signed().get(1).proven()).isTrue();

        BaseCell.change(folder, "people.yaml", "name: B. Ostrow", "name: Bruno Ostrow");
        assertThat(cell().signing().signed().get(1).proven()).isTrue();
        assertThat(found()).doesNotContain("sign-off.signature-does-not-hold");

        try (Stream<Path> kept = Files.list(folder.resolve("signed"))) {
            Files.delete(kept.findFirst().orElseThrow());
        }
        assertThat(found()).contains("sign-off.signature-does-not-hold");
    }

    /** What is signed cannot be changed in a single character without the signature telling. */
    @Test
    void aSignedSignOffCannotBeEdited() throws IOException {
        for (String[] edit : new String[][] {
            {"on: 2026-11-19", "on: 2026-11-20"},
            {"words: checked", "words: approved"},
            {"by: bruno\n    role: checks", "by: bruno\n    role: measures"},
            {"words: checked", "words: taken note"}
        }) {
            BaseCell.signed(folder);
            BaseCell.change(folder, "sign-offs.yaml", edit[0], edit[1]);

            assertThat(found()).as(edit[1]).contains("sign-off.signature-does-not-hold");
            assertThat(cell().signing().signed().get(1).proven()).isFalse();
        }
    }

    /** However the list is ordered, each sign-off is worth the same, as long as nobody repeats one. */
    @Test
    void theOrderInTheListIsOfNoMatter() throws IOException {
        List<String> entries = new ArrayList<>(List.of(
                entry("file", "tested", "ilse", "measures", "2026-11-18"),
                entry("file", "checked", "bruno", "checks", "2026-11-17"),
                entry("file", "checked", "corin", "answers for the hall", "2026-11-19"),
                entry("file", "released for use", "corin", "answers for the hall", "2026-11-20"),
                entry("file", "released for use", "corin", "drives the fork lift", "2026-11-18"),
                entry("modes", "checked", "bruno", "checks", "2026-11-10"),
                entry("file", "approved", "corin", "answers for the hall", "2026-11-12")));
        Random random = new Random(20261127);
        for (int round = 0; round < 20; round++) {
            Collections.shuffle(entries, random);
            Files.writeString(folder.resolve("sign-offs.yaml"), "cellfile: 1\nsign-offs:\n" + String.join("", entries));

            assertThat(cell().signing().signed())
                    .allSatisfy(one -> assertThat(one.status())
                            .isEqualTo(
                                    switch (one.signOff().on().characters()
                                            + one.signOff().words().characters()) {
                                        case "2026-11-17checked", "2026-11-18released for use" -> TOO_EARLY;
                                        case "2026-11-10checked", "2026-11-12approved" -> NOT_ASKED_FOR;
                                        default -> VALID;
                                    }));
        }
    }

    /** Signing more never makes an earlier sign-off worth less, unless somebody may not sign it. */
    @Test
    void oneMoreTakesNothingFromTheOthers() throws IOException {
        List<SignOffStatus> before = statuses();
        Random random = new Random(20261127);
        List<String> covers = List.of("file", "modes", "safeguards");
        List<String> words = List.of("tested", "checked", "approved", "released for use", "taken note");
        for (int round = 0; round < 30; round++) {
            add(
                    covers.get(random.nextInt(covers.size())),
                    words.get(random.nextInt(words.size())),
                    List.of("ilse", "bruno", "corin").get(random.nextInt(3)),
                    "checks",
                    "2026-11-" + (10 + random.nextInt(11)));
            List<SignOffStatus> after = statuses();

            for (int i = 0; i < before.size(); i++) {
                if (before.get(i) != TOO_EARLY) { // which something signed later with an earlier date puts right
                    assertThat(after.get(i)).as("round " + round).isIn(before.get(i), REPEATED);
                }
            }
            before = after;
        }
    }

    /** Whatever is done to the files about signing ends in findings. */
    @Test
    void damageOfAnySortIsTold() throws IOException {
        keep();
        List<Path> files = List.of(
                folder.resolve("sign-offs.yaml"),
                folder.resolve("keys.yaml"),
                folder.resolve(KeptTexts.path(cell().substance())));
        String telling = "{}[]:,-#\"'%/ \t\n0123456789abf=+";
        Random random = new Random(20261127);
        for (int round = 0; round < 200; round++) {
            Path file = files.get(random.nextInt(files.size()));
            String whole = Files.readString(file);
            StringBuilder text = new StringBuilder(whole);
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                int at = random.nextInt(text.length());
                text.replace(at, at + random.nextInt(2), telling.charAt(random.nextInt(telling.length())) + "");
            }
            Files.writeString(file, text);
            assertThat(BaseCell.printed(BaseCell.checkSigned(folder)))
                    .as(folder.relativize(file) + ":\n" + text)
                    .isNotEmpty();
            Files.writeString(file, whole);
        }
    }

    @Test
    void whatIsPrintedTellsWhatIsProven() throws IOException {
        Chapter chapter = Composition.compose(cell()).chapters().stream()
                .filter(one -> one.id().equals("signatures"))
                .findFirst()
                .orElseThrow();
        String printed = chapter.blocks().toString();

        assertThat(printed)
                .contains(
                        "typed, not proven",
                        "proven with key key-bruno",
                        cell().substance().digest(),
                        "sign-off 1")
                .doesNotContain("compliant", "MADE-HERE");
        assertThat(chapter.blocks().stream()
                        .filter(Block.Section.class::isInstance)
                        .map(Block.Section.class::cast)
                        .filter(section -> section.title().equals("To sign in ink"))
                        .flatMap(section -> section.blocks().stream())
                        .map(Block.SignatureLine.class::cast)
                        .map(Block.SignatureLine::words))
                .containsExactly("Handed over");
    }
}
