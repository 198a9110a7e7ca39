package org.cellfile.audit;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.subject.signoff.Ed25519;

/**
 * Public keys that came on another way than the PDF, each with the name of its owner. The file is PEM (RFC 7468): before each
 * {@code PUBLIC KEY} stand lines of explanation, of which the last is the owner's name.
 */
public final class TrustedKeys {

    /** The file of keys cannot be read as such. */
    static final FindingId UNREADABLE = new FindingId("audit.trusted-keys");

    private static final String BEGIN = "-----BEGIN ";
    private static final String END = "-----END ";
    private static final String DASHES = "-----";
    private static final String PUBLIC = "PUBLIC KEY";

    private final List<Key> keys;

    /** The key is kept in Base64 without line ends, which is the same for the same bytes. */
    private record Key(String owner, String base64) {}

    private TrustedKeys(List<Key> keys) {
        this.keys = keys;
    }

    /** Nobody vouches for any key. */
    public static TrustedKeys none() {
        return new TrustedKeys(List.of());
    }

    /** Reads the file. */
    public static TrustedKeys read(SourceFile file) throws Refusal {
        List<Key> keys = new ArrayList<>();
        List<String> lines = file.lines();
        String owner = "";
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.startsWith(BEGIN)) {
                int end = i + 1;
                while (end < lines.size() && !lines.get(end).strip().startsWith(END)) {
                    end++;
                }
                keys.add(key(file, i + 1, line, owner, lines.subList(i + 1, Math.min(end, lines.size()))));
                owner = "";
                i = end;
            } else if (!line.isEmpty()) {
                owner = line;
            }
        }
        if (keys.isEmpty()) {
            throw refused(file, 1, "the file holds no `" + BEGIN + PUBLIC + DASHES + "`");
        }
        return new TrustedKeys(List.copyOf(keys));
    }

    private static Key key(SourceFile file, int line, String begin, String owner, List<String> base64) throws Refusal {
        if (!begin.equals(BEGIN + PUBLIC + DASHES)) {
            throw refused(
                    file,
                    line,
                    "this is no public key but `" + begin.replace("-", "").strip() + "`");
        }
        if (owner.isEmpty()) {
            throw refused(file, line, "no line before this key says whose it is");
        }
        String joined = String.join("", base64.stream().map(String::strip).toList());
        if (Ed25519.publicKey(joined).isEmpty()) {
            throw refused(file, line, "the key of " + owner + " is not an Ed25519 public key");
        }
        return new Key(owner, inOneForm(joined));
    }

    private static Refusal refused(SourceFile file, int line, String sentence) {
        return new Refusal(Finding.refuses(
                UNREADABLE,
                "",
                new Span(file, line, 1, 0),
                sentence,
                "write the owner's name on a line of its own and below it the public key between `" + BEGIN + PUBLIC
                        + DASHES + "` and `" + END + PUBLIC + DASHES + "`, as its owner handed it over in person"));
    }

    /** True when no keys came from outside. */
    public boolean isEmpty() {
        return keys.isEmpty();
    }

    /** The names under which a key is trusted; none when it is not. */
    List<String> owners(String base64) {
        return keys.stream()
                .filter(key -> key.base64().equals(inOneForm(base64)))
                .map(Key::owner)
                .toList();
    }

    private static String inOneForm(String base64) {
        try {
            return Base64.getEncoder().encodeToString(Base64.getDecoder().decode(base64));
        } catch (IllegalArgumentException noBase64) {
            return "";
        }
    }
}
