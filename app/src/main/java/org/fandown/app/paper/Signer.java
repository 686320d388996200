package org.fandown.app.paper;

import java.security.cert.X509Certificate;
import org.fandown.app.keys.Certificates;
import org.fandown.app.keys.SiteKey;

/**
 * By whose key a report is signed, as the page says it.
 *
 * @param site the name in the certificate
 * @param fingerprint the SHA-256 of the certificate, 64 hexadecimal digits
 */
public record Signer(String site, String fingerprint) {
    /** That of a key. */
    public static Signer of(SiteKey key) {
        return of(key.certificate());
    }

    static Signer of(X509Certificate certificate) {
        return new Signer(Certificates.name(certificate), Certificates.fingerprint(certificate));
    }
}
