package org.fandown.app.paper;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fandown.plot.Drawing;

/** Sets a report in letters as large as one page allows, or else on several pages. */
final class Press {
    /** Loggers are forgotten with their levels unless somebody holds them. */
    private static final List<Logger> QUIET =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    static {
        // The libraries report on standard error, which belongs to the commands.
        XRLog.setLoggingEnabled(false);
        QUIET.forEach(logger -> logger.setLevel(Level.OFF));
        NoSystemFonts.use();
    }

    /** Makes the library ready: it is when this class is. */
    static void prepare() {}

    private final ReportContent content;
    private final Fonts fonts;

    private Press(ReportContent content, Fonts fonts) {
        this.content = content;
        this.fonts = fonts;
    }

    static byte[] print(ReportContent content) throws IOException {
        try (Fonts fonts = new Fonts()) {
            return content.hasPagesBehind()
                    ? withPagesBehind(content, fonts)
                    : new Press(content, fonts).fitted();
        }
    }

    /**
     * The report itself on one page where possible, and the pages of its trace and photos behind
     * it.
     */
    private static byte[] withPagesBehind(ReportContent content, Fonts fonts) throws IOException {
        Press alone = new Press(content.alone(), fonts);
        for (Density density : Density.values()) {
            if (alone.at(density).isPresent()) {
                return new Press(content, fonts).print(density, Integer.MAX_VALUE).orElseThrow();
            }
        }
        return new Press(content, fonts).print(Density.USUAL, Integer.MAX_VALUE).orElseThrow();
    }

    /** The report on one page, empty if it does not fit. */
    private Optional<byte[]> at(Density density) throws IOException {
        return density.mayHold(ReportPage.letters(ReportPage.of(content, density)))
                ? print(density, 1)
                : Optional.empty();
    }

    private byte[] fitted() throws IOException {
        for (Density density : Density.values()) {
            Optional<byte[]> page = at(density);
            if (page.isPresent()) {
                return page.get();
            }
        }
        return print(Density.USUAL, Integer.MAX_VALUE).orElseThrow();
    }

    /** The document, empty if it has more pages than wanted. */
    private Optional<byte[]> print(Density density, int mostPages) throws IOException {
        try {
            return print(density, mostPages, true);
        } catch (NullPointerException e) {
            // The library fails to mark up a table that starts at the very top of a page. A report
            // without marks for screen readers is better than none.
            return print(density, mostPages, false);
        }
    }

    private DefaultObjectDrawerFactory drawers() {
        DefaultObjectDrawerFactory drawers = AxleDrawing.drawers();
        content.trace()
                .ifPresent(
                        trace ->
                                drawers.registerDrawer(
                                        ShapePen.TYPE, AxleDrawing.drawer(shapes(trace))));
        content.drawn()
                .ifPresent(
                        drawn ->
                                drawers.registerDrawer(
                                        StrokePen.TYPE,
                                        AxleDrawing.drawer(
                                                (g, element, width, height) ->
                                                        StrokePen.draw(g, drawn, width, height))));
        return drawers;
    }

    private static AxleDrawing.Pen shapes(TraceContent trace) {
        List<Drawing> drawings = trace.drawings();
        return (g, element, width, height) ->
                ShapePen.draw(g, drawings, element.getAttribute("data-number"));
    }

    private Optional<byte[]> print(Density density, int mostPages, boolean tagged)
            throws IOException {
        Archive.Level level = tagged ? Archive.Level.ACCESSIBLE : Archive.Level.UNICODE;
        return set(
                fonts,
                mostPages,
                builder -> {
                    builder.withW3cDocument(ReportPage.of(content, density), null);
                    builder.useObjectDrawerFactory(drawers());
                    builder.usePdfUaAccessibility(tagged);
                },
                document -> Finish.apply(document, content, level));
    }

    /** What is done to a document once its pages are set. */
    @FunctionalInterface
    interface Finisher {
        void finish(PDDocument document) throws IOException;
    }

    /**
     * Sets a document.
     *
     * @param fonts the fonts
     * @param mostPages how many pages it may have
     * @param page gives the page and what is special about it
     * @param finisher what is done before it is saved
     * @return its bytes, empty if it has more pages
     */
    static Optional<byte[]> set(
            Fonts fonts, int mostPages, Consumer<PdfRendererBuilder> page, Finisher finisher)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            page.accept(builder);
            builder.withProducer("Fandown");
            fonts.lend(builder, document);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                if (renderer.getRootBox().getLayer().getPages().size() > mostPages) {
                    return Optional.empty();
                }
                renderer.createPDFWithoutClosing();
            }
            finisher.finish(document);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return Optional.of(bytes.toByteArray());
        }
    }
}
