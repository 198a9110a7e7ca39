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
        return String.join(
                        "\n",
                        "sign-off 1",
                        "cell: " + cellId,
                        "covers: " + signOff.covers().characters(),
                        "digest: " + signOff.digest().value().orElse(""),
                        "words: " + signOff.words().characters(),
                        "by: " + signer,
                        "role: " + signOff.role().characters(),
                        "on: " + signOff.on().characters(),
                        "")
                .getBytes(StandardCharsets.UTF_8);
    }
}
