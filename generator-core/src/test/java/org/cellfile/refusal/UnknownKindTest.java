package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingText;
import org.cellfile.subject.safeguard.Kinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A kind nobody knows is refused with the nearest and all of those that are known, however many they come to be. */
class UnknownKindTest {

    @TempDir
    private Path folder;

    @Test
    void theNearestAndAllAreNamed() throws Exception {
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "safeguards.yaml", "kind: fixed-fence", "kind: fixed-fense");

        Finding finding = BaseCell.check(folder).findings().get(0);

        assertThat(finding.id().words()).isEqualTo("read.unknown-word");
        assertThat(FindingText.of(List.of(finding)))
                .startsWith(
                        "safeguards.yaml:55:11: error: `kind` is `fixed-fense`, which has no meaning here [read.unknown-word]\n")
                .contains("help: words that have: `fixed-fence` is nearest; all: `" + String.join("`, `", Kinds.ids())
                        + "`\n");
    }

    /** So is a key nobody knows, also in the distance as it was measured. */
    @ParameterizedTest
    @ValueSource(strings = {"    triggers: ", "    kind: "})
    void aKeyOfASafeguardThatNobodyKnows(String before) throws Exception {
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "safeguards.yaml", before, "    colour: red\n" + before);
        BaseCell.change(
                folder, "safeguards.yaml", "from: plane of the beams, ", "from: plane of the beams, shade: red, ");

        assertThat(BaseCell.check(folder).findings())
                .extracting(finding -> finding.id().words())
                .containsOnly("read.unknown-key");
        assertThat(BaseCell.check(folder).findings())
                .extracting(Finding::sentence)
                .anySatisfy(sentence -> assertThat(sentence).contains("`colour`"))
                .anySatisfy(sentence -> assertThat(sentence).contains("`shade`"));
    }
}
