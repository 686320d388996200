package org.fandown.app.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
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
        return Press.set(
                fonts,
                mostPages,
                builder -> builder.withW3cDocument(PlanCardPage.of(plan, points), null),
                document -> finish(document, plan));
    }

    /** What would differ from run to run is set to the day of the plan. */
    private static void finish(PDDocument document, Plan plan) throws IOException {
        GregorianCalendar day =
                GregorianCalendar.from(plan.set().rules().day().atStartOfDay(ZoneOffset.UTC));
        Finish.name(document, PlanCardPage.title(plan), day);
        Archive.mark(document, Archive.Level.UNICODE);
        document.setDocumentId((long) plan.tenths());
    }
}
