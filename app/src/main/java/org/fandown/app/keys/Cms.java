package org.fandown.app.keys;

import java.io.IOException;
import java.security.PublicKey;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bouncycastle.asn1.ASN1Encodable;
import org.bouncycastle.asn1.ASN1EncodableVector;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.ASN1InputStream;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.DERNull;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.cms.CMSObjectIdentifiers;
import org.bouncycastle.asn1.cms.ContentInfo;
import org.bouncycastle.asn1.cms.IssuerAndSerialNumber;
import org.bouncycastle.asn1.cms.SignedData;
import org.bouncycastle.asn1.cms.SignerIdentifier;
import org.bouncycastle.asn1.cms.SignerInfo;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.nist.NISTObjectIdentifiers;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.asn1.x509.Certificate;
import org.bouncycastle.asn1.x9.X9ObjectIdentifiers;
import org.fandown.app.files.Sha256;

/**
 * The one form in which signatures are written here: CMS, apart from what is signed, one signer,
 * SHA-256, DER. What is read is written again and compared, so that nothing in it can be otherwise.
 *
 * <p><i>Source:</i> RFC 5652 (CMS), RFC 5035 (signing-certificate-v2), ETSI EN 319 142-1, 6.3
 * (PAdES baseline B-B). The moment is no attribute: it stands in the document, as the baseline
 * wants.
 */
final class Cms {
    private static final AlgorithmIdentifier SHA256 =
            new AlgorithmIdentifier(NISTObjectIdentifiers.id_sha256);
    private static final AlgorithmIdentifier RSA =
            new AlgorithmIdentifier(PKCSObjectIdentifiers.rsaEncryption, DERNull.INSTANCE);
    private static final AlgorithmIdentifier EC =
            new AlgorithmIdentifier(X9ObjectIdentifiers.ecdsa_with_SHA256);

    private final List<X509Certificate> chain;
    private final byte[] digest;
    private final byte[] value;

    /**
     * Puts one together.
     *
     * @param chain the certificate of the signer, then those that vouch for it
     * @param digest SHA-256 of what is signed
     * @param value the signature of the {@linkplain #attributes attributes}
     */
    Cms(List<X509Certificate> chain, byte[] digest, byte[] value) {
        this.chain = List.copyOf(chain);
        this.digest = digest.clone();
        this.value = value.clone();
    }

    List<X509Certificate> chain() {
        return chain;
    }

    byte[] digest() {
        return digest.clone();
    }

    byte[] value() {
        return value.clone();
    }

    /** What is really signed: the digest, its kind and the certificates. DER. */
    static byte[] attributes(List<X509Certificate> chain, byte[] digest) throws IOException {
        return set(chain, digest).getEncoded(ASN1Encoding.DER);
    }

    private static DERSet set(List<X509Certificate> chain, byte[] digest) {
        List<ESSCertIDv2> ids = new ArrayList<>();
        for (X509Certificate each : chain) {
            ids.add(new ESSCertIDv2(sha256(each)));
        }
        ASN1EncodableVector all = new ASN1EncodableVector();
        all.add(attribute(CMSAttributes.contentType, CMSObjectIdentifiers.data));
        all.add(attribute(CMSAttributes.messageDigest, new DEROctetString(digest)));
        all.add(
                attribute(
                        PKCSObjectIdentifiers.id_aa_signingCertificateV2,
                        new SigningCertificateV2(ids.toArray(new ESSCertIDv2[0]))));
        return new DERSet(all);
    }

    private static Attribute attribute(ASN1ObjectIdentifier type, ASN1Encodable value) {
        return new Attribute(type, new DERSet(value));
    }

    private static byte[] sha256(X509Certificate certificate) {
        return Sha256.begin().digest(Certificates.encoded(certificate));
    }

    /** The name of the algorithm for a key, as the Java library calls it. */
    static String algorithm(PublicKey key) {
        return key.getAlgorithm().equals("EC") ? "SHA256withECDSA" : "SHA256withRSA";
    }

    /** The whole of it, DER. */
    byte[] encoded() throws IOException {
        Certificate first = certificate(chain.get(0));
        SignerInfo signer =
                new SignerInfo(
                        new SignerIdentifier(
                                new IssuerAndSerialNumber(
                                        first.getIssuer(), first.getSerialNumber().getValue())),
                        SHA256,
                        set(chain, digest),
                        chain.get(0).getPublicKey().getAlgorithm().equals("EC") ? EC : RSA,
                        new DEROctetString(value),
                        null);
        ASN1EncodableVector certificates = new ASN1EncodableVector();
        for (X509Certificate each : chain) {
            certificates.add(certificate(each));
        }
        SignedData data =
                new SignedData(
                        new DERSet(SHA256),
                        new ContentInfo(CMSObjectIdentifiers.data, null),
                        new DERSet(certificates),
                        null,
                        new DERSet(signer));
        return new ContentInfo(CMSObjectIdentifiers.signedData, data).getEncoded(ASN1Encoding.DER);
    }

    private static Certificate certificate(X509Certificate certificate) {
        return Certificate.getInstance(Certificates.encoded(certificate));
    }

    /**
     * Reads a signature.
     *
     * @throws IOException if it has not this form
     */
    static Cms read(byte[] bytes) throws IOException {
        try (ASN1InputStream in = new ASN1InputStream(bytes)) {
            ContentInfo info = ContentInfo.getInstance(in.readObject());
            SignedData data = SignedData.getInstance(info.getContent());
            SignerInfo signer = SignerInfo.getInstance(data.getSignerInfos().getObjectAt(0));
            AttributeTable signed = new AttributeTable(signer.getAuthenticatedAttributes());
            byte[] digest =
                    ASN1OctetString.getInstance(one(signed, CMSAttributes.messageDigest))
                            .getOctets();
            SigningCertificateV2 ids =
                    SigningCertificateV2.getInstance(
                            one(signed, PKCSObjectIdentifiers.id_aa_signingCertificateV2));
            return new Cms(inOrder(data, ids), digest, signer.getEncryptedDigest().getOctets());
        } catch (RuntimeException | CertificateException e) {
            throw new IOException("It is no signature of the form that is used here.", e);
        }
    }

    private static ASN1Encodable one(AttributeTable table, ASN1ObjectIdentifier type)
            throws IOException {
        Attribute attribute = table.get(type);
        if (attribute == null || attribute.getAttrValues().size() != 1) {
            throw new IOException("It lacks the attribute " + type + ".");
        }
        return attribute.getAttrValues().getObjectAt(0);
    }

    private static List<X509Certificate> inOrder(SignedData data, SigningCertificateV2 ids)
            throws IOException, CertificateException {
        Map<String, X509Certificate> there = new LinkedHashMap<>();
        for (ASN1Encodable each : data.getCertificates()) {
            X509Certificate certificate =
                    Certificates.of(each.toASN1Primitive().getEncoded(ASN1Encoding.DER));
            there.put(Certificates.fingerprint(certificate), certificate);
        }
        List<X509Certificate> chain = new ArrayList<>();
        for (ESSCertIDv2 id : ids.getCerts()) {
            X509Certificate named = there.get(java.util.HexFormat.of().formatHex(id.getCertHash()));
            if (named == null) {
                throw new IOException("A certificate in it is not the one it was signed with.");
            }
            chain.add(named);
        }
        return List.copyOf(chain);
    }
}
