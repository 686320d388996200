package org.fandown.app.paper;

import java.io.IOException;
import java.security.MessageDigest;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.fandown.app.files.Sha256;
import org.fandown.app.keys.Checked;

/**
 * The one signature of a document, taken apart without trust in what the document says of itself.
 */
final class SignatureField {
    private final byte[] signature;
    private final byte[] digest;
    private final OffsetDateTime moment;

    private SignatureField(byte[] signature, byte[] digest, OffsetDateTime moment) {
        this.signature = signature;
        this.digest = digest;
        this.moment = moment;
    }

    /** The bytes of the signature, filled up with zeros. */
    byte[] signature() {
        return signature.clone();
    }

    /** When it was signed, as the signer says. */
    OffsetDateTime moment() {
        return moment;
    }

    /** What the signature proves of all other bytes of the file. */
    Checked check() {
        return Checked.of(digest, signature);
    }

    /** The document has a signature that is not as it must be. */
    static final class UnsoundException extends Exception {
        private static final long serialVersionUID = 1L;

        UnsoundException(String problem) {
            super(problem);
        }
    }

    /**
     * Looks for the signature.
     *
     * @param document the document
     * @param file its bytes
     * @return empty if it is not signed
     * @throws UnsoundException if there are several, or it does not cover all the rest of the file
     */
    static Optional<SignatureField> of(PDDocument document, byte[] file)
            throws IOException, UnsoundException {
        List<PDSignature> all = document.getSignatureDictionaries();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        require(all.size() == 1, "it has " + all.size() + " signatures where one is expected");
        PDSignature found = all.get(0);
        require(
                Signing.KIND.getName().equals(found.getSubFilter()),
                "the signature is of the kind "
                        + found.getSubFilter()
                        + " where "
                        + Signing.KIND.getName()
                        + " is expected");
        int[] range = found.getByteRange();
        require(
                range.length == 4
                        && range[0] == 0
                        && range[1] > 0
                        && range[2] > range[1] + 1
                        && range[3] > 0
                        && (long) range[2] + range[3] <= file.length,
                "what the signature says it covers is not possible");
        long behind = file.length - ((long) range[2] + range[3]);
        require(
                behind == 0,
                behind + " bytes were put behind the signed part; what they change is not signed");
        byte[] signature = hole(file, range[1], range[2]);
        require(
                MessageDigest.isEqual(signature, found.getContents()),
                "the part it leaves out is not the signature");
        MessageDigest digest = Sha256.begin();
        digest.update(file, 0, range[1]);
        digest.update(file, range[2], range[3]);
        return Optional.of(new SignatureField(signature, digest.digest(), moment(found)));
    }

    /** The part that is left out must be the digits of the signature, written in one way. */
    private static byte[] hole(byte[] file, int from, int to) throws UnsoundException {
        StringBuilder digits = new StringBuilder(to - from);
        boolean sound = file[from] == '<' && file[to - 1] == '>' && (to - from) % 2 == 0;
        for (int i = from + 1; sound && i < to - 1; i++) {
            char c = (char) file[i];
            sound = (c >= '0' && c <= '9') || (c >= 'A' && c <= 'F');
            digits.append(c);
        }
        require(sound, "the signature is not written in capital hexadecimal digits");
        return HexFormat.of().parseHex(digits);
    }

    private static OffsetDateTime moment(PDSignature found) throws UnsoundException {
        Calendar date = found.getSignDate();
        require(date != null, "the signature gives no moment");
        return date.toInstant().atOffset(ZoneOffset.UTC);
    }

    private static void require(boolean sound, String problem) throws UnsoundException {
        if (!sound) {
            throw new UnsoundException(problem);
        }
    }
}
