package org.fandown.app.keys;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.security.Signature;
import java.security.cert.X509Certificate;
import java.security.interfaces.RSAPublicKey;
import java.util.Arrays;
import java.util.Optional;

/**
 * What a signature proves.
 *
 * @param signer the certificate of who signed just these bytes, empty if that is not proven
 * @param problem what is wrong, empty if nothing is
 */
public record Checked(Optional<X509Certificate> signer, String problem) {
    /** Shorter RSA keys can be broken, bits. */
    private static final int LEAST_BITS = 2048;

    private static final String OTHER_FORM =
            "the signature is not in the form that is written here";

    /**
     * Checks a signature.
     *
     * @param digest SHA-256 of what is said to be signed
     * @param signature the signature as it stands in a document: CMS, filled up with zeros
     */
    public static Checked of(byte[] digest, byte[] signature) {
        try {
            Cms read = Cms.read(signature);
            if (!Arrays.equals(filled(read.encoded(), signature.length), signature)) {
                return bad(OTHER_FORM);
            }
            PublicKey key = read.chain().get(0).getPublicKey();
            if (key instanceof RSAPublicKey rsa && rsa.getModulus().bitLength() < LEAST_BITS) {
                return bad("the signer's key is shorter than " + LEAST_BITS + " bits");
            }
            Signature check = Signature.getInstance(Cms.algorithm(key));
            check.initVerify(key);
            check.update(Cms.attributes(read.chain(), read.digest()));
            if (!check.verify(read.value())) {
                return bad("the signature was not made by the key of its certificate");
            }
            return MessageDigest.isEqual(read.digest(), digest)
                    ? new Checked(Optional.of(read.chain().get(0)), "")
                    : bad("the document is not the one that was signed: its bytes were changed");
        } catch (IOException | GeneralSecurityException e) {
            return bad(OTHER_FORM);
        }
    }

    /**
     * Whose certificate a signature names, whether or not it is sound; empty if none can be read.
     */
    public static Optional<X509Certificate> named(byte[] signature) {
        try {
            return Optional.of(Cms.read(signature).chain().get(0));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static byte[] filled(byte[] bytes, int length) {
        return bytes.length > length ? bytes : Arrays.copyOf(bytes, length);
    }

    private static Checked bad(String problem) {
        return new Checked(Optional.empty(), problem);
    }
}
