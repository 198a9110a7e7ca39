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
    void aNumberStaysWithItsUnit() {
        assertThat(pieces("at 250 mm/s or 2.5 bar")).containsExactly("at ", "250 mm/s ", "or ", "2.5 bar");
        assertThat(pieces("6 mm, 40 °C, 12 %.")).containsExactly("6 mm, ", "40 °C, ", "12 %.");
        assertThat(pieces("2 men and 3 in all")).containsExactly("2 ", "men ", "and ", "3 in ", "all");
        assertThat(pieces("4 stops")).containsExactly("4 ", "stops");
    }

    @Test
    void theNumberOfAStandardOrARuleIsNotTorn() {
        assertThat(pieces("see 29 CFR 1910.147(c)")).containsExactly("see ", "29 CFR 1910.147(c)");
        assertThat(pieces("by ISO 10218-2:2025, cl. 5.1")).containsExactly("by ", "ISO 10218-2:2025, ", "cl. 5.1");
        assertThat(pieces("EN ISO 13849-1 or ISO/TS 15066")).containsExactly("EN ISO 13849-1 ", "or ", "ISO/TS 15066");
        assertThat(pieces("PL d of SIL 2")).containsExactly("PL d ", "of ", "SIL 2");
        assertThat(pieces("ANSI B11.19-2019")).containsExactly("ANSI B11.19-2019");
    }

    @Test
    void whatIsNoDateMayBeBrokenAfterAHyphen() {
        assertThat(pieces("scanner-wrapper")).containsExactly("scanner-", "wrapper");
        assertThat(pieces("tests-2026-10-14")).last().isEqualTo("2026-10-14");
    }
}
