package org.cellfile.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.cli.Ran.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cellfile.refusal.BaseCell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb from outside: what it understands, and its exit codes. The figures and texts are constructed. */
class PostedVerbTest {

    private static final String ANOTHER =
            "cellfile sheet 1; other; automatic-operation; en; revision A; as of 2026-11-20; until none; released;"
                    + " 0123456789ab; 0123 4567";

    @TempDir
    private Path temporary;

    private Path cell;

    @BeforeEach
    void aCell() {
        cell = BaseCell.copyTo(temporary.resolve("cell"));
    }

    @Test
    void eachThatWasReadIsAnswered() throws IOException {
        Ran one = run("posted", cell, ANOTHER);
        assertThat(one.code()).isEqualTo(1);
        assertThat(one.out()).startsWith("`automatic-operation-en` of `other`: unknown\n");
        assertThat(one.err()).isEmpty();

        Path list = Files.writeString(temporary.resolve("read.txt"), ANOTHER + "\n\n0123-4567-89ab\n");
        Ran several = run("posted", cell, "something", "--read-from", list);
        assertThat(several.code()).isEqualTo(1);
        assertThat(several.out()).contains("`something`: unknown", "of `other`: unknown", "`0123 4567 89ab`: unknown");
    }

    @Test
    void wrongUseIsTold() throws IOException {
        assertThat(run("posted").code()).isEqualTo(2);
        assertThat(run("posted", temporary.resolve("not-there"), ANOTHER).code())
                .isEqualTo(2);
        assertThat(run("posted", cell).err()).contains("say what was read off a sheet");
        assertThat(run("posted", cell).code()).isEqualTo(2);
        assertThat(run("posted", cell, "", " ").code()).isEqualTo(2);
        assertThat(run("posted", cell, ANOTHER, "--since", "v1", "--earlier", cell)
                        .code())
                .isEqualTo(2);
        Path image = Files.write(temporary.resolve("read.png"), "\u00ff".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(run("posted", cell, "--read-from", image).code()).isEqualTo(2);
        assertThat(run("posted", cell, "--read-from", temporary).code()).isEqualTo(2);
    }

    @Test
    void aStateThatCannotBeReadIsTold() throws IOException {
        Ran outside = run("posted", cell, ANOTHER, "--since", "v1");
        assertThat(outside.code()).isEqualTo(1);
        assertThat(outside.err()).contains("lies in no Git repository");
        assertThat(run("posted", cell, ANOTHER, "--earlier", temporary.resolve("old.pdf"))
                        .err())
                .contains("there is no folder and no PDF");

        Files.writeString(cell.resolve("cell.yaml"), "cellfile: 1\n\ncell: {\n");
        Ran broken = run("posted", cell, ANOTHER);
        assertThat(broken.code()).isEqualTo(1);
        assertThat(broken.err()).contains("[read.syntax]", "leaves nothing to hold the sheets against");
        assertThat(broken.out()).isEmpty();
    }
}
