package org.cellfile.audit;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.LocalDate;
import java.util.Base64;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cellfile.Generator;
import org.cellfile.Generator.Generated;
import org.cellfile.refusal.BaseCell;
import org.cellfile.source.World;
import org.cellfile.subject.signoff.Ed25519;

/** The small cell of the refusals, tested, checked and released by invented people, with keys that everybody knows. */
final class ReleasedCell {

    /** The first two key pairs of RFC 8032, 7.1. */
    private static final String SECRET_OF_BRUNO = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";

    private static final String PUBLIC_OF_BRUNO = "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a";
    private static final String SECRET_OF_CORIN = "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb";
    private static final String PUBLIC_OF_CORIN = "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c";

    private static final String PEOPLE = """
            cellfile: 1
            people:
              - tag: ilse
                name: I. Lorne
                employer: Fennimoor Cell Engineering
                roles: [measures, checks]
                competence: Mechanical engineer
                holds: ["ISO 13855:2010", "ISO 13857:2008", "ISO 13850:2015", "ISO 13849-1:2015", "ISO 10218-1:2011"]
              - {tag: bruno, name: B. Ostrow, employer: Fennimoor Cell Engineering, roles: [checks], competence: Electrical engineer}
              - {tag: corin, name: C. Vell, employer: Tarnbeck Pottery, roles: [answers for the hall], competence: Foreman}
            """;

    private static final byte[] PDF = pdf(files());

    private ReleasedCell() {}

    /** The released safety file. */
    static byte[] pdf() {
        return PDF.clone();
    }

    /** The sources without sign-offs. */
    static SortedMap<String, byte[]> unsigned() {
        SortedMap<String, byte[]> files = new TreeMap<>();
        try {
            Path base = BaseCell.withPlan(BaseCell.copyTo(Files.createTempDirectory("released-cell")));
            try (Stream<Path> walk = Files.walk(base)) {
                for (Path file : walk.sorted(Comparator.reverseOrder()).toList()) {
                    if (Files.isRegularFile(file)) {
                        files.put(base.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
                    }
                    Files.delete(file);
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        files.put("people.yaml", PEOPLE.getBytes(UTF_8));
        return files;
    }

    /** The sources with sign-offs of what they say. */
    static SortedMap<String, byte[]> files() {
        return signed(unsigned());
    }

    /** Signs what the sources say. */
    static SortedMap<String, byte[]> signed(SortedMap<String, byte[]> sources) {
        SortedMap<String, byte[]> files = new TreeMap<>(sources);
        String digest = new Generator()
                .undated(new Folder(files))
                .cell()
                .orElseThrow()
                .substance()
                .digest();
        files.put("keys.yaml", """
                cellfile: 1
                keys:
                  - {tag: key-bruno, of: bruno, public: %s, from: 2026-09-01}
                  - {tag: key-corin, of: corin, public: %s, from: 2026-09-01}
                """.formatted(publicKey(PUBLIC_OF_BRUNO), publicKey(PUBLIC_OF_CORIN))
                .getBytes(UTF_8));
        files.put(
                "sign-offs.yaml",
                ("""
                cellfile: 1
                sign-offs:
                  - {covers: file, digest: "%s", words: tested, by: ilse, role: measures, on: 2026-11-18}
                """.formatted(digest)
                                + signOff(
                                        digest,
                                        "checked",
                                        "bruno",
                                        "B. Ostrow",
                                        "checks",
                                        "2026-11-19",
                                        SECRET_OF_BRUNO)
                                + signOff(
                                        digest,
                                        "released for use",
                                        "corin",
                                        "C. Vell",
                                        "answers for the hall",
                                        "2026-11-20",
                                        SECRET_OF_CORIN))
                        .getBytes(UTF_8));
        return files;
    }

    private static String signOff(
            String digest, String words, String tag, String name, String role, String on, String secret) {
        String message = String.join(
                "\n",
                "sign-off 1",
                "cell: small-cell",
                "covers: file",
                "digest: " + digest,
                "words: " + words,
                "by: " + name,
                "role: " + role,
                "on: " + on,
                "");
        return "  - {covers: file, digest: \"" + digest + "\", words: " + words + ", by: " + tag + ", role: " + role
                + ", on: " + on + ", key: key-" + tag + ", signature: \""
                + Ed25519.sign(secretKey(secret), message.getBytes(UTF_8)) + "\"}\n";
    }

    private static PrivateKey secretKey(String digits) {
        byte[] encoded = HexFormat.of().parseHex("302e020100300506032b657004220420" + digits); // RFC 8410, clause 7
        try {
            return KeyFactory.getInstance("Ed25519").generatePrivate(new PKCS8EncodedKeySpec(encoded));
        } catch (GeneralSecurityException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static String publicKey(String digits) {
        return Base64.getEncoder().encodeToString(HexFormat.of().parseHex("302a300506032b6570032100" + digits));
    }

    /** A file of trusted keys with these owners of the two keys. */
    static String trusted(String ownerOfTheFirst, String ownerOfTheSecond) {
        return "Keys handed over in person.\n" + pem(ownerOfTheFirst, PUBLIC_OF_BRUNO) + "\n"
                + pem(ownerOfTheSecond, PUBLIC_OF_CORIN);
    }

    static String pem(String owner, String digits) {
        return owner + "\n-----BEGIN PUBLIC KEY-----\n" + publicKey(digits) + "\n-----END PUBLIC KEY-----\n";
    }

    /** A key that is nobody's of the cell: the third of RFC 8032, 7.1. */
    static String anotherKey() {
        return pem("K. Holm", "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025");
    }

    /** The released safety file of some sources. */
    static byte[] pdf(SortedMap<String, byte[]> sources) {
        return safetyFile(new Generator().release(new Folder(sources)));
    }

    /** The same as a draft. */
    static byte[] draft(SortedMap<String, byte[]> sources) {
        return safetyFile(new Generator().generate(new Folder(sources)));
    }

    private static byte[] safetyFile(Generated generated) {
        return Objects.requireNonNull(generated
                .files()
                .orElseThrow(() -> new AssertionError(generated.verdict().findings()))
                .get("small-cell-safety-file.pdf"));
    }

    /** Files in memory, looked at five days after the cell was described. */
    record Folder(SortedMap<String, byte[]> files) implements World {
        @Override
        public List<Entry> entries() {
            return files.entrySet().stream()
                    .map(file -> Entry.held(file.getKey(), file.getValue()))
                    .toList();
        }

        @Override
        public LocalDate today() {
            return LocalDate.of(2026, 11, 25);
        }
    }
}
