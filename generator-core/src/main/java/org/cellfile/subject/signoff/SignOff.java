package org.cellfile.subject.signoff;

import java.time.LocalDate;
import java.util.Locale;
import java.util.stream.Stream;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;

/**
 * Somebody put a name to a state of the description.
 *
 * @param covers {@code file}, or the chapter signed
 * @param digest of the substance signed, in lower-case hexadecimal digits
 * @param role one of the person's roles
 * @param key tag of the key it was signed with; missing where the name was only typed
 * @param signature Ed25519 (RFC 8032) in Base64, over {@link SigningMessage}; missing where the name was only typed
 */
public record SignOff(
        Stated<String> covers,
        Stated<String> digest,
        Stated<SigningWords> words,
        Stated<String> by,
        Stated<String> role,
        Stated<LocalDate> on,
        Stated<String> key,
        Stated<String> signature,
        Span where) {

    /** What is written is no SHA-256. */
    public static final FindingId NO_DIGEST = new FindingId("sign-off.no-digest");

    static SignOff read(Section section) {
        return new SignOff(
                section.text("covers"),
                digest(section),
                section.word("words", SigningWords.all())
                        .map(words -> SigningWords.of(words).orElseThrow()),
                section.reference("by", Person.SORT),
                section.text("role"),
                section.date("on"),
                section.referenceIfStated("key", SigningKey.SORT),
                section.textIfStated("signature"),
                section.where());
    }

    /** True when all that tells what it is worth could be read. */
    boolean readable() {
        return Stream.of(covers, digest, words, by, role, on)
                .allMatch(stated -> stated.value().isPresent());
    }

    /** True when it says just that. */
    boolean says(SigningWords due) {
        return words.value().filter(due::equals).isPresent();
    }

    /** What it covers, in words. */
    String covered() {
        return covered(covers.characters());
    }

    /** What sign-offs cover, in words. */
    public static String covered(String covers) {
        return covers.equals(Substance.WHOLE) ? "the whole file" : "the chapter `" + covers + "`";
    }

    private static Stated<String> digest(Section section) {
        Stated<String> written = section.text("digest");
        if (written.value().isEmpty() || written.characters().matches("[0-9a-fA-F]{64}")) {
            return written.map(digits -> digits.toLowerCase(Locale.ROOT));
        }
        section.report(Finding.refuses(
                NO_DIGEST,
                "",
                written.where(),
                "`digest` is `" + written.characters() + "`, which is not a SHA-256 in 64 hexadecimal digits",
                "let the program write sign-offs (`sign`); a digest is not typed by hand"));
        return new Stated.Missing<>(written.where(), "digest");
    }
}
