package org.fandown.app.keys;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.cert.CertificateEncodingException;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.util.Base64;
import org.fandown.app.files.Sha256;

/** What others know of a key: its certificate. */
public final class Certificates {
    /** No certificate is longer, bytes. */
    private static final int MOST_BYTES = 100_000;

    private static final int LINE = 64;

    private Certificates() {}

    /**
     * Reads a certificate.
     *
     * @param file its file, PEM or DER
     * @throws KeyException if it holds none
     */
    public static X509Certificate read(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new IOException("it is longer than " + MOST_BYTES + " bytes");
            }
            return of(Files.readAllBytes(file));
        } catch (IOException | CertificateException e) {
            throw new KeyException(
                    "The certificate "
                            + file
                            + " cannot be read ("
                            + e.getMessage()
                            + "). Allowed: one X.509 certificate, PEM or DER. Next: ask the site"
                            + " for its site-certificate.pem.",
                    e);
        }
    }

    static X509Certificate of(byte[] encoded) throws CertificateException {
        return (X509Certificate)
                CertificateFactory.getInstance("X.509")
                        .generateCertificate(new ByteArrayInputStream(encoded));
    }

    /** The SHA-256 of a certificate: 64 hexadecimal digits. */
    public static String fingerprint(X509Certificate certificate) {
        return Sha256.of(encoded(certificate));
    }

    /** For whom it stands, the name alone: {@code North yard}. */
    public static String name(X509Certificate certificate) {
        return CertificateMaker.commonName(certificate);
    }

    /** The certificate in the form that most programs read. */
    static byte[] pem(X509Certificate certificate) {
        String body =
                Base64.getMimeEncoder(LINE, new byte[] {'\n'}).encodeToString(encoded(certificate));
        return ("-----BEGIN CERTIFICATE-----\n" + body + "\n-----END CERTIFICATE-----\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    static byte[] encoded(X509Certificate certificate) {
        try {
            return certificate.getEncoded();
        } catch (CertificateEncodingException e) {
            throw new IllegalStateException("A certificate that was read can be written.", e);
        }
    }
}
