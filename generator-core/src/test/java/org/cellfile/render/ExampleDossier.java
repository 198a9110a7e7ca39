package org.cellfile.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Entry;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Line;
import org.cellfile.dossier.Block.Step;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Label;
import org.cellfile.dossier.Logo;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Panel;
import org.cellfile.dossier.Sign;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.verdict.Decision;
import org.cellfile.verdict.Printable;
import org.cellfile.verdict.Verdict;

/** A dossier with every sort of block, made up for the layout alone: none of its figures was computed. All figures are constructed. */
final class ExampleDossier {

    /** Mark-up and template syntax in a free text, to be printed as it stands. */
    static final String HOSTILE = "<script>alert(1)</script> &amp; ${label.cellId} <#if true> [=1] #{2} ]]> \"'";

    private String page = "A4";
    private int bars = 9;
    private boolean released;
    private String releasedBy = "";
    private final List<Chapter> more = new ArrayList<>();
    private final List<Dossier.Due> due = new ArrayList<>(List.of(
            new Dossier.Due("2025-04-30", "2025-03-31", "tape", "calibrate again: steel tape", "certificate 17")));
    private final List<Sheet> sheets = new ArrayList<>();
    private final List<Form> forms = new ArrayList<>(List.of(form("round", true), form("runs", false)));

    ExampleDossier letter() {
        page = "Letter";
        return this;
    }

    /** Nothing bars release, and none was asked for. */
    ExampleDossier releasable() {
        bars = 0;
        return this;
    }

    ExampleDossier barredBy(int count) {
        bars = count;
        return this;
    }

    /** A release was asked for. */
    ExampleDossier released(String by) {
        released = true;
        releasedBy = by;
        return releasable();
    }

    ExampleDossier with(Chapter chapter) {
        more.add(chapter);
        return this;
    }

    ExampleDossier with(Sheet sheet) {
        sheets.add(sheet);
        return this;
    }

    ExampleDossier with(Dossier.Due more) {
        due.add(more);
        return this;
    }

    ExampleDossier with(Form form) {
        forms.add(form);
        return this;
    }

    /** Nothing but one sheet. */
    static Printable of(Sheet sheet) {
        return of(sheet, Logo.NONE);
    }

    /** The same with a logo at its head. */
    static Printable of(Sheet sheet, Logo logo) {
        Dossier dossier = new Dossier(
                label("A4"), "1", List.of(), List.of(sheet), List.of(), List.of(), List.of(), List.of(), logo, "");
        return (Printable) Decision.decide(List.of(), List.of(), () -> dossier);
    }

    private static Label label(String page) {
        return new Label(
                "north-3",
                "Palletising cell North 3",
                "Hall 4, bay C, Lindenau works",
                "Brandmoor Beverages",
                "Ostrava Cell Builders",
                "C",
                "2025-03-14",
                page);
    }

    Printable printable() {
        List<Chapter> chapters = new ArrayList<>(
                List.of(identity(), stopping(), safeguards(), functions(), verification(), registers(), signatures()));
        chapters.addAll(more);
        List<Sheet> posted = new ArrayList<>(List.of(operatorSheet(page)));
        posted.addAll(sheets);
        Dossier dossier = new Dossier(
                label(page), "1", chapters, posted, forms, due, List.of(), List.of(), Logo.NONE, releasedBy);
        Verdict decided = Decision.decide(missing(bars), List.of(), () -> dossier);
        return (Printable) (released ? Decision.release(decided) : decided);
    }

