package org.cellfile.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.cellfile.dossier.Dossier;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.junit.jupiter.api.Test;

/** A copy is judged as the full description was, and told in its own words. All figures are constructed. */
class CopyVerdictTest {

    private static final FindingId OPEN = new FindingId("bypass.open");

    private static Dossier none() {
        throw new AssertionError("nothing is printed here");
    }

    private static Finding bar(String sentence, int line, int column) {
        Span where = new Span(new SourceFile("a.yaml", "x: " + sentence), line, column, 1);
        return Finding.barsRelease(OPEN, "door", where, sentence, "ask the porter");
    }

    private static Printable full(Finding... found) {
        return (Printable) Decision.decide(List.of(found), List.of(), CopyVerdictTest::none);
    }

    private static Printable copy(Printable full, Finding... found) {
        return Decision.copy(full, List.of(found), List.of(), CopyVerdictTest::none);
    }

    @Test
    void whatBothShowIsToldInTheWordsOfTheCopy() {
        Finding first = bar("the key is left out of this copy", 3, 9);
        Finding second = bar("another", 3, 20);

        assertThat(copy(full(bar("the key hangs in the shed", 3, 4), bar("another", 3, 30)), first, second)
                        .missing())
                .containsExactly(first, second);
    }

    @Test
    void whatOnlyTheFullDescriptionShowsIsToldWithoutItsWords() {
        List<Finding> missing = copy(full(bar("the key hangs in the shed", 3, 4)), bar("another", 4, 4))
                .missing();

        assertThat(missing).singleElement().satisfies(one -> {
            assertThat(one.id()).isEqualTo(OPEN);
            assertThat(one.sentence()).isEqualTo("what bars release here is left out of this copy");
            assertThat(one.where().position()).isEqualTo("a.yaml:3:1");
            assertThat(one.toString()).doesNotContain("shed", "porter");
        });
    }

    @Test
    void whatOnlyTheCopyShowsBarsNothing() {
        assertThat(copy(full(), bar("this is a copy", 1, 1)).missing()).isEmpty();
    }

    @Test
    void aReleaseStaysOne() {
        assertThat(copy(full().released()).draft()).isFalse();
        assertThat(copy(full()).draft()).isTrue();
    }

    @Test
    void aCopyThatIsRefusedIsADefect() {
        Printable full = full();
        Finding refusal = Finding.refuses(OPEN, "", SourceFile.unread("a.yaml").whole(), "no", "");

        assertThatThrownBy(() -> copy(full, refusal)).isInstanceOf(IllegalStateException.class);
    }
}
