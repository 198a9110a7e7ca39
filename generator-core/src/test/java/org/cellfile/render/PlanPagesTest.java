package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Label;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.SheetCode;
import org.cellfile.finding.Findings;
import org.cellfile.refusal.BaseCell;
import org.cellfile.verdict.Decision;
import org.cellfile.verdict.Printable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** What is drawn of a plan, in the safety file, on the sheets and as files. The cell is constructed. */
class PlanPagesTest {

    private static final Path PLAN = Path.of("src", "test", "resources", "signed", "plan.yaml");

    @TempDir
    private Path folder;

    @BeforeEach
    void start() throws IOException {
        planned(folder);
    }

    /** The base cell with its plan, a door that turns, and the plan on two of its sheets. */
    static void planned(Path folder) throws IOException {
        BaseCell.copyTo(folder);
        Files.copy(PLAN, folder.resolve("plan.yaml"));
        change(
                folder,
                "plan.yaml",
                "{of: door, line: [[-3300, -1010], [-3300, 1010]]",
                "{of: door, line: [[-3300, -1010], [-3300, 1010]], swing: {hinge: [-3300, 1010], open: [-5320, 1010]}");
        for (String sheet : List.of("emergency", "automatic-operation")) {
            change(
                    folder,
                    "sheets.yaml",
                    "{sheet: " + sheet + ", at: operator panel}",
                    "{sheet: " + sheet + ", at: operator panel, place: panel}");
        }
    }

    private static void change(Path folder, String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    static Dossier dossier(Path folder) {
        return Composition.compose(
                Cell.read(FolderWorld.of(folder), new Findings()).orElseThrow());
    }

    static SortedMap<String, byte[]> files(Dossier dossier) {
        Printable draft = (Printable) Decision.decide(List.of(), List.of(), () -> dossier);
        return ((Rendering.Pages) new Renderer().render(draft, List.of())).files();
    }

    private Map<String, Drawing> drawings() {
        Map<String, Drawing> drawings = new TreeMap<>();
        dossier(folder).chapters().stream()
                .filter(chapter -> chapter.id().equals("plan"))
                .flatMap(chapter -> chapter.blocks().stream())
                .flatMap(block -> block instanceof Block.Section section ? section.blocks().stream() : Stream.of(block))
                .filter(Drawing.class::isInstance)
                .map(Drawing.class::cast)
                .forEach(drawing -> drawings.put((String) drawing.data().get("id"), drawing));
        return drawings;
    }

    private static List<Map<?, ?>> each(Drawing drawing, String key) {
        List<Map<?, ?>> each = new ArrayList<>();
        ((List<?>) Objects.requireNonNull(drawing.data().get(key))).forEach(one -> each.add((Map<?, ?>) one));
        return each;
    }

    private static List<String> values(Drawing drawing, String list, String key) {
        return each(drawing, list).stream()
                .map(one -> String.valueOf(one.get(key)))
                .toList();
    }

    private static List<String> texts(Drawing drawing) {
        return each(drawing, "labels").stream()
                .flatMap(label -> ((List<?>) Objects.requireNonNull(label.get("lines"))).stream())
                .map(line -> String.valueOf(((Map<?, ?>) line).get("text")))
                .toList();
    }

    @Test
    void onePlanShowsTheCellAndOneEachMode() {
        assertThat(drawings()).containsOnlyKeys("plan", "mode-automatic", "mode-manual-reduced-speed");
    }

    @Test
    void everythingOnThePlanIsDrawnAndNamed() {
        Drawing plan = Objects.requireNonNull(drawings().get("plan"));

        assertThat(values(plan, "marks", "kind"))
                .contains("zone", "reach", "structure", "guard", "door", "swing", "line", "floor", "warning");
        assertThat(values(plan, "symbols", "kind"))
                .containsExactlyInAnyOrder(
                        "robot", "controller", "scanner", "emergency-stop", "reset", "place", "way-out");
        assertThat(values(plan, "legend", "kind")).doesNotHaveDuplicates().contains("zone", "distance", "governs");
        List<String> key = values(plan, "key", "lines");
        for (String tag :
                List.of("zone", "robot", "exit-track", "hall-column", "stop-panel", "reset-west", "panel", "gate 1")) {
            assertThat(texts(plan).contains(tag) || key.contains("[" + tag + "]"))
                    .as(tag)
                    .isTrue();
        }
    }

    @Test
    void eachDistanceIsDrawnWithPlanTapeAndWhatIsRequired() {
        Drawing plan = Objects.requireNonNull(drawings().get("plan"));

        assertThat(each(plan, "distances")).hasSize(4);
        assertThat(values(plan, "distances", "governs")).containsOnlyOnce("true");
        assertThat(texts(plan)).contains("curtain", "plan 1300 mm", "tape 1300 mm", "required 931 mm");
        assertThat(plan.alternative())
                .contains("`door` is 600 mm from `zone`, from (-3300, 0) to (-2700, 0); required 468 mm")
                .containsOnlyOnce("this one governs")
                .contains("stop-panel at (-3800, -1600)", "way out gate 1 at (-6000, 0)");
    }

    @Test
    void noTextLiesOnATextOrASymbol() {
        drawings().values().forEach(drawing -> {
            List<BigDecimal[]> boxes = new ArrayList<>();
            each(drawing, "labels").forEach(label -> boxes.add(box(label)));
            BigDecimal half = new BigDecimal("6.5");
            int texts = boxes.size();
            each(drawing, "symbols")
                    .forEach(symbol -> boxes.add(new BigDecimal[] {
                        number(symbol, "x").subtract(half),
                        number(symbol, "y").subtract(half),
                        number(symbol, "x").add(half),
                        number(symbol, "y").add(half)
                    }));
            for (int i = 0; i < boxes.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(meet(boxes.get(i), boxes.get(j)) && (i < texts || j < texts))
                            .as("%s: %d and %d", drawing.data().get("id"), i, j)
                            .isFalse();
                }
            }
        });
    }

