package org.fandown.app.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.fandown.app.files.FileWriteException;
import org.fandown.app.files.WholeFile;

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

    private static byte[] bytes(ReportContent content) {
        try {
            return Press.print(content);
        } catch (IOException e) {
            throw new UncheckedIOException("The page could not be set.", e);
        }
    }
}
