package org.fandown.app.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.ExternalSigningSupport;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.fandown.app.keys.Certificates;
import org.fandown.app.keys.SiteKey;

/**
 * Puts the signature of a site on a finished document, behind its bytes, which stay as they are.
 *
 * <p><i>Source:</i> ISO 32000-1:2008, 12.8 (signatures); ETSI EN 319 142-1, 6.3 (PAdES baseline
 * B-B); ISO 19005-3:2012, 6.4.3.
 */
final class Signing {
    /** What the signature of a site is of: {@code ETSI.CAdES.detached}. */
    static final COSName KIND = COSName.getPDFName("ETSI.CAdES.detached");

    /** Room for a signature with its certificates, bytes. */
    private static final int ROOM = 8192;

    private Signing() {}

    /**
     * Signs a document.
     *
     * @param pdf the document
     * @param key by what
     * @param moment when, which is what the site says and nobody else vouches for
     * @return the same bytes and the signature behind them
     */
    static byte[] sign(byte[] pdf, SiteKey key, OffsetDateTime moment) throws IOException {
        return put(pdf, Certificates.name(key.certificate()), moment, key::sign);
    }

    /**
     * Puts a signature that is there already on a document once more.
     *
     * @param pdf the document
     * @param site the name of the site
     * @param moment when it was signed
     * @param signature the signature
     */
    static byte[] again(byte[] pdf, String site, OffsetDateTime moment, byte[] signature)
            throws IOException {
        return put(pdf, site, moment, bytes -> signature);
    }

    private static byte[] put(
            byte[] pdf, String site, OffsetDateTime moment, UnaryOperator<byte[]> signer)
            throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf);
                SignatureOptions options = new SignatureOptions()) {
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(KIND);
            signature.setName(site);
            signature.setReason("The site keeps the record this report shows");
            signature.setSignDate(GregorianCalendar.from(moment.atZoneSameInstant(ZoneOffset.UTC)));
            options.setPreferredSignatureSize(ROOM);
            document.addSignature(signature, options);
            // The library makes the identity of this state of the document from this number.
            document.setDocumentId(moment.toEpochSecond());
            ByteArrayOutputStream out = new ByteArrayOutputStream(pdf.length + 4 * ROOM);
            ExternalSigningSupport signing = document.saveIncrementalForExternalSigning(out);
            signing.setSignature(signer.apply(signing.getContent().readAllBytes()));
            return out.toByteArray();
        }
    }
}
