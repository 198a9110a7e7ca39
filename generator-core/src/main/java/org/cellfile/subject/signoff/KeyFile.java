package org.cellfile.subject.signoff;

import java.io.IOException;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.NoSuchAlgorithmException;
import java.security.PrivateKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.crypto.Cipher;
import javax.crypto.EncryptedPrivateKeyInfo;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * The half of a key that signs, as PEM files hold it (RFC 7468): a PKCS #8 key, plain or encrypted with a passphrase (PBES2 of RFC
 * 8018).
 */
public final class KeyFile {

    private static final Pattern PEM = Pattern.compile(
            "-----BEGIN (ENCRYPTED )?PRIVATE KEY-----\\s+([A-Za-z0-9+/=\\s]+?)-----END (ENCRYPTED )?PRIVATE KEY-----");

    private final boolean encrypted;
    private final byte[] content;

    private KeyFile(boolean encrypted, byte[] content) {
        this.encrypted = encrypted;
        this.content = content;
    }

    /** Why a key cannot be used, as a sentence without full stop. */
    public static final class Unusable extends Exception {
        private static final long serialVersionUID = 1L;

        public Unusable(String sentence) {
            super(sentence);
        }
    }

    /** Empty when the text holds no such key. */
    public static Optional<KeyFile> of(String text) {
        Matcher pem = PEM.matcher(text);
        if (!pem.find()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new KeyFile(pem.group(1) != null, Base64.getMimeDecoder().decode(pem.group(2))));
        } catch (IllegalArgumentException notBase64) {
            return Optional.empty();
        }
    }

    /** True when a passphrase is needed. */
    public boolean encrypted() {
        return encrypted;
    }

    /**
     * The key.
     *
     * @param passphrase of no meaning to a key that is not encrypted
     */
    public PrivateKey open(char[] passphrase) throws Unusable {
        PKCS8EncodedKeySpec plain = encrypted ? decrypted(passphrase) : new PKCS8EncodedKeySpec(content);
        try {
            return KeyFactory.getInstance("Ed25519").generatePrivate(plain);
        } catch (GeneralSecurityException another) {
            throw new Unusable("the key file holds a key of another sort; sign-offs are signed with Ed25519");
        }
    }

    private PKCS8EncodedKeySpec decrypted(char[] passphrase) throws Unusable {
        for (char character : passphrase) {
            if (character > '~') {
                // The platform would drop half of such a character and then not open the file.
                throw new Unusable(
                        "the passphrase holds a character beyond ASCII, with which no key can be opened here");
            }
        }
        try {
            EncryptedPrivateKeyInfo info = new EncryptedPrivateKeyInfo(content);
            AlgorithmParameters parameters = info.getAlgParameters();
            if (parameters == null) {
                throw new Unusable("the key file is encrypted in a way that is not known here; PBES2 with AES is");
            }
            String scheme = parameters.toString(); // the name in the file says PBES2 only
            Cipher cipher = Cipher.getInstance(scheme);
            cipher.init(
                    Cipher.DECRYPT_MODE,
                    SecretKeyFactory.getInstance(scheme).generateSecret(new PBEKeySpec(passphrase)),
                    parameters);
            return info.getKeySpec(cipher);
        } catch (NoSuchAlgorithmException unknown) {
            throw new Unusable("the key file is encrypted in a way that is not known here; PBES2 with AES is");
        } catch (GeneralSecurityException | IOException wrong) {
            throw new Unusable("the key file cannot be opened with this passphrase");
        }
    }
}
