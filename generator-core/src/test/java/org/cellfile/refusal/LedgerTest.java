package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.LedgerFile;
import org.cellfile.cell.Cell;
import org.cellfile.dossier.Statement;
import org.cellfile.finding.Finding;
import org.cellfile.subject.ledger.Ledger;
import org.cellfile.trace.Derived;
import org.cellfile.verdict.Verdict;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The ledger of derived values, written and held. All figures are constructed. */
class LedgerTest {

    private static final String LINE =
            "{tag: curtain.separation-distance, value: \"931\", unit: mm, working: \"S = max(S_RT; S_RO) = max(476 mm; 930.8 mm)\"}";

    @TempDir
    private Path folder;

    @BeforeEach
    void copyTheCell() {
        BaseCell.copyTo(folder);
    }

    private LedgerFile.Written derive() throws IOException {
        return LedgerFile.derive(folder, FolderWorld.of(folder));
    }

    private String ledger() throws IOException {
        return Files.readString(folder.resolve(Ledger.FILE));
    }

    private void edit(String from, String to) throws IOException {
        BaseCell.change(folder, Ledger.FILE, from, to);
    }

    private List<String> refused() {
        return BaseCell.ids(BaseCell.check(folder).findings());
    }

    @Test
    void writingItTwiceGivesTheSameBytesAndEveryRunAgreesWithIt() throws IOException {
        assertThat(derive().outcome()).contains("added: 154, changed: 0, dropped: 0");
        String first = ledger();
        assertThat(first).contains(LINE);

        assertThat(derive().outcome()).contains("the ledger holds every derived value already");
        assertThat(ledger()).isEqualTo(first);
        assertThat(refused()).isEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString())).noneMatch(name -> name.startsWith("."));
        }
    }

    @Test
    void everyDerivedValueStandsInItOnceSortedByTag() throws IOException {
        derive();
        Cell cell = new Generator().check(FolderWorld.of(folder)).cell().orElseThrow();

        assertThat(ledger().lines()
                        .filter(line -> line.startsWith("  - "))
                        .map(line -> line.replaceAll(".*tag: ([^,]*),.*", "$1")))
                .containsExactlyElementsOf(
                        cell.derived().keySet().stream().sorted().toList());
    }

    /** Levels, rates, lives, per cent, degrees and inches come back as they were written. */
    @ParameterizedTest
    @ValueSource(strings = {"kettlebrook-palletising", "marrowdale-refit", "stonewick-tending", "farrowmere-kitting"})
    void theExamplesAgreeWithTheirOwn(String example) {
        Cell cell = new Generator()
                .check(FolderWorld.of(Path.of("..", "examples", example, "src", "main", "cell")))
                .cell()
                .orElseThrow();
        Map<String, Derived> derived = cell.derived();

        Ledger ledger = read(Ledger.text(derived.values()));
        assertThat(ledger.held(derived)).isEmpty();
        assertThat(Ledger.change(Optional.of(ledger), derived)).isEqualTo(new Ledger.Change(0, List.of(), List.of()));
    }

    /** A base cell with this ledger. */
    private Ledger read(String text) {
        try {
            Files.writeString(folder.resolve(Ledger.FILE), text);
        } catch (IOException failed) {
            throw new IllegalStateException(failed);
        }
        return new Generator()
                .check(FolderWorld.of(folder))
                .cell()
                .flatMap(Cell::ledger)
                .orElseThrow();
    }

    @Test
    void aChangedNumberIsRefusedWithBothWorkingsAndThenWrittenAnew() throws IOException {
        derive();
        BaseCell.change(
                folder, "safeguards.yaml", "link: light curtain, time: 14 ms", "link: light curtain, time: 18 ms");
        BaseCell.change(
                folder,
                "safeguards.yaml",
                "response-time: 0.238 s, separation-distance: 931 mm",
                "response-time: 0.242 s, separation-distance: 938 mm");

        Verdict verdict = BaseCell.check(folder);
        assertThat(BaseCell.ids(verdict.findings())).hasSize(7).containsOnly("ledger.not-equal");
        assertThat(BaseCell.printed(verdict))
                .contains("the ledger has 931 mm for `curtain.separation-distance`, the derived value is 938 mm")
                .contains("S = max(S_RT; S_RO) = max(476 mm; 930.8 mm) = 931 mm")
                .contains("937.2 mm → 938 mm, up to the next 1 mm");

        assertThat(derive().outcome())
                .contains("added: 0, changed: 7, dropped: 0")
                .contains("changed: curtain.separation-distance: 931 mm → 938 mm");
        assertThat(refused()).isEmpty();
    }

    /** One is wrong against what was stated, the other against what was derived before: both are told. */
    @Test
    void whatWasStatedIsHeldBesides() throws IOException {
        derive();
        BaseCell.change(
                folder, "safeguards.yaml", "link: light curtain, time: 14 ms", "link: light curtain, time: 18 ms");

        assertThat(refused()).contains("claim.not-equal", "ledger.not-equal");
        assertThat(derive().refused()).isTrue();
        assertThat(ledger()).contains(LINE);
    }

    @Test
    void aThingThatIsTakenOutIsDropped() throws IOException {
        derive();
        String clearances = Files.readString(folder.resolve("clearances.yaml"));
        String second = clearances.substring(clearances.indexOf("  - tag")).replace("gap-column", "gap-post");
        Files.writeString(folder.resolve("clearances.yaml"), clearances + second);
        assertThat(refused()).containsExactly("ledger.missing");
        assertThat(derive().outcome()).contains("added: 3, changed: 0, dropped: 0");
        Files.writeString(folder.resolve("clearances.yaml"), clearances);
        assertThat(refused()).containsExactly("ledger.not-derived");
        assertThat(derive().outcome())
                .contains("added: 0, changed: 0, dropped: 3")
                .contains("dropped: gap-post.margin");
        assertThat(refused()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "value: \"931\"                    | value: \"932\"                 | ledger.not-equal",
                "value: \"931\"                    | value: 931.0                   | ledger.not-equal",
                "unit: mm                          | unit: cm                       | ledger.not-equal",
                "tag: curtain.separation-distance  | tag: curtain.margin            | ledger.repeated",
                "tag: curtain.separation-distance  | tag: curtain.distance          | ledger.not-derived",
                "tag: curtain.separation-distance, | ''                             | read.missing-key",
                "value: \"931\",                   | ''                             | read.missing-key",
                "unit: mm,                         | ''                             | read.missing-key",
                "unit: mm                          | unit: ''                       | read.no-value",
                "working: \"S                      | by: ilse, working: \"S         | read.unknown-key",
                "working: \"S                      | working: \"a\\nS               | read.not-one-line",
                "working: \"S                      | working: [a], was: \"S         | read.wrong-sort",
                "value: \"931\"                    | value: \"931\", value: \"930\" | read.duplicate-key"
            })
    void editedByHandItIsRefused(String from, String to, String id) throws IOException {
        derive();
        String edited = LINE.replace(from, to);
        assertThat(edited).isNotEqualTo(LINE);
        edit(LINE, edited);

        assertThat(refused()).contains(id);
    }

    /** How a working is written may change from one version to the next, and in which order lines stand tells nothing. */
    @Test
    void theWordingAndTheOrderAreNotHeld() throws IOException {
        derive();
        String line = "  - " + LINE + "\n";
        edit(line, "");
        Files.writeString(folder.resolve(Ledger.FILE), ledger() + line.replace("working: \"S", "working: \"D"));
        assertThat(ledger()).contains("working: \"D = max");

        assertThat(refused()).isEmpty();
    }

    @Test
    void itIsNoSubstanceAndNobodyStatedIt() throws IOException {
        Generator generator = new Generator();
        String before = generator
                .check(FolderWorld.of(folder))
                .cell()
                .orElseThrow()
                .substance()
                .digest();
        derive();
        Cell cell = generator.check(FolderWorld.of(folder)).cell().orElseThrow();

        assertThat(cell.statements()).extracting(Statement::key).contains("derived");
        assertThat(cell.substance().digest()).isEqualTo(before);
    }

    @Test
    void whatStandsElsewhereIsLeftAlone() throws IOException {
        derive();
        Files.move(folder.resolve(Ledger.FILE), folder.resolve("values.yaml"));

        LedgerFile.Written written = derive();
        assertThat(written.refused()).isTrue();
        assertThat(BaseCell.ids(written.verdict().findings()))
                .filteredOn(id -> !id.startsWith("sign-off."))
                .containsExactly("plan.missing", "ledger.misplaced");
        assertThat(folder.resolve(Ledger.FILE)).doesNotExist();
    }

    @Test
    void whatSomebodyPutBesideItIsNotOverwritten() throws IOException {
        derive();
        Files.writeString(folder.resolve(Ledger.FILE), ledger() + "no-spares: kept here by mistake\n");
        String before = ledger();

        assertThat(derive().verdict().findings()).extracting(Finding::id).isNotEmpty();
        assertThat(ledger()).isEqualTo(before);
    }
}