    static List<Finding> missing(int count) {
        List<Finding> missing = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            missing.add(Finding.barsRelease(
                    new FindingId("test.overdue"),
                    "door-west",
                    new Span(SourceFile.unread("protocols/door-west.yaml"), 10 + i, 5, 4),
                    "the function test of `door-west` no. " + i + " was due on 2025-02-0" + (i % 9 + 1)
                            + " and no later result is recorded",
                    i % 2 == 0 ? "" : "record the result of a test made since, with the name of who made it"));
        }
        return missing;
    }

    private static Chapter identity() {
        return new Chapter(
                "identity",
                "Identification and limits",
                List.of(
                        new Block.Paragraph(
                                "The cell takes filled crates from two conveyors and stacks them on pallets."
                                        + " A six-axis arm with a vacuum tool works inside a fixed fence with one door and one"
                                        + " opening for pallets. " + HOSTILE),
                        new Block.Facts(List.of(
                                new Fact("Robot", "arm R1, reach 2650 mm, payload 120 kg", "type plate, photograph 3"),
                                new Fact("Controller", "cabinet +A2, safety program 7F3C-19D2"),
                                new Fact("Tool", "vacuum tool T4, 38 kg"),
                                new Fact(
                                        "Greatest speed used",
                                        "1750 mm/s in automatic, 250 mm/s in manual with reduced speed"),
                                new Fact(
                                        "Restricted space",
                                        "outline `restricted`, 3.10 m by 4.45 m",
                                        "plan.yaml:12:3"))),
                        new Block.Section(
                                "",
                                "Intended use",
                                List.of(
                                        new Block.Paragraph(
                                                "Stacking of closed crates up to 25 kg on pallets of 1200 mm by"
                                                        + " 800 mm. Two people of the shift clear jams and change slip sheets."),
                                        new Block.Points(List.of(
                                                "operated by trained staff of the plant",
                                                "entered through `door-west` only, with the mode selector on manual and the"
                                                        + " key taken along, by one person at a time who has told the others",
                                                "not for loads that hang or swing")))),
                        new Block.Section(
                                "",
                                "Foreseeable misuse",
                                List.of(new Block.Points(List.of(
                                        "reaching through the pallet opening while a pallet stands in it",
                                        "holding the door interlock closed with a spare actuator"))))));
    }

    private static Chapter stopping() {
        List<List<String>> runs = new ArrayList<>();
        for (int i = 1; i <= 60; i++) {
            runs.add(List.of(
                    String.valueOf(i),
                    "automatic, axis 1, 100 % speed, 38 kg tool and 25 kg load",
                    "0." + (300 + i % 13),
                    String.valueOf(410 + i * 7 % 31),
                    i % 7 == 0 ? "warm, brake applied twice before" : "warm"));
        }
        List<BigDecimal> points = new ArrayList<>();
        for (int i = 1; i <= 10; i++) {
            points.add(new BigDecimal("0." + (300 + i * 5 % 13)));
        }
        return new Chapter(
                "stopping",
                "Stopping times and distances",
                List.of(
                        new Block.Section(
                                "stop-auto-1",
                                "Automatic, axis 1, tool and load",
                                List.of(
                                        new Block.Facts(List.of(
                                                new Fact("Measured by", "H. Lindqvist (invented), 2025-02-20"),
                                                new Fact(
                                                        "Instrument",
                                                        "encoder set no. 7",
                                                        "calibrated until 2026-01-31"))),
                                        new Block.Drawing(
                                                "drawings/stop-runs.svg.ftl",
                                                "Ten runs of `stop-auto-1` and the values made from them",
                                                "Dot plot of ten stopping times between 0.300 s and 0.312 s; the carried"
                                                        + " value is 0.318 s",
                                                Map.of(
                                                        "unit",
                                                        "s",
                                                        "title",
                                                        "stop-auto-1: stopping time",
                                                        "runs",
                                                        points,
                                                        "mean",
                                                        new BigDecimal("0.3058"),
                                                        "highest",
                                                        new BigDecimal("0.312"),
                                                        "meanPlus3s",
                                                        new BigDecimal("0.3177"),
                                                        "carried",
                                                        new BigDecimal("0.318"))),
                                        working(
                                                "stop-auto-1.stopping-time",
                                                "Stopping time carried on",
                                                "T",
                                                List.of()),
                                        new Block.Table(
                                                "All runs under this condition",
                                                List.of(
                                                        Column.figures("Run", 1),
                                                        Column.text("Condition", 5),
                                                        Column.figures("Stopping time in s", 2),
                                                        Column.figures("Stopping distance in mm", 2),
                                                        Column.text("State", 3)),
                                                runs))),
                        new Block.Section(
                                "stop-manual-1",
                                "Manual, reduced speed",
                                List.of(new Block.Table(
                                        "Runs",
                                        List.of(Column.figures("Run", 1), Column.text("State", 3)),
                                        List.of())))));
    }

    private static Block.Working working(String tag, String name, String symbol, List<String> from) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("K", "1600 mm/s", "approach speed of the body", "ISO 0000:2010, cl. n (from memory)"));
        steps.add(new Step(
                "T",
                "0.318 s",
                "overall system stopping performance",
                from.isEmpty() ? "stop-times.yaml:17:9" : from.get(0)));
        steps.add(new Step("C", "850 mm", "intrusion distance", "safeguards.yaml:41:12"));
        return new Block.Working(
                tag,
                name,
                symbol,
                "K · T + C",
                "1600 mm/s · 0.318 s + 850 mm",
                "1358.8 mm",
                "1359 mm, up to the next 1 mm",
                "ISO 0000:2010, cl. n",
                steps,
                List.of(
                        "K = 2000 mm/s gives 500 mm or less: not taken, because the result is greater than 500 mm",
                        "C is the greater of 850 mm and the value for reaching over, 620 mm; 850 mm governs"),
                "recomputed, agrees with the recorded value 1359 mm");
    }

    private static Block.Drawing elevation(String kind, Map<String, Object> data) {
        return new Block.Drawing(
                "kinds/" + kind + "/elevation.svg.ftl",
                "Side view of `" + data.get("tag") + "`",
                "Side view: the safeguard stands in front of the hazard zone at the distances given in the text",
                data);
    }

    private static Chapter safeguards() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph("Each safeguard with the distance it needs and the distance it has."));
        blocks.add(new Block.Section(
                "curtain-north",
                "Light curtain at the pallet opening",
                List.of(
                        elevation(
                                "light-curtain",
                                Map.of(
                                        "tag",
                                        "curtain-north",
                                        "zone",
                                        "zone-stack",
                                        "required",
                                        new BigDecimal("1359"),
                                        "installed",
                                        new BigDecimal("1420"),
                                        "zoneLowest",
                                        new BigDecimal("150"),
                                        "zoneHighest",
                                        new BigDecimal("1900"),
                                        "lowerEdge",
                                        new BigDecimal("300"),
                                        "upperEdge",
                                        new BigDecimal("1500"))),
                        working(
                                "curtain-north.separation-distance",
                                "Least distance of the curtain from the hazard zone",
                                "S",
                                List.of("stop-auto-1.stopping-time")),
                        working("curtain-north.intrusion", "Intrusion distance", "C", List.of()),
                        new Block.Box(
                                Tone.CAUTION,
                                "A pallet in the opening mutes the curtain",
                                List.of(new Block.Paragraph(
                                        "While a pallet passes, a person could ride in on it. The opening is no wider than"
                                                + " the pallet plus 200 mm."))))));
        blocks.add(new Block.Section(
                "scanner-south",
                "Laser scanner at the slip sheet station",
                List.of(
                        elevation(
                                "laser-scanner",
                                Map.of(
                                        "tag",
                                        "scanner-south",
                                        "zone",
                                        "zone-sheet",
                                        "required",
                                        new BigDecimal("2340"),
                                        "installed",
                                        new BigDecimal("2200"),
                                        "zoneHighest",
                                        new BigDecimal("2100"),
                                        "fieldHeight",
                                        new BigDecimal("300"))),
                        working("scanner-south.separation-distance", "Least depth of the field", "S", List.of()),
                        new Block.Box(
                                Tone.DEVIATION,
                                "The field is 140 mm short of the required depth",
                                List.of(
                                        new Block.Paragraph("Reason: the walkway behind leaves no more room."),
                                        new Block.Facts(List.of(
                                                new Fact("Interim measure", "barrier across the walkway"),
                                                new Fact("Responsible", "plant engineer M. Okafor (invented)"),
                                                new Fact("Ends", "2025-06-30"))))))));
        blocks.add(new Block.Section(
                "door-west",
                "Door",
                List.of(
                        elevation(
                                "interlocked-door",
                                Map.of(
                                        "tag",
                                        "door-west",
                                        "zone",
                                        "zone-stack",
                                        "required",
                                        new BigDecimal("509"),
                                        "installed",
                                        new BigDecimal("900"),
                                        "zoneLowest",
                                        new BigDecimal("0"),
                                        "zoneHighest",
                                        new BigDecimal("1900"),
                                        "opening",
                                        new BigDecimal("12"))),
                        working("door-west.separation-distance", "Least distance of the door", "S", List.of()),
                        new Block.Box(
                                Tone.NOTE,
                                "No guard locking",
                                List.of(new Block.Paragraph(
                                        "The distance alone is enough, so the door is not locked."))))));
        blocks.add(new Block.Section(
                "fence-east",
                "Fence",
                List.of(
                        elevation(
                                "fixed-fence",
                                Map.of(
                                        "tag",
                                        "fence-east",
                                        "zone",
                                        "zone-conveyor-transfer-station-number-two-upper-level",
                                        "required",
                                        new BigDecimal("120"),
                                        "installed",
                                        new BigDecimal("6000"),
                                        "zoneLowest",
                                        new BigDecimal("1000"),
                                        "zoneHighest",
                                        new BigDecimal("1010"),
                                        "height",
                                        new BigDecimal("2000"),
                                        "gapBelow",
                                        new BigDecimal("180"))),
                        working("fence-east.reach-over", "Least distance for reaching over", "c", List.of()),
                        working("fence-east.reach-under", "Least distance for reaching under", "c", List.of()),
                        new Block.Section(
                                "",
                                "Openings of the mesh",
                                List.of(working(
                                        "fence-east.reach-through",
                                        "Least distance for reaching through, for the square openings of the mesh and for the"
                                                + " slots at the posts",
                                        "s_r",
                                        List.of()))))));
        return new Chapter("safeguards", "Safeguards and their distances", blocks);
    }

    private static Map<String, Object> levelBar(String tag, String place, boolean fallsShort) {
        return Map.of(
                "tag",
                tag,
                "place",
                new BigDecimal(place),
                "bound",
                new BigDecimal("-6"),
                "frequency",
                "2e-8",
                "reached",
                "d",
                "required",
                "d",
                "short",
                fallsShort);
    }

    private static Map<String, Object> stage(String place, List<?> channels, List<?> equipment) {
        return Map.of(
                "place", place,
                "tag", "unit-" + place,
                "figures", List.of("category 2"),
                "channels", channels,
                "equipment", equipment);
    }

    private static Chapter functions() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Drawing(
                "drawings/function-levels.svg.ftl",
                "Levels of two functions",
                "Bars: sf-1 2e-8 in an hour, sf-2 2e-6 in an hour",
                Map.of(
                        "ranges",
                        List.of(
                                Map.of("letter", "e", "upTo", new BigDecimal("-7")),
                                Map.of("letter", "d", "upTo", new BigDecimal("-6"))),
                        "bars",
                        List.of(levelBar("sf-1", "-7.7", false), levelBar("sf-2", "-5.7", true)))));
        List<Map<String, Object>> boxes = List.of(Map.of("tag", "K1", "figures", List.of("MTTF_D 30 years")));
        blocks.add(new Block.Drawing(
                "drawings/function-chain.svg.ftl",
                "Chain of sf-1",
                "Block diagram: K1 tested by K1, then K1 twice",
                Map.of(
                        "stages",
                        List.of(
                                stage("input", List.of(boxes), boxes),
                                stage("logic", List.of(), List.of()),
                                stage("output", List.of(boxes, boxes), List.of())))));
        for (int i = 1; i <= 5; i++) {
            blocks.add(new Block.Section(
                    "sf-" + i,
                    "Safety function " + i,
                    List.of(
                            new Block.Table(
                                    "Parts in channels",
                                    List.of(
                                            Column.text("Part", 3),
                                            Column.text("Role", 3),
                                            Column.figures("PFH in 1/h", 2),
                                            Column.text("Evidence", 4)),
                                    List.of(
                                            List.of("B1", "input", "1.2e-8", "certificate 14"),
                                            List.of("K1", "logic", "2.31e-9", "certificate 15, appendix B, sheet 3"),
                                            List.of(
                                                    "Q1/Q2",
                                                    "output",
                                                    "4.0e-8",
                                                    "averyveryverylongwordwithoutanyplacetobreakitthatmustnotrunoutofthecolumn"))),
                            working("sf-" + i + ".pfh", "Failure rate of the function", "PFH", List.of()),
                            new Block.Working(
                                    "sf-" + i + ".response",
                                    "Response time",
                                    "t_total",
                                    "t_1 + t_2 + t_3",
                                    "",
                                    "",
                                    "",
                                    "",
                                    List.of(new Step("t_1", "", "reaction of the input", "not stated")),
                                    List.of(),
                                    ""))));
        }
        return new Chapter("functions", "Safety functions", blocks);
    }

    private static Chapter verification() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 45; i++) {
            rows.add(List.of(
                    "test-" + i,
                    "Interrupt the device at three heights and see that the stop indication stays on, then release it and"
                            + " see that nothing restarts by itself",
                    "12 months",
                    "2025-0" + (i % 9 + 1) + "-15",
                    i % 5 == 0 ? "" : "passed"));
        }
        return new Chapter(
                "verification",
                "Verification",
                List.of(new Block.Table(
                        "Function tests and when they are due",
                        List.of(
                                Column.text("Test", 2),
                                Column.text("What is done", 6),
                                Column.text("Interval", 2),
                                Column.text("Due", 2),
                                Column.text("Last result", 2)),
                        rows)));
    }

    private static Chapter registers() {
        return new Chapter("registers", "Registers", List.of(new Block.Paragraph("No bypass is open.")));
    }

    private static Chapter signatures() {
        return new Chapter(
                "signatures",
                "Signatures",
                List.of(
                        new Block.Paragraph("Signed in ink after the pages above have been read."),
                        new Block.SignatureLine("Measured", "measurer"),
                        new Block.SignatureLine("Checked", "a second person who did not measure"),
                        new Block.SignatureLine("Accepted for the plant", "plant engineer")));
    }

    private static Form form(String id, boolean wide) {
        List<List<Entry>> rows = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            rows.add(List.of(
                    Entry.printed("lamp-" + i + "\nLamp of the place where nobody stands"),
                    Entry.room(),
                    new Entry("Diameter", "mm", List.of()),
                    Entry.tick("as it has to be", "otherwise")));
        }
        return new Form(
                id,
                "Round of the lamps, " + id,
                wide,
                List.of(
                        new Block.Paragraph("Each lamp is looked at from outside. " + HOSTILE),
                        new Block.Section(
                                "round-1",
                                "This round",
                                List.of(new Block.WriteInLines(List.of(
                                        new Line("Date and time", Entry.room()),
                                        new Line("Occasion", Entry.tick("first", "again")),
                                        new Line("Lamps", Entry.printed("all")))))),
                        new Block.WriteInTable(
                                "Lamps of north-3",
                                List.of(
                                        Column.text("Lamp", 3),
                                        Column.text("Seen", 4),
                                        Column.figures("Reading", 2),
                                        Column.text("Result", 3)),
                                rows),
                        new Block.WriteInTable("", List.of(Column.text("Remarks", 1)), List.of(List.of(Entry.room()))),
                        new Block.SignatureLine("Looked at", "who went round")));
    }

    private static Sheet operatorSheet(String paper) {
        return new Sheet(
                "operator",
                List.of("en"),
                "",
                paper,
                List.of("Palletising cell: start of shift"),
                List.of(List.of("at the operator panel beside door-west")),
                List.of(),
                List.of(
                        panel(
                                Sheet.Kind.HAZARD,
                                "The robot can start at any moment",
                                false,
                                "It reaches the whole inside of the fence and hits without warning."),
                        panel(
                                Sheet.Kind.PROHIBITION,
                                "Never",
                                false,
                                "Never reach over, under or around the curtain.",
                                "Never hold the interlock closed with a spare actuator."),
                        panel(
                                Sheet.Kind.ACTION,
                                "Before the first cycle",
                                true,
                                "Move the test rod down in front of the curtain; the red lamp stays on.",
                                "Open door-west; every movement stops.",
                                "Walk along the fence; every panel hangs in its fixings."),
                        panel(
                                Sheet.Kind.EMERGENCY,
                                "If something is wrong",
                                true,
                                "Press the nearest emergency stop.",
                                "Call the shift leader. Do not restart."),
                        panel(Sheet.Kind.INFORMATION, "Modes", false, "Automatic: door closed, key in the cabinet.")),
                List.of(new Fact("Answers for this sheet", "plant engineer"), new Fact("Revision", "C")),
                List.of(new Fact("Safety program", "7F3C-19D2", "compare with the display of cabinet +A2")),
                List.of(new Fact("Valid until", "2025-06-30"), new Fact("As of", "2025-03-14")),
                "2025-06-30",
                FRAME);
    }

    static Panel panel(Sheet.Kind kind, String title, boolean numbered, String... lines) {
        return new Panel(
                "part",
                kind,
                List.of(title),
                numbered,
                Arrays.stream(lines).map(List::of).toList());
    }

    /** The fixed words around a sheet; constructed. */
    private static final Map<String, String> WORDS = Map.of(
            "sheet.place",
            "Posting place",
            "sheet.draft",
            "DRAFT: do not post",
            "sheet.digest",
            "Short digest",
            "sign.hazard",
            "Warning sign",
            "sign.prohibition",
            "Prohibition sign",
            "sign.action",
            "Mandatory sign",
            "sign.information",
            "Information",
            "sign.emergency",
            "Emergency sign");

    /** The same with what each plain sign says. */
    static final Map<String, String> FRAME = frame();

    private static Map<String, String> frame() {
        Map<String, String> frame = new HashMap<>(WORDS);
        for (Sheet.Kind kind : Sheet.Kind.values()) {
            frame.put("meaning." + Sign.of(kind).id(), "Meaning");
        }
        return Map.copyOf(frame);
    }
}
