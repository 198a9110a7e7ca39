package org.cellfile.render;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cellfile.render.pdf.Identifier;
import org.cellfile.render.pdf.Identifier.Worth;
import org.junit.jupiter.api.Test;

/** The identifier of every file is one that anybody can recompute. */
class IdentifierTest {

    private static final Pattern ID = Pattern.compile("/ID \\[<([0-9A-F]{64})> <([0-9A-F]{64})>]");

    private static final SortedMap<String, byte[]> FILES =
            RenderedFileTest.printed(RenderedFileTest.files(new ExampleDossier()));

    private static Matcher identifier(byte[] file) {
        Matcher matcher = ID.matcher(new String(file, ISO_8859_1));
        assertThat(matcher.find()).isTrue();
        return matcher;
    }

    @Test
    void itIsTheDigestOfTheFileWithNoughtsInItsPlace() throws Exception {
        for (Map.Entry<String, byte[]> file : FILES.entrySet()) {
            Matcher identifier = identifier(file.getValue());
            String second = identifier.group(2);
            String noughts = new String(file.getValue(), ISO_8859_1).replace(second, "0".repeat(64));
            assertThat(HexFormat.of()
                            .withUpperCase()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(noughts.getBytes(ISO_8859_1))))
                    .as(file.getKey())
                    .isEqualTo(second);
            assertThat(identifier.find()).as("only one").isFalse();
            assertThat(Identifier.of(file.getValue())).isEqualTo(Worth.HOLDS);
        }
    }

    @Test
    void theFirstStringIsThatOfTheContentAlone() {
        SortedMap<String, byte[]> again = RenderedFileTest.printed(RenderedFileTest.files(new ExampleDossier()));
        FILES.forEach((path, file) -> assertThat(again.get(path)).as(path).isEqualTo(file));
        assertThat(FILES.values().stream().map(file -> identifier(file).group(1)))
                .doesNotHaveDuplicates();
    }

    @Test
    void aChangedByteShows() {
        byte[] file =
                Objects.requireNonNull(FILES.get("sheets/operator-en.pdf")).clone();
        for (int at = 0; at < file.length; at += Math.max(1, file.length / 97)) {
            file[at] ^= 1;
            assertThat(Identifier.of(file)).as("byte " + at).isNotEqualTo(Worth.HOLDS);
            file[at] ^= 1;
        }
        assertThat(Identifier.of(file)).isEqualTo(Worth.HOLDS);
        assertThat(Identifier.of("%PDF-1.7".getBytes(ISO_8859_1))).isEqualTo(Worth.NONE);
    }
}
