package org.cellfile.dossier;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** The SHA-256 of a text in UTF-8, or of bytes. */
public final class Digest {

    private Digest() {}

    /** In lower-case hexadecimal digits. */
    public static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /** In lower-case hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /**
     * In lower-case hexadecimal digits, without holding all of it at once.
     *
     * @param most how many bytes are read; a stream that holds more has no digest here
     */
    public static Optional<String> sha256(InputStream stream, long most) throws IOException {
        MessageDigest digest = sha256();
        byte[] buffer = new byte[1 << 16];
        long left = most;
        for (int read = stream.read(buffer); read >= 0; read = stream.read(buffer)) {
            left -= read;
            if (left < 0) {
                return Optional.empty();
            }
            digest.update(buffer, 0, read);
        }
        return Optional.of(HexFormat.of().formatHex(digest.digest()));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
