package org.cellfile.subject.signoff;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.SignatureException;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.Optional;

/** Ed25519 of RFC 8032, as the Java platform has it. */
public final class Ed25519 {

    private static final String NAME = "Ed25519";

    private Ed25519() {}

    /**
     * A public key.
     *
     * @param base64 its SubjectPublicKeyInfo (RFC 8410) in Base64; empty when it is something else
     */
    public static Optional<PublicKey> publicKey(String base64) {
        try {
            PublicKey key = KeyFactory.getInstance(NAME)
                    .generatePublic(new X509EncodedKeySpec(Base64.getDecoder().decode(base64)));
            Signature.getInstance(NAME).initVerify(key); // only now it shows whether it is a point of the curve
            return Optional.of(key);
        } catch (IllegalArgumentException | GeneralSecurityException noSuchKey) {
            return Optional.empty();
        }
    }

    /** In Base64. */
    public static String sign(PrivateKey key, byte[] message) {
        try {
            Signature signature = Signature.getInstance(NAME);
            signature.initSign(key);
            signature.update(message);
            return Base64.getEncoder().encodeToString(signature.sign());
        } catch (GeneralSecurityException ours) {
            throw new IllegalStateException("this is a defect in the generator", ours);
        }
    }

    /**
     * True when the signature is that of the key's owner over the message.
     *
     * @param base64 the signature; false when it is something else
     */
    public static boolean holds(PublicKey key, byte[] message, String base64) {
        try {
            Signature signature = Signature.getInstance(NAME);
            signature.initVerify(key);
            signature.update(message);
            return signature.verify(Base64.getDecoder().decode(base64));
        } catch (IllegalArgumentException | SignatureException noSignature) {
            return false;
        } catch (GeneralSecurityException ours) {
            throw new IllegalStateException("this is a defect in the generator", ours);
        }
    }
}
