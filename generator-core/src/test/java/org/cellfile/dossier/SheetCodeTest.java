package org.cellfile.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sheet.Panel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the code of a sheet says, and what of a sheet it depends on. Everything is constructed. */
class SheetCodeTest {

    private static final Label LABEL =
            new Label("weir-2", "Weir cell 2", "hall 1", "Tarn Works", "Loom", "C; 2", "2026-03-14", "A4");

    private static final Panel START =
            new Panel("start", Kind.ACTION, List.of("Starting"), true, List.of(List.of("Look."), List.of("Press.")));
    private static final Panel NEVER =
            new Panel("never", Kind.PROHIBITION, List.of("Never"), false, List.of(List.of("Never reach over it.")));

    private static Sheet sheet(String title, List<Panel> panels, String revision, String until) {
        return new Sheet(
                "after-stop",
                List.of("de", "pl"),
                "",
                "A4",
                List.of(title),
                List.of(List.of("west door")),
                List.of(),
                panels,
                List.of(new Fact("Revision", revision)),
                List.of(new Fact("robot-1", "1A2B")),
                List.of(new Fact("Valid until", until)),
                until,
                Map.of());
    }

    private static final Sheet SHEET = sheet("After a stop", List.of(START, NEVER), "C", "2026-09-01");

    @Test
    void whatIsPrintedIsReadAgain() {
        SheetCode code = SheetCode.of(SHEET, LABEL, false);

        assertThat(code.text())
                .matches(
                        "cellfile sheet 1; weir-2; after-stop; de pl; revision C; 2; as of 2026-03-14; until 2026-09-01;"
                                + " released; [0-9a-f]{12}; [0-9a-f]{4}( [0-9a-f]{4}){3}");
        assertThat(SheetCode.read(code.text())).contains(code);
        assertThat(SheetCode.read("  " + code.text().replace("; ", ";\n ") + "\n"))
                .as("lines broken on the way")
                .contains(code);
        SheetCode draft = SheetCode.of(sheet("After a stop", List.of(START), "C", ""), LABEL, true);
        assertThat(draft.text()).contains("; until none; draft; ");
        assertThat(SheetCode.read(draft.text())).contains(draft);
    }

    @Test
    void aLongRevisionIsCut() {
        Label label = new Label("weir-2", "Weir cell 2", "", "", "", "x".repeat(300) + "\n", "2026-03-14", "A4");
        SheetCode code = SheetCode.of(SHEET, label, true);

        assertThat(code.revision()).isEqualTo("x".repeat(40));
        assertThat(SheetCode.read(code.text())).contains(code);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "weir-2",
                "cellfile sheet 2; weir-2; after-stop; de; revision C; as of 2026-03-14; until none; draft; 0123456789ab; 0123",
                "cellfile sheet 1; weir-2; after-stop; de; revision C; as of 2026-03-14; until 2026-02-30; draft; 0123456789ab; 0123",
                "cellfile sheet 1; weir-2; after-stop; de; revision C; as of 2026-13-14; until none; draft; 0123456789ab; 0123",
                "cellfile sheet 1; weir-2; after-stop; de; revision C; as of 2026-03-14; until none; new; 0123456789ab; 0123",
                "cellfile sheet 1; weir-2; after-stop; de; revision C; as of 2026-03-14; until none; draft; 0123456789; 0123",
                "cellfile sheet 1; weir-2; after-stop; de; revision C; as of 2026-03-14; until none; draft; 0123456789ab"
            })
    void anyOtherTextIsNone(String text) {
        assertThat(SheetCode.read(text)).isEmpty();
        assertThat(SheetCode.typed(text)).isEmpty();
    }

    @Test
    void noLengthIsTooMuch() {
        String text = SheetCode.of(SHEET, LABEL, false).text();

        assertThat(SheetCode.read(text + " 0123".repeat(100_000))).isEmpty();
        assertThat(SheetCode.typed("0123 ".repeat(100_000))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0a1b2c3d4e5f", "0a1b 2c3d 4e5f", "0A1B-2C3D-4E5F", " 0a1b2c3d4e5f\n"})
    void aShortDigestIsTypedAsPeopleDo(String typed) {
        assertThat(SheetCode.typed(typed)).contains("0a1b2c3d4e5f");
        assertThat(SheetCode.grouped("0a1b2c3d4e5f")).isEqualTo("0a1b 2c3d 4e5f");
    }

    @Test
    void daysAndTheMarkOfADraftAreNothingThatASheetSays() {
        Label later = new Label("weir-2", "Weir cell 2", "", "", "", "C; 2", "2026-05-01", "A4");
        SheetCode code = SheetCode.of(SHEET, LABEL, false);
        SheetCode other = SheetCode.of(sheet("After a stop", List.of(START, NEVER), "C", "2027-01-01"), later, true);

        assertThat(other.digest()).isEqualTo(code.digest());
        assertThat(other.parts()).isEqualTo(code.parts());
    }

    @Test
    void eachPartHasDigitsOfItsOwn() {
        List<String> parts = SheetCode.of(SHEET, LABEL, false).parts();
        Panel press = new Panel("start", Kind.ACTION, List.of("Starting"), true, List.of(List.of("Look."), List.of()));

        assertThat(differing(parts, sheet("After any stop", List.of(START, NEVER), "C", "")))
                .containsExactly(0);
        assertThat(differing(parts, sheet("After a stop", List.of(press, NEVER), "C", "")))
                .containsExactly(1);
        assertThat(differing(parts, sheet("After a stop", List.of(START, NEVER), "D", "")))
                .containsExactly(3);
    }

    /** Where it hangs and what was marked on it belong to the head, what is to be compared at the machine to the foot. */
    @Test
    void placesMarksAndDisplaysCount() {
        List<String> parts = SheetCode.of(SHEET, LABEL, false).parts();

        assertThat(differing(parts, with(List.of(List.of("east door")), SHEET.marks(), SHEET.displays())))
                .containsExactly(0);
        assertThat(differing(parts, with(SHEET.places(), List.of(List.of("Not reviewed.")), SHEET.displays())))
                .containsExactly(0);
        assertThat(differing(parts, with(SHEET.places(), SHEET.marks(), List.of(new Fact("robot-1", "1A2C")))))
                .containsExactly(3);
    }

    private static Sheet with(List<List<String>> places, List<List<String>> marks, List<Fact> displays) {
        return new Sheet(
                SHEET.id(),
                SHEET.languages(),
                "",
                SHEET.paper(),
                SHEET.title(),
                places,
                marks,
                SHEET.panels(),
                SHEET.foot(),
                displays,
                SHEET.dates(),
                SHEET.validUntil(),
                SHEET.frame());
    }

    private static List<Integer> differing(List<String> parts, Sheet other) {
        List<String> now = SheetCode.of(other, LABEL, false).parts();
        assertThat(SheetCode.digest(other, LABEL)).isNotEqualTo(SheetCode.digest(SHEET, LABEL));
        return java.util.stream.IntStream.range(0, parts.size())
                .filter(i -> !parts.get(i).equals(now.get(i)))
                .boxed()
                .toList();
    }

    @Test
    void whichCellItIsCounts() {
        Label renamed = new Label("weir-2", "Weir cell two", "", "", "", "C; 2", "2026-03-14", "A4");

        assertThat(SheetCode.digest(SHEET, renamed)).isNotEqualTo(SheetCode.digest(SHEET, LABEL));
    }
}