    private static BigDecimal[] box(Map<?, ?> label) {
        return new BigDecimal[] {
            number(label, "left"),
            number(label, "top"),
            number(label, "left").add(number(label, "wide")),
            number(label, "top").add(number(label, "high"))
        };
    }

    private static BigDecimal number(Map<?, ?> of, String key) {
        return (BigDecimal) Objects.requireNonNull(of.get(key));
    }

    private static boolean meet(BigDecimal[] one, BigDecimal[] other) {
        return one[0].compareTo(other[2]) < 0
                && other[0].compareTo(one[2]) < 0
                && one[1].compareTo(other[3]) < 0
                && other[1].compareTo(one[3]) < 0;
    }

    @Test
    void whatFindsNoRoomStandsBesideTheDrawingWhichStillFitsOnAPage() throws IOException {
        String many = IntStream.range(0, 80)
                .mapToObj(i -> "    - {tag: cabinet-of-the-drives-" + i + ", name: cabinet, outline: [["
                        + corner(i, 0, 0) + "], [" + corner(i, 150, 0) + "], [" + corner(i, 150, 150)
                        + "]], passable: no, hides: no}\n")
                .collect(Collectors.joining());
        change(folder, "plan.yaml", "  structures:\n", "  structures:\n" + many);
        Drawing plan = Objects.requireNonNull(drawings().get("plan"));

        assertThat((BigDecimal) plan.data().get("height")).isLessThanOrEqualTo(BigDecimal.valueOf(860));
        List<String> key = values(plan, "key", "lines");
        assertThat(key).isNotEmpty();
        for (int i = 0; i < 80; i++) {
            String tag = "cabinet-of-the-drives-" + i;
            assertThat(texts(plan).contains(tag)).as(tag).isNotEqualTo(key.contains("[" + tag + "]"));
        }
    }

    private static String corner(int i, int x, int y) {
        return (-6000 + i % 12 * 200 + x) + ", " + (-6000 + i / 12 * 200 + y);
    }

    @Test
    void whatAScannerDoesNotSeeOfItsFieldIsNotDrawnAsFloorOnWhichSomebodyIsDetected() throws IOException {
        assertThat(values(Objects.requireNonNull(drawings().get("plan")), "marks", "kind"))
                .doesNotContain("not-seen");
        change(
                folder,
                "plan.yaml",
                "  structures:\n",
                "  structures:\n    - {tag: cabinet, name: cabinet, outline: [[3600, -400], [3800, -400], [3800, -200], [3600, -200]],"
                        + " passable: no, hides: yes}\n");
        Drawing plan = Objects.requireNonNull(drawings().get("plan"));
        assertThat(values(plan, "marks", "kind")).contains("not-seen", "floor");
        assertThat(values(plan, "legend", "kind")).contains("not-seen");
    }

    @Test
    void aModeShowsWhatDoesNotAct() {
        Drawing automatic = Objects.requireNonNull(drawings().get("mode-automatic"));
        Drawing manual = Objects.requireNonNull(drawings().get("mode-manual-reduced-speed"));

        assertThat(values(automatic, "marks", "kind")).doesNotContain("suspended-line", "suspended-floor");
        assertThat(values(manual, "marks", "kind"))
                .contains("suspended-line", "suspended-floor", "guard")
                .doesNotContain("line", "floor", "warning", "door");
        assertThat(manual.alternative())
                .contains("Acting: fence. Suspended: curtain, scanner, door.", "enabling device enabling");
        assertThat(each(manual, "distances")).isEmpty();
    }

