package org.fandown.app.keys;

import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import org.bouncycastle.asn1.x500.RDN;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x500.style.IETFUtils;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.jcajce.JcaX509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.ContentSigner;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** Makes certificates that a key signs for itself. */
final class CertificateMaker {
    /** Records are looked at years later. */
    private static final int YEARS = 20;

    private static final int SERIAL_BITS = 127;

    private CertificateMaker() {}

    /** A certificate for signing alone, from now on. */
    static X509Certificate make(KeyPair pair, String site, Instant now)
            throws GeneralSecurityException {
        X500Name name = new X500NameBuilder(BCStyle.INSTANCE).addRDN(BCStyle.CN, site).build();
        OffsetDateTime from = now.truncatedTo(ChronoUnit.SECONDS).atOffset(ZoneOffset.UTC);
        JcaX509v3CertificateBuilder builder =
                new JcaX509v3CertificateBuilder(
                        name,
                        new BigInteger(SERIAL_BITS, new SecureRandom()).setBit(SERIAL_BITS - 1),
                        Date.from(from.toInstant()),
                        Date.from(from.plusYears(YEARS).toInstant()),
                        name,
                        pair.getPublic());
        try {
            JcaX509ExtensionUtils utils = new JcaX509ExtensionUtils();
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            builder.addExtension(
                    Extension.keyUsage,
                    true,
                    new KeyUsage(KeyUsage.digitalSignature | KeyUsage.nonRepudiation));
            builder.addExtension(
                    Extension.subjectKeyIdentifier,
                    false,
                    utils.createSubjectKeyIdentifier(pair.getPublic()));
            ContentSigner signer =
                    new JcaContentSignerBuilder("SHA256withRSA").build(pair.getPrivate());
            return Certificates.of(builder.build(signer).getEncoded());
        } catch (IOException | OperatorCreationException e) {
            throw new GeneralSecurityException(e);
        }
    }

    /** The name in a certificate, or all that it says of its holder if it has none. */
    static String commonName(X509Certificate certificate) {
        try {
            RDN[] names =
                    new JcaX509CertificateHolder(certificate).getSubject().getRDNs(BCStyle.CN);
            return names.length == 0
                    ? certificate.getSubjectX500Principal().getName()
                    : IETFUtils.valueToString(names[0].getFirst().getValue());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("A certificate that was read can be written.", e);
        }
    }
}
