package org.cellfile.subject.sheet;

import java.util.List;
import java.util.Optional;
import org.cellfile.subject.sheet.Part.Line;

/**
 * What in a step of the plant's own goes against a sheet on which no mode counts. After an emergency stop nothing is set going. While
 * energies are isolated nothing is unlocked, energised or set going before everybody is out, and nobody goes in before it was seen
 * that none is left: the sequence of 29 CFR 1910.147(d) and (e) (published: the text of the regulation in a reprint).
 */
final class Standstill {

    /** A sentence that goes against the sheet, with what to do about it. */
    record Against(String sentence, String help) {}

    private static final String OUT = "out";

    private static final String SEEN =
            "before the step `start` of the part `verify`, by which one sees that no energy is left";

    private static final String LAST =
            "write it into the part `restore`, behind the derived steps, where everybody is out and was told";

    private Standstill() {}

    static Optional<Against> against(
            SheetSort sort, String sentence, Part part, List<Line> ahead, List<Line> behind, Wording wording) {
        return switch (sort.id()) {
            case Emergency.ID ->
                Contradictions.said(sentence, "starting", wording)
                        .map(word -> new Against(
                                "`" + word
                                        + "` in this step sets the cell going in an emergency, in which it stays stopped",
                                "take the step off the sheet; who may start again is told by the derived steps"));
            case EnergyIsolation.ID ->
                IsolationWords.said(sentence, IsolationWords.UNLOCKING, wording)
                        .flatMap(word -> unlocking(word, part, behind))
                        .or(() -> Contradictions.said(sentence, "starting", wording)
                                .or(() -> IsolationWords.said(sentence, IsolationWords.ENERGISING, wording))
                                .flatMap(word -> energising(word, part, behind)))
                        .or(() -> Contradictions.said(sentence, "entering", wording)
                                .flatMap(word -> entering(word, part, ahead, behind)));
            default -> Optional.empty();
        };
    }

    private static Optional<Against> unlocking(String word, Part part, List<Line> behind) {
        String what = "`" + word + "` in this step takes off a lock ";
        String help = "write it into the part `restore`, behind the step `out`";
        if (!part.id().equals(EnergyIsolation.RESTORE)) {
            return Optional.of(new Against(what + "while somebody relies on it", help));
        }
        return has(behind, OUT)
                ? Optional.of(
                        new Against(what + "before the step `out`, by which one sees that everybody is out", help))
                : Optional.empty();
    }

    private static Optional<Against> energising(String word, Part part, List<Line> behind) {
        String what = "`" + word + "` in this step gives energy or sets the cell going ";
        if (!part.id().equals(EnergyIsolation.RESTORE)) {
            return Optional.of(new Against(what + (verified(part, behind) ? "where work begins" : SEEN), LAST));
        }
        return behind.stream()
                .map(Line::id)
                .filter(id -> !id.isEmpty())
                .findFirst()
                .map(id -> new Against(what + "before the step `" + id + "`", LAST));
    }

    private static Optional<Against> entering(String word, Part part, List<Line> ahead, List<Line> behind) {
        String what = "`" + word + "` in this step brings somebody inside ";
        if (part.id().equals(EnergyIsolation.RESTORE)) {
            return has(ahead, OUT)
                    ? Optional.of(new Against(
                            what + "after the step `out`, by which one saw that everybody is out",
                            "write it before that step"))
                    : Optional.empty();
        }
        return verified(part, behind)
                ? Optional.empty()
                : Optional.of(new Against(
                        what + SEEN,
                        "write it into the part `verify`, behind the derived steps; what has to be done inside to isolate an"
                                + " energy is told with that energy, under `energies`"));
    }

    /** True when it was seen before that no energy is left. */
    private static boolean verified(Part part, List<Line> behind) {
        return part.id().equals(EnergyIsolation.VERIFY) && !has(behind, EnergyIsolation.START);
    }

    private static boolean has(List<Line> lines, String id) {
        return lines.stream().anyMatch(line -> line.id().equals(id));
    }
}
