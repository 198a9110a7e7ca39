package org.cellfile.refusal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.ChangeNote;
import org.cellfile.Comparison;
import org.cellfile.Comparison.Source;
import org.cellfile.FolderWorld;
import org.cellfile.compare.Compared;
import org.cellfile.compare.ComparisonJson;
import org.cellfile.compare.ComparisonText;
import org.cellfile.compare.Consequence;
import org.cellfile.compare.Difference;
import org.cellfile.compare.Group;
import org.cellfile.compare.KindOfChange;
import org.cellfile.compare.KindsOfChange;
import org.cellfile.compare.Proof;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder {@code comparisons/<case>} tells how an older and a newer state differ from the base cell, and what is said of both. In
 * {@code older.txt} and {@code newer.txt} each line replaces text: file, what stands there, what is to stand there. With
 * {@code -Dbless} what is said now is written down. All figures are constructed.
 */
class ComparisonTest {

    private static final Path CASES = Path.of("src", "test", "resources", "comparisons");

    /**
     * The matrix, transcribed apart from the kinds of change: what of stop time, distance calculation, installed distance, function tests,
     * configuration checksum, risk assessment and posted sheet each voids. Constructed from the makers' published instructions that
     * {@link KindOfChange} tells of; no single source has it.
     */
    private static final Map<String, List<String>> MATRIX = new LinkedHashMap<>();

    static {
        row("tool", "yes", "yes", "yes (reach)", "affected stops", "tool data", "yes", "if hazard/reach changes");
        row("part", "yes if above measured", "yes", "-", "-", "payload data", "review", "-");
        row("speed", "yes", "yes", "-", "affected", "yes if limit", "review", "if text states speed");
        row("program", "if worst point moves", "if", "-", "manual reduced speed test", "program id", "review", "-");
        row(
                "safety-parameters",
                "as affected",
                "as affected",
                "field size",
                "all affected",
                "new checksum",
                "yes",
                "checksum line");
        row("layout", "-", "yes", "yes", "that device", "scanner fields", "yes", "plan");
        row("safety-program", "-", "response time", "-", "by impact analysis", "new signature", "review", "-");
        row("drive", "yes", "yes", "-", "stops", "yes", "-", "-");
        row("safeguard", "-", "yes", "yes", "that device", "yes", "-", "rod diameter");
        row("edition", "statistic/number of runs", "yes", "compare", "-", "-", "review", "-");
        row("place", "yes", "yes", "yes", "all", "-", "yes", "language");
        row("isolation", "-", "-", "-", "-", "-", "review", "yes");
    }

    @TempDir
    private Path folder;

    private static void row(String kind, String... cells) {
        MATRIX.put(kind, List.of(cells));
    }

