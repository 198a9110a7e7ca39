package org.cellfile.subject.signoff;

import java.nio.charset.StandardCharsets;

/** The text over which a signature is made. One line for each matter, so that it can be checked with any tool that knows Ed25519. */
public final class SigningMessage {

    private SigningMessage() {}

    /**
     * In UTF-8, each line ended by a line feed.
     *
     * @param cellId the cell's short name
     * @param signer the person's name, not the tag
     */
    public static byte[] of(String cellId, String signer, SignOff signOff) {
        return of(
                cellId,
                signOff.covers().characters(),
                signOff.digest().value().orElse(""),
                signOff.words().characters(),
                signer,
                signOff.role().characters(),
                signOff.on().characters());
    }

    /** The same of a sign-off that stands nowhere yet. */
    public static byte[] of(
            String cellId, String covers, String digest, String words, String signer, String role, String on) {
        return String.join(
                        "\n",
                        "sign-off 1",
                        "cell: " + cellId,
                        "covers: " + covers,
                        "digest: " + digest,
                        "words: " + words,
                        "by: " + signer,
                        "role: " + role,
                        "on: " + on,
                        "")
                .getBytes(StandardCharsets.UTF_8);
    }
}
