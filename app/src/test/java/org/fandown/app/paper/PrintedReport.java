package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A report as the programs of other people read it. Skips a test where they are not installed. */
public final class PrintedReport {
    private static final int PATIENCE_SECONDS = 60;
    private static final Pattern WORD =
            Pattern.compile(
                    "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\""
                            + " yMax=\"([-0-9.]+)\">(.*?)</word>");

    private final byte[] bytes;

    private PrintedReport(byte[] bytes) {
        this.bytes = bytes;
    }

    /** Prints a report. */
    public static PrintedReport of(ReportContent content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ReportPdf.write(content, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new PrintedReport(out.toByteArray());
    }

    /** A report that is there. */
    static PrintedReport of(byte[] bytes) {
        return new PrintedReport(bytes.clone());
    }

    /** What pdfsig says of its signatures. */
    String signatures() {
        return new String(run("pdfsig", "IN"), StandardCharsets.UTF_8);
    }

    /** A word with its box, in points from the upper left corner. */
    record Word(double left, double top, double right, double bottom, String text) {}

    byte[] bytes() {
        return bytes.clone();
    }

    /** The text of all pages with every run of white space as one space. */
    public String text() {
        return new String(run("pdftotext", "-raw", "IN", "-"), StandardCharsets.UTF_8)
                .replaceAll("[\\s\\u00a0]+", " ");
    }

    int pages() {
        return Integer.parseInt(info("Pages"));
    }

    /** A line of what pdfinfo says. */
    String info(String key) {
        String all = new String(run("pdfinfo", "IN"), StandardCharsets.UTF_8);
        return all.lines()
                .filter(line -> line.startsWith(key + ":"))
                .map(line -> line.substring(key.length() + 1).strip())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + " in " + all));
    }

    /** The words with their places on the page. */
    List<Word> words() {
        String boxes = new String(run("pdftotext", "-bbox", "IN", "-"), StandardCharsets.UTF_8);
        List<Word> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(boxes);
        while (matcher.find()) {
            words.add(
                    new Word(
                            Double.parseDouble(matcher.group(1)),
                            Double.parseDouble(matcher.group(2)),
                            Double.parseDouble(matcher.group(3)),
                            Double.parseDouble(matcher.group(4)),
                            matcher.group(5)));
        }
        return words;
    }

    /** Width and height of the first page in points. */
    double[] size() {
        Matcher matcher = Pattern.compile("([0-9.]+) x ([0-9.]+)").matcher(info("Page size"));
        assertThat(matcher.find()).isTrue();
        return new double[] {
            Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))
        };
    }

    /** The first page as a picture of the given resolution, in the portable pixmap format. */
    byte[] picture(int dotsPerInch) {
        return run("pdftoppm", "-r", Integer.toString(dotsPerInch), "-f", "1", "-l", "1", "IN");
    }

    /** Opens the document with the library itself; the caller closes it. */
    PDDocument open() throws IOException {
        return Loader.loadPDF(bytes);
    }

    private byte[] run(String... command) {
        try {
            Path in = Files.createTempFile("report", ".pdf");
            try {
                Files.write(in, bytes);
                List<String> words = new ArrayList<>(List.of(command));
                words.replaceAll(word -> word.equals("IN") ? in.toString() : word);
                return output(words);
            } finally {
                Files.delete(in);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] output(List<String> command) throws IOException {
        Process process;
        try {
            process = new ProcessBuilder(command).redirectErrorStream(false).start();
        } catch (IOException e) {
            assumeTrue(false, command.get(0) + " of poppler-utils is not installed");
            throw e;
        }
        byte[] out = process.getInputStream().readAllBytes();
        try {
            assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
        assertThat(process.exitValue()).as("exit of " + command).isZero();
        return out;
    }
}
