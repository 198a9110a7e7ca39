package org.cellfile.subject.sheet;

import java.util.List;
import org.cellfile.dossier.Sheet.Kind;

/**
 * The signal word before the title of a hazard, where the plant asks for signal words. Their meaning is that of ANSI Z535.4 (from
 * memory): WARNING where death or a serious injury can follow, CAUTION where a lesser one can. DANGER, where one will follow, is
 * never said: nothing a cell states tells that.
 */
final class SignalWords {

    private static final String SERIOUS = "S2";

    private SignalWords() {}

    static List<Part> in(List<Part> parts, PostedCell cell, Wording wording) {
        if (cell.sheets().signalWords().value().filter("yes"::equals).isEmpty()) {
            return parts;
        }
        String word = wording.shared("signs.signal-word." + (serious(cell) ? "warning" : "caution"));
        return parts.stream()
                .map(part -> part.sign().kind() == Kind.HAZARD ? part.titled(word + ": " + part.title()) : part)
                .toList();
    }

    /** Also where nobody judged it. */
    private static boolean serious(PostedCell cell) {
        return cell.risks().isEmpty()
                || cell.risks().stream()
                        .anyMatch(risk -> risk.hazard()
                                .after()
                                .severity()
                                .value()
                                .filter(severity -> !severity.equals(SERIOUS))
                                .isEmpty());
    }
}
