package org.fandown.app.keys;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.cert.X509Certificate;
import java.util.List;
import org.fandown.app.files.Sha256;

/**
 * The key of a site, by which it signs what it prints, with the certificate by which others check.
 * Immutable; it can be used by several threads.
 */
public final class SiteKey {
    private final PrivateKey key;
    private final List<X509Certificate> chain;

    SiteKey(PrivateKey key, List<X509Certificate> chain) {
        this.key = key;
        this.chain = List.copyOf(chain);
    }

    /** The certificate of the key. */
    public X509Certificate certificate() {
        return chain.get(0);
    }

    /**
     * Signs some bytes. The same key gives the same signature for the same bytes if it is an RSA
     * key, as a key made here is.
     *
     * @param bytes what is signed
     * @return the signature apart from the bytes: CMS, DER, with the certificate inside
     * @throws KeyException if the key is of a kind that cannot sign
     */
    public byte[] sign(byte[] bytes) {
        try {
            byte[] digest = Sha256.begin().digest(bytes);
            Signature signature =
                    Signature.getInstance(Cms.algorithm(certificate().getPublicKey()));
            signature.initSign(key);
            signature.update(Cms.attributes(chain, digest));
            return new Cms(chain, digest, signature.sign()).encoded();
        } catch (GeneralSecurityException | IOException e) {
            throw new KeyException(
                    "The key of '"
                            + Certificates.name(certificate())
                            + "' cannot sign: "
                            + e.getMessage()
                            + ". Allowed: an RSA or EC key. Next: name another key file.",
                    e);
        }
    }
}