    static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.map(CASES::relativize).sorted().toList();
        }
    }

    static List<String> rows() {
        return List.copyOf(MATRIX.keySet());
    }

    static Compared compare(Path older, Path newer) {
        Comparison.Outcome outcome = Comparison.of(source("older", older), source("newer", newer));
        assertThat(outcome).isInstanceOf(Comparison.Told.class);
        return ((Comparison.Told) outcome).compared();
    }

    private static Source source(String which, Path folder) {
        return new Source("the " + which + " folder", "the " + which + " folder", FolderWorld.of(folder), true);
    }

    private Compared compared(String name) throws IOException {
        return compare(state(name, "older"), state(name, "newer"));
    }

    private Path state(String name, String which) throws IOException {
        Path state = BaseCell.copyTo(folder.resolve(which));
        Path edits = CASES.resolve(name).resolve(which + ".txt");
        if (Files.exists(edits)) {
            for (String line : Files.readAllLines(edits)) {
                edit(state, List.of(line.split(" \\| ", -1)));
            }
        }
        return state;
    }

    private static void edit(Path state, List<String> edit) throws IOException {
        List<String> words =
                edit.stream().map(word -> word.replace("\\n", "\n")).toList();
        switch (words.get(0)) {
            case "@file" -> Files.writeString(state.resolve(words.get(1)), words.get(2));
            case "@rename" -> Files.move(state.resolve(words.get(1)), state.resolve(words.get(2)));
            case "@remove" -> {
                String text = Files.readString(state.resolve(words.get(1)));
                int from = text.indexOf(words.get(2));
                int to = text.indexOf(words.get(3), from);
                assertThat(from).isNotNegative();
                Files.writeString(state.resolve(words.get(1)), text.substring(0, from) + text.substring(to));
            }
            default -> BaseCell.change(state, words.get(0), words.get(1), words.get(2));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isTold(Path path) throws IOException {
        Compared compared = compared(path.toString());
        String told = ComparisonText.of(compared);
        Path expected = CASES.resolve(path).resolve(BaseCell.EXPECTED);
        if (System.getProperty("bless") != null) {
            Files.writeString(expected, told);
        }

        assertThat(expected).as("what is told").exists();
        assertThat(told).isEqualTo(Files.readString(expected));
        assertThat(schema().validate(ComparisonJson.of(compared), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void everyRowOfTheMatrixIsAKindOfChange() {
        assertThat(KindsOfChange.all().stream()
                        .filter(KindOfChange::ofTheMachine)
                        .map(KindOfChange::id))
                .containsExactlyInAnyOrderElementsOf(MATRIX.keySet());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void asksWhatTheMatrixAsks(String kind) throws IOException {
        Group group = compared(kind).groups().stream()
                .filter(one -> one.id().equals(kind))
                .findFirst()
                .orElseThrow();

        assertThat(group.consequences().stream()
                        .collect(Collectors.toMap(
                                Consequence::proof, Consequence::asks, (a, b) -> a, () -> new EnumMap<>(Proof.class))))
                .isEqualTo(expected(MATRIX.getOrDefault(kind, List.of())));
    }

    private static Map<Proof, String> expected(List<String> cells) {
        Map<Proof, String> asks = new EnumMap<>(Proof.class);
        Iterator<String> each = cells.iterator();
        for (Proof proof : Proof.values()) {
            String cell = each.next();
            if (!cell.equals("-")) {
                asks.put(proof, cell);
            }
        }
        return asks;
    }

    @Test
    void nothingIsSilentlyLeftOut() throws IOException {
        for (String kind : MATRIX.keySet()) {
            Compared compared = compared(kind);
            assertThat(compared.groups().stream().flatMap(group -> group.differences().stream()))
                    .isNotEmpty()
                    .containsAll(Difference.between(
                            compared.older().cell().statements(),
                            compared.newer().cell().statements()));
        }
    }

    @Test
    void commentsAndLayoutAreNoDifference() throws IOException {
        assertThat(compared("comments-only").same()).isTrue();
    }

    @Test
    void whatWasDoneAgainIsNotOpen() throws IOException {
        Compared done = compared("answered");
        Compared early = compared("tested-before-the-change");

        assertThat(items(done, Proof.STOP_TIME)).allMatch(item -> !item.open());
        assertThat(items(done, Proof.FUNCTION_TESTS)).isNotEmpty().allMatch(item -> !item.open());
        assertThat(items(done, Proof.INSTALLED)).isNotEmpty().allMatch(item -> !item.open());
        assertThat(items(done, Proof.CHECKSUM)).isNotEmpty().allMatch(item -> !item.open());
        assertThat(items(early, Proof.STOP_TIME)).isNotEmpty().allMatch(Consequence.Item::open);
        assertThat(done.unexplained()).isEmpty();
        assertThat(done.explanations().values()).contains(List.of("lighter-gripper"));
    }

    private static List<Consequence.Item> items(Compared compared, Proof proof) {
        return compared.groups().stream()
                .flatMap(group -> group.consequences().stream())
                .filter(one -> one.proof() == proof)
                .flatMap(one -> one.items().stream())
                .toList();
    }

    @Test
    void aSignOffLapsesWithWhatItCovers() throws IOException {
        Path older = state("tool", "older");
        Path newer = state("tool", "newer");
        Compared unsigned = compare(older, newer);
        String whole = unsigned.older().substance().digest();
        String chapter = unsigned.older().substance().digest("safeguards").orElseThrow();
        String signed = "cellfile: 1\n\nsign-offs:\n"
                + "  - {covers: file, digest: " + whole + ", words: tested, by: ilse, role: measures, on: 2026-11-19}\n"
                + "  - {covers: safeguards, digest: " + chapter
                + ", words: checked, by: ilse, role: checks, on: 2026-11-19}\n";
        Files.writeString(older.resolve("sign-offs.yaml"), signed);
        Files.writeString(newer.resolve("sign-offs.yaml"), signed);
        Compared lapsed = compare(older, newer);

        assertThat(lapsed.lapsed()).hasSize(1);
        assertThat(lapsed.lapsed().get(0).words()).isEqualTo("tested");
        assertThat(lapsed.lapsed().get(0).again()).isEmpty();
        assertThat(ComparisonText.of(lapsed)).contains("Sign-offs that lapse", "tested, I. Lorne, 2026-11-19");

        Files.writeString(
                newer.resolve("sign-offs.yaml"),
                signed
                        + "  - {covers: file, digest: "
                        + lapsed.newer().substance().digest()
                        + ", words: tested, by: ilse, role: measures, on: 2026-11-20}\n");
        assertThat(compare(older, newer).lapsed().get(0).again()).contains("2026-11-20");
    }

    @Test
    void aStateThatCannotBeReadIsRefusedWithItsFindings() throws IOException {
        Path older = state("nothing", "older");
        Path newer = state("nothing", "newer");
        Files.writeString(newer.resolve("robots.yaml"), "cellfile: 1\n\nrobots: [\n");
        Comparison.Outcome outcome = Comparison.of(source("older", older), source("newer", newer));

        assertThat(outcome).isInstanceOf(Comparison.Unread.class);
        assertThat(((Comparison.Unread) outcome).source()).isEqualTo("the newer folder");
        assertThat(((Comparison.Unread) outcome).findings()).isNotEmpty();
    }

    @Test
    void theNoteHasTheBytesOfItsStatesAlone() throws IOException {
        Compared compared = compared("tool");

        assertThat(ChangeNote.pdf(compared)).isEqualTo(ChangeNote.pdf(compared));
    }

    private static Schema schema() {
        try (InputStream stream = Comparison.class.getResourceAsStream("/org/cellfile/comparison.schema.json")) {
            String text = new String(Objects.requireNonNull(stream).readAllBytes(), UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
        } catch (IOException failed) {
            throw new IllegalStateException(failed);
        }
    }
}
