package org.fandown.app.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The two fonts of the report, read once for all attempts to fit it on a page. */
final class Fonts implements Closeable {
    /** The name of the font family in the style sheet. */
    private static final String FAMILY = "Fandown Sans";

    private static final int NORMAL = 400;
    private static final int BOLD = 700;

    private final TrueTypeFont book;
    private final TrueTypeFont bold;

    Fonts() throws IOException {
        book = read("DejaVuSansCondensed.ttf");
        bold = read("DejaVuSansCondensed-Bold.ttf");
    }

    private static TrueTypeFont read(String file) throws IOException {
        try (InputStream in = Fonts.class.getResourceAsStream("fonts/" + file)) {
            byte[] bytes = Objects.requireNonNull(in, file).readAllBytes();
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
            // Joined letters such as "fi" would be found and copied as one odd character.
            font.setEnableGsub(false);
            return font;
        }
    }

    /** Lets a document use the fonts; only the letters it needs are put into it. */
    void lend(PdfRendererBuilder builder, PDDocument document) throws IOException {
        use(builder, PDType0Font.load(document, book, true), NORMAL);
        use(builder, PDType0Font.load(document, bold, true), BOLD);
    }

    private static void use(PdfRendererBuilder builder, PDType0Font font, int weight) {
        builder.useFont(new PDFontSupplier(font), FAMILY, weight, FontStyle.NORMAL, true);
    }

    @Override
    public void close() throws IOException {
        book.close();
        bold.close();
    }
}
