package org.fandown.app.paper;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** An address as a square that a phone's camera reads (QR code), with the address under it. */
public final class QrCode {
    /** Room around, as readers need it, modules. */
    private static final int QUIET = 4;

    /** Height of the line of text, modules. */
    private static final int LINE = 4;

    /** Width of a letter beside its size, and the largest size, modules. */
    private static final double LETTER = 0.62;

    private static final double LARGEST = 2;

    private QrCode() {}

    /**
     * Draws an address.
     *
     * @param address some hundred letters at most
     * @return a picture, SVG
     */
    public static String svg(String address) {
        BitMatrix bits = bits(address);
        int side = bits.getWidth();
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                if (bits.get(x, y)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
                + side
                + " "
                + (side + LINE)
                + "\" role=\"img\"><title>"
                + Clean.text(address)
                + "</title><rect width=\"100%\" height=\"100%\" fill=\"#fff\"/><path d=\""
                + path
                + "\" fill=\"#000\"/><text x=\""
                + side / 2.0
                + "\" y=\""
                + side
                + "\" font-size=\""
                + Math.min(LARGEST, side / (LETTER * address.length()))
                + "\" text-anchor=\"middle\" font-family=\"monospace\">"
                + Clean.text(address)
                + "</text></svg>";
    }

    private static BitMatrix bits(String address) {
        try {
            return new QRCodeWriter()
                    .encode(
                            address,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET,
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M));
        } catch (WriterException e) {
            throw new IllegalArgumentException("The address is too long for a code.", e);
        }
    }
}
