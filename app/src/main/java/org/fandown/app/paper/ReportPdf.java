package org.fandown.app.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.fandown.app.files.FileWriteException;
import org.fandown.app.files.WholeFile;
import org.fandown.app.keys.SiteKey;

/**
 * Prints the report of a judgement as a PDF document: one page where possible, the same content
 * attached as {@code inspection.json}. The same content gives the same bytes.
 */
public final class ReportPdf {
    private ReportPdf() {}

    /**
     * Writes a report to a file. The file appears whole or not at all; an older one is replaced.
     *
     * @param content what to print
     * @param file where to write it
     * @throws FileWriteException if the file cannot be written
     */
    public static void write(ReportContent content, Path file) {
        WholeFile.write("report", file, bytes(content));
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

    /**
     * Prints a report and signs it.
     *
     * @param content what to print; the page says by whose key it is signed
     * @param key by what to sign
     * @param moment when, as the site says
     * @return the document
     */
    public static byte[] signed(ReportContent content, SiteKey key, OffsetDateTime moment) {
        try {
            return Signing.sign(bytes(content.to(Optional.of(Signer.of(key)))), key, moment);
        } catch (IOException e) {
            throw new UncheckedIOException("The document could not be signed.", e);
        }
    }

    static byte[] bytes(ReportContent content) {
        try {
            return Press.print(content);
        } catch (IOException e) {
            throw new UncheckedIOException("The page could not be set.", e);
        }
    }
}
