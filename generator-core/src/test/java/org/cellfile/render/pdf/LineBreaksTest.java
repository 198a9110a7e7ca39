package org.cellfile.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The texts are constructed. */
class LineBreaksTest {

    /** What stands between two places at which a line may end. */
    private static List<String> pieces(String text) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int to = breaks.next(); to >= 0; to = breaks.next()) {
            if (to > from) {
                pieces.add(text.substring(from, to));
                from = to;
            }
        }
        return pieces;
    }

    @Test
    void aDateStaysOnItsLine() {
        assertThat(pieces("by J. Pellam, 2026-11-20, proven"))
                .containsExactly("by ", "J. ", "Pellam, ", "2026-11-20, ", "proven");
        assertThat(pieces("2026-11-20")).containsExactly("2026-11-20");
        assertThat(pieces("2026-10-05 2026-10-06")).containsExactly("2026-10-05 ", "2026-10-06");
    }

    @Test
    void whatIsNoDateMayBeBrokenAfterAHyphen() {
        assertThat(pieces("scanner-wrapper")).containsExactly("scanner-", "wrapper");
        assertThat(pieces("tests-2026-10-14")).last().isEqualTo("2026-10-14");
    }
}