    @Test
    void thePlansAreFilesOfTheirOwn() throws Exception {
        SortedMap<String, byte[]> files = files(dossier(folder));

        assertThat(files)
                .containsKeys("plans/plan.svg", "plans/mode-automatic.svg", "plans/mode-manual-reduced-speed.svg");
        Document svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(files.get("plans/plan.svg")));
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Plan of the cell, Small cell");
        NodeList texts = svg.getElementsByTagName("text");
        List<String> said = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            said.add(texts.item(i).getTextContent());
        }
        assertThat(said).contains("DRAFT, not released", "required 931 mm", "2000 mm; coordinates in mm");
        assertThat(new String(files.get("plans/plan.svg"), StandardCharsets.UTF_8))
                .doesNotContain("href", "<image", "<style");
    }

    @Test
    void theSameCellIsDrawnInTheSameBytes() {
        SortedMap<String, byte[]> first = files(dossier(folder));
        SortedMap<String, byte[]> second = files(dossier(folder));
        first.forEach((path, bytes) -> assertThat(second.get(path)).as(path).isEqualTo(bytes));
    }

    @Test
    void aSheetShowsWhereItHangs() throws IOException {
        SortedMap<String, byte[]> files = files(dossier(folder));

        for (String sheet : List.of("emergency", "automatic-operation")) {
            try (PDDocument page = Loader.loadPDF(files.get("sheets/" + sheet + "-en.pdf"))) {
                assertThat(page.getNumberOfPages()).isEqualTo(1);
                assertThat(new PDFTextStripper().getText(page))
                        .contains("Where you are", "this sheet", "emergency stop", "gate 1", "hazard zone: keep out");
            }
        }
        assertThat(panels("after-stop")).noneMatch(panel -> panel.id().equals("plan"));
        assertThat(plan("emergency").alternative())
                .isEqualTo("this sheet: operator panel; emergency stop: operator panel; way out: gate 1");
    }

    @Test
    void thePlanStandsBesideTheLastPartsAndHasNoNameWithoutAWord() {
        Drawing plan = plan("emergency");
        assertThat(plan.data().get("width")).isEqualTo(new BigDecimal("168.0"));
        assertThat(texts(plan)).doesNotContain("door");
        assertThat(values(plan, "legend", "kind")).contains("door", "zone", "reader", "way-out", "emergency-stop");
    }

    @Test
    void itSaysSoInEveryLanguageOfTheSheet() throws IOException {
        change(
                folder,
                "sheets.yaml",
                "  posted:",
                "  printed:\n    - {languages: [en]}\n    - {languages: [pl, de]}\n  posted:\n"
                        + "    - {sheet: emergency, languages: [pl, de], at: operator panel, place: panel}");
        Drawing plan = dossier(folder).sheets().stream()
                .filter(sheet -> sheet.file().equals("emergency-pl-de"))
                .flatMap(sheet -> sheet.panels().stream())
                .flatMap(panel -> panel.drawings().stream())
                .findFirst()
                .orElseThrow();
        assertThat(values(plan, "legend", "lines")).contains("[ta karta, dieser Aushang]", "[drzwi, Tür]");
        assertThat(plan.alternative()).startsWith("ta karta / dieser Aushang: operator panel");
    }

    @Test
    void aSheetIsPrintedOnceForEachPlaceAtWhichItHangs() throws IOException {
        change(
                folder,
                "sheets.yaml",
                "  posted:",
                "  posted:\n    - {sheet: emergency, at: post beside the gate, place: gate}");
        change(
                folder,
                "plan.yaml",
                "  places:",
                "  places:\n    - {tag: gate, name: gate, at: [-5900, 300], emergency-stop-within: 3000 mm}");
        List<Sheet> prints = dossier(folder).sheets().stream()
                .filter(sheet -> sheet.id().equals("emergency"))
                .toList();

        assertThat(prints).extracting(Sheet::file).containsExactly("emergency-at-gate-en", "emergency-at-panel-en");
        assertThat(prints)
                .extracting(Sheet::places)
                .containsExactly(List.of(List.of("post beside the gate")), List.of(List.of("operator panel")));
        assertThat(prints)
                .extracting(sheet -> sheet.panels().stream()
                        .flatMap(panel -> panel.drawings().stream())
                        .map(drawing -> drawing.alternative().split(";", -1)[0])
                        .toList())
                .containsExactly(List.of("this sheet: gate"), List.of("this sheet: operator panel"));
        Label label = dossier(folder).label();
        assertThat(prints)
                .extracting(sheet -> SheetCode.of(sheet, label, false).sheet())
                .containsExactly("emergency-at-gate", "emergency-at-panel");
    }

    @Test
    void aSheetThatDoesNotFitWithItsPlanIsToldSo() throws IOException {
        change(
                folder,
                "sheets.yaml",
                "{sheet: manual-reduced-speed, at: operator panel}",
                "{sheet: manual-reduced-speed, at: operator panel, place: panel}");
        Printable draft = (Printable) Decision.decide(List.of(), List.of(), () -> dossier(folder));
        Rendering rendering = new Renderer().render(draft, List.of());

        assertThat(((Rendering.Unprintable) rendering).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.sentence()).contains("`manual-reduced-speed-en` has");
                    assertThat(finding.help()).startsWith("take `place` out of its entry under `posted`");
                    assertThat(finding.because().get(0)).contains("`In an emergency`");
                });
    }

    private List<Sheet.Panel> panels(String sheet) {
        return dossier(folder).sheets().stream()
                .filter(one -> one.id().equals(sheet))
                .findFirst()
                .orElseThrow()
                .panels();
    }

    private Drawing plan(String sheet) {
        return panels(sheet).stream()
                .flatMap(panel -> panel.drawings().stream())
                .findFirst()
                .orElseThrow();
    }
}
