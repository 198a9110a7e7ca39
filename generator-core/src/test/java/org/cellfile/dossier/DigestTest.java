package org.cellfile.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * SHA-256 against the examples published with FIPS 180-4 (Secure Hash Standard): one block, two blocks, and one million letters;
 * that of the empty message is in wide use. All from memory; a digit remembered wrongly fails by itself.
 */
class DigestTest {

    @ParameterizedTest
    @CsvSource({
        "'',1,e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "abc,1,ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,1,248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
        "a,1000000,cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"
    })
    void agreesWithThePublishedExamples(String text, int times, String digest) throws IOException {
        String message = text.repeat(times);

        assertThat(Digest.sha256(message)).isEqualTo(digest);
        assertThat(Digest.sha256(new ByteArrayInputStream(message.getBytes(StandardCharsets.UTF_8)), message.length()))
                .contains(digest);
    }
}
