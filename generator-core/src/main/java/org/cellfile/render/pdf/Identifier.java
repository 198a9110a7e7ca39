package org.cellfile.render.pdf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The two strings of {@code /ID} (ISO 32000-2, 14.4), 32 bytes each, written as hexadecimal digits near the end of the file.
 *
 * <p>The first is a SHA-256 of what was laid out; it is the same for the same content. The second is the SHA-256 of all bytes of the
 * finished file in which its own 64 digits are zeros. Whoever wants to check it replaces these digits by the digit 0 and has the
 * SHA-256 of the file computed by any tool. A byte changed afterwards is noticed thereby; somebody who changes the file and
 * then writes a new identifier is not, so that it proves nothing about who made the file.
 */
public final class Identifier {

    /** What the second string is worth. */
    public enum Worth {
        /** No byte was changed since the file was finished, unless the identifier was written anew. */
        HOLDS,
        /** Another file than the one that was finished. */
        DIFFERS,
        /** The file has none of this form, or more than one. */
        NONE
    }

    private static final String BEFORE = "/ID [<";
    private static final String BETWEEN = "> <";
    private static final String AFTER = ">]";
    private static final int BYTES = 32;
    private static final int DIGITS = BYTES * 2;

    private Identifier() {}

    /** Gives the document its first string and room for the second. */
    static void announce(PDDocument document, byte[] content) {
        COSArray strings = new COSArray();
        for (byte[] bytes : new byte[][] {sha256().digest(content), new byte[BYTES]}) {
            strings.add(new COSString(bytes, true));
        }
        strings.setDirect(true);
        document.getDocument().getTrailer().setItem(COSName.ID, strings);
    }

    /** Writes the second string into a saved file, in place; any that stands there is replaced. */
    public static void seal(byte[] file) {
        int at = place(file);
        if (at < 0) {
            throw new IllegalStateException("the file has no room for an identifier");
        }
        System.arraycopy(digits(file, at), 0, file, at, DIGITS);
    }

    /** Recomputes the second string. */
    public static Worth of(byte[] file) {
        int at = place(file);
        if (at < 0) {
            return Worth.NONE;
        }
        return Arrays.equals(digits(file, at), Arrays.copyOfRange(file, at, at + DIGITS)) ? Worth.HOLDS : Worth.DIFFERS;
    }

    /** What belongs where the digits of the second string begin. */
    private static byte[] digits(byte[] file, int at) {
        MessageDigest digest = sha256();
        digest.update(file, 0, at);
        digest.update("0".repeat(DIGITS).getBytes(StandardCharsets.US_ASCII));
        digest.update(file, at + DIGITS, file.length - at - DIGITS);
        return HexFormat.of().withUpperCase().formatHex(digest.digest()).getBytes(StandardCharsets.US_ASCII);
    }

    /** Where the digits of the second string begin; negative when there are none, or more than one of this form. */
    private static int place(byte[] file) {
        String text =
                new String(file, StandardCharsets.ISO_8859_1); // one byte, one character: it is searched fastest so
        int found = -1;
        for (int at = text.indexOf(BEFORE); at >= 0; at = text.indexOf(BEFORE, at + 1)) {
            int second = at + BEFORE.length() + DIGITS + BETWEEN.length();
            if (text.startsWith(BETWEEN, second - BETWEEN.length()) && text.startsWith(AFTER, second + DIGITS)) {
                if (found >= 0) {
                    return -1;
                }
                found = second;
            }
        }
        return found;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
