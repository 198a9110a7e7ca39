package org.cellfile.subject.signoff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.SignatureLine;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Digest;
import org.cellfile.dossier.Substance;
import org.cellfile.source.Stated;

/** Who signed what, what that is worth, and how to check it without this program. */
public final class SigningChapter {

    private static final int FINGERPRINT = 32;

    private final Signing signing;
    private final List<Signed> signed;
    private final boolean copy;
    private final Map<String, String> titles;

    private SigningChapter(Signing signing, boolean copy, Map<String, String> titles) {
        this.signing = signing;
        this.copy = copy;
        this.signed = signing.signed();
        this.titles = titles;
    }

    /**
     * The chapter.
     *
     * @param copy true where something is left out of what is printed, and with it the text of what was signed
     * @param titles of the chapters that can be signed by themselves
     */
    public static Chapter chapter(Signing signing, boolean copy, Map<String, String> titles) {
        return new SigningChapter(signing, copy, titles).chapter();
    }

    private Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "By signing, a person answers for what the words say, for this state of the description and no other: each"
                        + " sign-off is bound to the digest of what it covers, and any change of a stated or derived value"
                        + " supersedes it. Comments, layout, the day described and other sign-offs do not. \"Typed, not"
                        + " proven\" means that the name was written into the files, which anybody who may edit them can"
                        + " do; \"proven\" means that a signature (Ed25519, RFC 8032) holds under the key named."));
        blocks.add(asked());
        blocks.add(all());
        signed.stream()
                .filter(one -> one.status() == SignOffStatus.SUPERSEDED)
                .map(this::changes)
                .forEach(blocks::add);
        if (!signing.stated().keys().isEmpty()) {
            blocks.add(new Section(
                    "",
                    "Public keys",
                    List.of(
                            keys(),
                            new Paragraph(
                                    "The fingerprint of a key is the first 32 hexadecimal digits of the SHA-256 of its"
                                            + " SubjectPublicKeyInfo (RFC 8410). That a key is the person's is not proven by"
                                            + " this file: have the person tell the fingerprint in another way."))));
        }
        blocks.add(check());
        signed.stream().filter(Signed::proven).map(this::message).forEach(blocks::add);
        blocks.add(ink());
        return new Chapter("signatures", "Signatures", blocks);
    }

    private Table asked() {
        return new Table(
                "What is asked for before release",
                List.of(
                        Column.text("Words", 3),
                        Column.text("Covers", 4),
                        Column.text("By whom", 5),
                        Column.text("Given", 7)),
                signing.asked().stream()
                        .map(due -> List.of(due.words().words(), covered(due.covers()), whom(due), given(due)))
                        .toList());
    }

    private static String whom(Asked due) {
        String who = switch (due.words()) {
            case TESTED -> "somebody competent for function tests";
            case CHECKED -> "somebody who did not test";
            case RELEASED -> "somebody of the plant who did not test";
            case APPROVED -> "whoever approves";
            case NOTED -> "whoever takes note";
        };
        return who
                + due.role().map(role -> ", in the role \"" + role + "\"").orElse("")
                + (due.proven() ? ", proven by a signature" : "");
    }

    private List<Signed> meeting(Asked due) {
        return signed.stream()
                .filter(one -> one.status() == SignOffStatus.VALID && due.metBy(one.signOff()))
                .toList();
    }

    private String given(Asked due) {
        List<Signed> given = meeting(due);
        return given.isEmpty()
                ? "not given"
                : given.stream()
                        .map(one -> name(one) + ", " + one.signOff().on().characters() + ", " + proof(one))
                        .collect(Collectors.joining("; "));
    }

    private Table all() {
        return new Table(
                "All sign-offs, in the order written",
                List.of(
                        Column.text("Words", 4),
                        Column.text("Covers", 4),
                        Column.text("By, in the role", 5),
                        Column.text("Date", 4),
                        Column.text("Status", 4),
                        Column.text("Proof", 5),
                        Column.text("Digest, first 16", 6)),
                signed.stream()
                        .map(one -> List.of(
                                one.signOff().words().characters(),
                                covered(one.signOff().covers().characters()),
                                name(one) + ", " + one.signOff().role().characters(),
                                one.signOff().on().characters(),
                                one.status().words(),
                                proof(one),
                                KeptTexts.digits(one.signOff().digest().value().orElse(""))))
                        .toList());
    }

    private static String proof(Signed one) {
        return one.proven() ? "proven with key " + one.signOff().key().characters() : "typed, not proven";
    }

    private String name(Signed one) {
        return signing.identity().nameOf(one.signOff().by());
    }

    private String covered(String covers) {
        return covers.equals(Substance.WHOLE) ? "the whole file" : titles.getOrDefault(covers, covers);
    }

    private String told(Signed one) {
        return one.signOff().words().characters() + ", "
                + covered(one.signOff().covers().characters()) + ", by " + name(one) + ", "
                + one.signOff().on().characters();
    }

    private Section changes(Signed one) {
        return new Section("", "Changed since: " + told(one), List.of(new Points(one.since())));
    }

    private Table keys() {
        return new Table(
                "Keys under which signatures are checked",
                List.of(
                        Column.text("Key", 3),
                        Column.text("Of", 4),
                        Column.text("Fingerprint", 7),
                        Column.text("Counts from", 3),
                        Column.text("Withdrawn", 3)),
                signing.stated().keys().stream()
                        .map(key -> List.of(
                                key.tag().characters(),
                                signing.identity().nameOf(key.of()),
                                fingerprint(key),
                                key.from().characters(),
                                key.withdrawn().value().map(Object::toString).orElse("–")))
                        .toList());
    }

    /** In groups of four. */
    private static String fingerprint(SigningKey key) {
        Optional<String> digest = key.publicKey()
                .value()
                .filter(text -> Ed25519.publicKey(text).isPresent())
                .map(text -> Digest.sha256(Base64.getDecoder().decode(text)).substring(0, FINGERPRINT));
        return digest.map(digits -> digits.replaceAll("(.{4})(?!$)", "$1 ")).orElse("");
    }

    private Section check() {
        Substance now = signing.substance();
        return new Section(
                "",
                "Checking the digest without this program",
                List.of(
                        new Paragraph("SHA-256 of the whole file as it is now, and where its text is:"),
                        new Points(List.of(now.digest(), KeptTexts.path(now) + ", " + kept(now))),
                        new Paragraph(
                                "The text holds every stated and derived value, a line each, chapter by chapter. The"
                                        + " digest of a chapter is that of its lines from \"chapter\" and its name to the"
                                        + " line before the next chapter; the digest of the whole is that of the first"
                                        + " line of the text, followed by \"chapter\", name and digest of each chapter, a"
                                        + " line each. In a shell, with F for the file and C for the name of a chapter:"),
                        new Points(List.of(
                                "d() { awk -v c=$1 '/^chapter /{p=($2==c)} p' F | sha256sum | cut -d' ' -f1; }",
                                "n() { awk '/^chapter /{print $2}' F; }",
                                "w() { head -n1 F; for c in $(n); do echo chapter $c $(d $c); done; }",
                                "of a chapter: d C",
                                "of the whole: w | sha256sum"))));
    }

    private String kept(Substance now) {
        if (copy) {
            return "which the plant keeps, as it holds what is left out of this copy";
        }
        return signing.stated().kept().has(now) ? "attached to this PDF" : "which is written when somebody signs";
    }

    /** The text that was signed, so that it can be typed into a file. */
    private Section message(Signed one) {
        String name = name(one);
        String text = new String(
                SigningMessage.of(signing.identity().facts().id().characters(), name, one.signOff()),
                StandardCharsets.UTF_8);
        Stated<String> key = one.signOff().key();
        return new Section(
                "",
                "Signature: " + told(one),
                List.of(
                        new Paragraph("These lines, each ended by a line feed, in UTF-8, were signed with the key "
                                + key.characters() + ":"),
                        new Points(text.lines().toList()),
                        new Facts(List.of(
                                new Fact("Signature", one.signOff().signature().characters(), "in Base64"),
                                new Fact(
                                        "Public key",
                                        signing.stated()
                                                .key(key.characters())
                                                .map(known -> known.publicKey().characters())
                                                .orElse(""),
                                        "in Base64"))),
                        new Paragraph(
                                "With the lines in lines.txt, the signature decoded (base64 -d) in signature.bin and the key"
                                        + " between the lines BEGIN PUBLIC KEY and END PUBLIC KEY in key.pem, this checks it:"),
                        new Points(
                                List.of(
                                        "openssl pkeyutl -verify -rawin -pubin -inkey key.pem -in lines.txt -sigfile signature.bin"))));
    }

    /** Lines for what nobody has signed in the files, and for what cannot be signed there. */
    private Section ink() {
        List<Block> lines = new ArrayList<>();
        signing.asked().stream()
                .filter(due -> meeting(due).isEmpty())
                .forEach(due -> lines.add(new SignatureLine(
                        capital(due.words().words())
                                + (due.covers().equals(Substance.WHOLE) ? "" : ": " + covered(due.covers())),
                        "by " + whom(due))));
        lines.add(new SignatureLine("Handed over", "by the integrator"));
        return new Section("", "To sign in ink", lines);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
