package org.fandown.app.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Prints the report of a judgement as a PDF document: one page where possible, the same content
 * attached as {@code inspection.json}. The same content gives the same bytes.
 */
public final class ReportPdf {
    /** The name of the font family in the style sheet. */
    private static final String FAMILY = "Fandown Sans";

    private static final int NORMAL = 400;
    private static final int BOLD = 700;

    static {
        // The library reports on standard error, which belongs to the commands.
        XRLog.setLoggingEnabled(false);
        NoSystemFonts.use();
    }

    private ReportPdf() {}

    /**
     * Writes a report to a file. The file appears whole or not at all; an older one is replaced.
     *
     * @param content what to print
     * @param file where to write it
     * @throws ReportWriteException if the file cannot be written
     */
    public static void write(ReportContent content, Path file) {
        WholeFile.write(file, bytes(content));
    }

    /**
     * Writes a report. The stream is not closed.
     *
     * @param content what to print
     * @param out where to write it
     * @throws IOException if the stream fails
     */
    public static void write(ReportContent content, OutputStream out) throws IOException {
        out.write(bytes(content));
    }

    private static byte[] bytes(ReportContent content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            boolean printed = false;
            for (Density density : Density.values()) {
                printed = printed || print(content, density, 1, bytes);
            }
            if (!printed) {
                print(content, Density.USUAL, Integer.MAX_VALUE, bytes);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The page could not be set.", e);
        }
        return bytes.toByteArray();
    }

    /** Sets the pages, and writes them if they are not more than wanted. */
    private static boolean print(
            ReportContent content, Density density, int mostPages, ByteArrayOutputStream out)
            throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(ReportPage.of(content, density), null);
        builder.useObjectDrawerFactory(AxleDrawing.drawers());
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Fandown");
        font(builder, "DejaVuSansCondensed.ttf", NORMAL);
        font(builder, "DejaVuSansCondensed-Bold.ttf", BOLD);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            int pages = renderer.getRootBox().getLayer().getPages().size();
            if (pages > mostPages) {
                return false;
            }
            PDDocument document = renderer.getPdfDocument();
            renderer.createPDFWithoutClosing();
            Finish.apply(document, content);
            document.save(out);
            return true;
        }
    }

    private static void font(PdfRendererBuilder builder, String file, int weight) {
        builder.useFont(() -> open(file), FAMILY, weight, FontStyle.NORMAL, true);
    }

    private static InputStream open(String file) {
        return Objects.requireNonNull(ReportPdf.class.getResourceAsStream("fonts/" + file), file);
    }
}
