package org.cellfile.subject.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Signatures against the vectors of RFC 8032 and against another program; keys in files. */
class Ed25519Test {

    private static final Path RESOURCES = Path.of("src", "test", "resources");
    private static final Path KEYS = RESOURCES.resolve("keys");
    private static final HexFormat HEX = HexFormat.of();

    /** What comes before the 32 bytes of a key in SubjectPublicKeyInfo and in PKCS #8 (RFC 8410, section 10, from memory). */
    private static final String PUBLIC = "302a300506032b6570032100";

    private static final String PRIVATE = "302e020100300506032b657004220420";

    @TempDir
    private Path folder;

    record Vector(String name, String secret, String publicKey, String message, String signature) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Vector> vectors() throws IOException {
        return Files.readAllLines(RESOURCES.resolve("vectors/ed25519.csv")).stream()
                .filter(line -> line.startsWith("TEST "))
                .map(line -> line.split(",", -1))
                .map(cells -> new Vector(cells[0], cells[1], cells[2], cells[3].equals("-") ? "" : cells[3], cells[4]))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("vectors")
    void agreesWithThePublishedVectors(Vector vector) throws GeneralSecurityException {
        PrivateKey secret = KeyFactory.getInstance("Ed25519")
                .generatePrivate(new PKCS8EncodedKeySpec(HEX.parseHex(PRIVATE + vector.secret)));
        PublicKey known = Ed25519.publicKey(base64(HEX.parseHex(PUBLIC + vector.publicKey)))
                .orElseThrow();
        byte[] message = HEX.parseHex(vector.message);
        byte[] signature = HEX.parseHex(vector.signature);

        assertThat(Ed25519.sign(secret, message)).isEqualTo(base64(signature));
        assertThat(Ed25519.holds(known, message, base64(signature))).isTrue();
        for (int i = 0; i < signature.length; i++) {
            byte[] other = signature.clone();
            other[i] ^= 1;
            assertThat(Ed25519.holds(known, message, base64(other)))
                    .as("byte " + i)
                    .isFalse();
        }
        byte[] longer = Arrays.copyOf(message, message.length + 1);
        assertThat(Ed25519.holds(known, longer, base64(signature))).isFalse();
    }

