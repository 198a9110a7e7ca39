package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Nearest;
import org.cellfile.subject.sheet.Part.Line;
import org.cellfile.subject.sheet.Sheets.OwnStep;

/**
 * The steps of the plant's own among those derived from the cell. The derived ones keep their order and their words; an own step
 * stands behind them, or before the one it names.
 */
final class OwnSteps {

    /** An own step belongs to a part its sheet does not have, or stands before a step that part does not have. */
    static final FindingId NO_PLACE = new FindingId("sheet.step-without-place");

    private OwnSteps() {}

    static List<Part> in(SheetSort sort, PostedCell cell, Wording wording, Findings findings) {
        String sheet = sort.id();
        List<Part> parts = SignalWords.in(sort.parts(cell, wording), cell, wording);
        List<Part> longer = new ArrayList<>(parts);
        for (OwnStep step : cell.sheets().steps()) {
            if (step.sheet().characters().equals(sheet)
                    && step.part().value().isPresent()
                    && step.words().value().isPresent()) {
                place(step, sort, longer, cell, wording, findings);
            }
        }
        return longer;
    }

    private static void place(
            OwnStep step, SheetSort sort, List<Part> parts, PostedCell cell, Wording wording, Findings findings) {
        List<String> ids = parts.stream().map(Part::id).toList();
        int part = ids.indexOf(step.part().characters());
        if (part < 0) {
            findings.add(Finding.refuses(
                    NO_PLACE,
                    "",
                    step.part().where(),
                    "the sheet `" + step.sheet().characters() + "` has no part `"
                            + step.part().characters() + "`",
                    "parts it has: " + Nearest.listed(step.part().characters(), ids)));
            return;
        }
        List<Line> lines = new ArrayList<>(parts.get(part).lines());
        int at = lines.size();
        if (step.before().value().isPresent()) {
            List<String> steps =
                    lines.stream().map(Line::id).filter(id -> !id.isEmpty()).collect(Collectors.toList());
            at = IntStream.range(0, lines.size())
                    .filter(line -> lines.get(line).id().equals(step.before().characters()))
                    .findFirst()
                    .orElse(-1);
            if (at < 0) {
                findings.add(Finding.refuses(
                        NO_PLACE,
                        "",
                        step.before().where(),
                        "the part `" + step.part().characters() + "` of the sheet `"
                                + step.sheet().characters() + "` has no step `"
                                + step.before().characters() + "` of this cell",
                        "steps it has: " + Nearest.listed(step.before().characters(), steps)));
                return;
            }
        }
        Part was = parts.get(part);
        String told = NamedDevices.told(step.words(), cell, wording, findings);
        new Contradictions(sort, cell, findings)
                .hold(
                        wording.stated(step.words()),
                        was,
                        List.copyOf(lines.subList(0, at)),
                        List.copyOf(lines.subList(at, lines.size())),
                        wording);
        lines.add(at, new Line("", told));
        parts.set(part, was.with(lines));
    }
}
