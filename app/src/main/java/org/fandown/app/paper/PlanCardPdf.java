package org.fandown.app.paper;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.fandown.app.files.FileWriteException;
import org.fandown.app.files.WholeFile;
import org.fandown.procedure.Plan;

/** Prints a plan as a card of one page. The same plan gives the same bytes. */
public final class PlanCardPdf {
    /** Letter sizes tried, from large to small (points). */
    private static final double[] SIZES = {9.5, 8.6, 7.8, 7.1, 6.5, 6.0, 5.5};

    private PlanCardPdf() {}

    /**
     * Writes a card to a file. The file appears whole or not at all; an older one is replaced.
     *
     * @throws FileWriteException if the file cannot be written
     */
    public static void write(Plan plan, Path file) {
        try {
            WholeFile.write("card", file, bytes(plan));
        } catch (IOException e) {
            throw new UncheckedIOException("The page could not be set.", e);
        }
    }

    private static byte[] bytes(Plan plan) throws IOException {
        Press.prepare();
        try (Fonts fonts = new Fonts()) {
            for (double points : SIZES) {
                Optional<byte[]> page = print(plan, fonts, points, 1);
                if (page.isPresent()) {
                    return page.get();
                }
            }
            return print(plan, fonts, SIZES[SIZES.length - 1], Integer.MAX_VALUE).orElseThrow();
        }
    }

    private static Optional<byte[]> print(Plan plan, Fonts fonts, double points, int mostPages)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            builder.withW3cDocument(PlanCardPage.of(plan, points), null);
            builder.withProducer("Fandown");
            fonts.lend(builder, document);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                if (renderer.getRootBox().getLayer().getPages().size() > mostPages) {
                    return Optional.empty();
                }
                renderer.createPDFWithoutClosing();
            }
            finish(document, plan);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return Optional.of(bytes.toByteArray());
        }
    }

    /** What would differ from run to run is set to the day of the plan. */
    private static void finish(PDDocument document, Plan plan) {
        GregorianCalendar day =
                GregorianCalendar.from(plan.set().rules().day().atStartOfDay(ZoneOffset.UTC));
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(PlanCardPage.title(plan));
        information.setProducer("Fandown");
        information.setCreator("Fandown");
        information.setCreationDate(day);
        information.setModificationDate(day);
        document.setDocumentId((long) plan.tenths());
    }
}