    @Test
    void allFiveVectorsWereRead() throws IOException {
        assertThat(vectors())
                .extracting(Vector::name)
                .containsExactly("TEST 1", "TEST 2", "TEST 3", "TEST 1024", "TEST SHA(abc)");
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    @Test
    void whatIsNoSignatureOrNoKeyIsToldApart() {
        PublicKey known = publicKey("key-bruno");

        assertThat(Ed25519.holds(known, new byte[0], "")).isFalse();
        assertThat(Ed25519.holds(known, new byte[0], "not Base64!")).isFalse();
        assertThat(Ed25519.holds(known, new byte[0], base64(new byte[63]))).isFalse();
        assertThat(Ed25519.publicKey("")).isEmpty();
        assertThat(Ed25519.publicKey("blue ink")).isEmpty();
        assertThat(Ed25519.publicKey(base64(new byte[44]))).isEmpty();
        // y = 2 is on no point: (y² - 1) / (d y² + 1) is no square (RFC 8032, section 5.1.3)
        assertThat(Ed25519.publicKey(base64(HEX.parseHex(PUBLIC + "02" + "00".repeat(31)))))
                .isEmpty();
    }

    /** A signature made once with the openssl command, in version 3.0. */
    @Test
    void aSignatureOfAnotherProgramHolds() throws IOException {
        byte[] message = Files.readAllBytes(KEYS.resolve("message.txt"));
        String signature = Files.readString(KEYS.resolve("message.signature.txt"));

        assertThat(Ed25519.holds(publicKey("key-bruno"), message, signature)).isTrue();
        assertThat(Ed25519.holds(publicKey("key-corin"), message, signature)).isFalse();
    }

    @Test
    void aPlainKeyAndTheSameEncryptedSignAlike() throws Exception {
        byte[] message = Files.readAllBytes(KEYS.resolve("message.txt"));
        String signature = Files.readString(KEYS.resolve("message.signature.txt"));
        KeyFile encrypted = keyFile("key-bruno-encrypted");

        assertThat(keyFile("key-bruno").encrypted()).isFalse();
        assertThat(encrypted.encrypted()).isTrue();
        assertThat(Ed25519.sign(keyFile("key-bruno").open(new char[0]), message))
                .isEqualTo(signature);
        assertThat(Ed25519.sign(encrypted.open("quarry-lamp-7".toCharArray()), message))
                .isEqualTo(signature);
    }

    @Test
    void whatCannotBeOpenedIsToldInWords() throws IOException {
        KeyFile encrypted = keyFile("key-bruno-encrypted");

        for (String wrong : List.of("", "quarry-lamp-8", "Quarry-lamp-7", "quarry-lamp-7 ")) {
            assertThatThrownBy(() -> encrypted.open(wrong.toCharArray()))
                    .isInstanceOf(KeyFile.Unusable.class)
                    .hasMessage("the key file cannot be opened with this passphrase");
        }
        assertThatThrownBy(() -> encrypted.open("schlüssel".toCharArray())).hasMessageContaining("beyond ASCII");
        KeyFile another = keyFile("of-another-sort");
        assertThatThrownBy(() -> another.open(new char[0])).hasMessageContaining("a key of another sort");
        assertThat(KeyFile.of("")).isEmpty();
        assertThat(KeyFile.of("-----BEGIN PUBLIC KEY-----\nMCow\n-----END PUBLIC KEY-----\n"))
                .isEmpty();
        String plain = Files.readString(KEYS.resolve("key-bruno.pem"));
        for (String damaged : List.of(plain.replace("MC4C", "MC4D"), plain.replace("PRIVATE", "ENCRYPTED PRIVATE"))) {
            KeyFile file = KeyFile.of(damaged).orElseThrow();
            assertThatThrownBy(() -> file.open(new char[0])).isInstanceOf(KeyFile.Unusable.class);
        }
    }

    /** Both ways, with a key made on the spot and an encrypted one; passed over where there is no such command. */
    @Test
    void theOpensslCommandAndThisProgramHoldEachOther() throws Exception {
        assumeTrue(ran("openssl", "version"), "there is no openssl command on this machine");
        Path key = folder.resolve("key.pem");
        Path encrypted = folder.resolve("encrypted.pem");
        Path known = folder.resolve("public.pem");
        Path message = folder.resolve("message.txt");
        Path theirs = folder.resolve("theirs.bin");
        Path ours = folder.resolve("ours.bin");
        Files.writeString(message, "The light curtain was tested.\n");
        assumeTrue(ran("openssl", "genpkey", "-algorithm", "ed25519", "-out", key), "it does not know Ed25519");
        assertThat(ran(
                        "openssl",
                        "pkcs8",
                        "-topk8",
                        "-in",
                        key,
                        "-v2",
                        "aes-256-cbc",
                        "-passout",
                        "pass:x y",
                        "-out",
                        encrypted))
                .isTrue();
        assertThat(ran("openssl", "pkey", "-in", key, "-pubout", "-out", known)).isTrue();
        assertThat(ran("openssl", "pkeyutl", "-sign", "-rawin", "-inkey", key, "-in", message, "-out", theirs))
                .isTrue();
        String ownSignature = Ed25519.sign(
                KeyFile.of(Files.readString(encrypted)).orElseThrow().open("x y".toCharArray()),
                Files.readAllBytes(message));
        Files.write(ours, Base64.getDecoder().decode(ownSignature));

        String spki = Files.readString(known).replaceAll("-----[A-Z ]+-----|\\s", "");
        assertThat(Ed25519.holds(
                        Ed25519.publicKey(spki).orElseThrow(),
                        Files.readAllBytes(message),
                        base64(Files.readAllBytes(theirs))))
                .isTrue();
        assertThat(ran(
                        "openssl",
                        "pkeyutl",
                        "-verify",
                        "-rawin",
                        "-pubin",
                        "-inkey",
                        known,
                        "-in",
                        message,
                        "-sigfile",
                        ours))
                .isTrue();
    }

    private static boolean ran(Object... command) throws InterruptedException {
        try {
            return new ProcessBuilder(
                                    Arrays.stream(command).map(Object::toString).toList())
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException noSuchCommand) {
            return false;
        }
    }

    private static KeyFile keyFile(String name) throws IOException {
        return KeyFile.of(Files.readString(KEYS.resolve(name + ".pem"), StandardCharsets.UTF_8))
                .orElseThrow();
    }

    /** As the signed base cell states it. */
    private static PublicKey publicKey(String tag) {
        try {
            String line = Files.readAllLines(RESOURCES.resolve("signed/keys.yaml")).stream()
                    .filter(one -> one.contains("tag: " + tag + ","))
                    .findFirst()
                    .orElseThrow();
            return Ed25519.publicKey(line.replaceFirst(".*public: ([^,]+),.*", "$1"))
                    .orElseThrow();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
