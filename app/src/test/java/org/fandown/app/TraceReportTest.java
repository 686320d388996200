package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.fandown.app.paper.VeraPdf;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.ScalarNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report and the picture of a trace, from the command line to the files. */
class TraceReportTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path LOG = EXAMPLES.resolve("traces/cold-start.csv");

    /** What the example log holds, in order of time, as the report names it. */
    private static final List<String> TESTS =
            List.of(
                    "Build-up",
                    "Governor cut-out",
                    "Governor cut-in",
                    "Air loss, brakes released",
                    "Brake applications, engine off",
                    "Air loss, brakes applied",
                    "Low-air warning",
                    "Trailer supply valve closed",
                    "Parking brake set itself");

    @TempDir private Path folder;

    @Test
    void report_names_the_log_and_every_test_with_time_value_and_doubt() throws Exception {
        Path pdf = report(LOG);
        String text = text(pdf);

        byte[] bytes = Files.readAllBytes(pdf);
        assertThat(VeraPdf.problems(bytes, VeraPdf.claim(bytes))).isEmpty();
        assertThat(text)
                .contains("cold-start.csv", sha256(LOG), "13:35.0 min", "primary (816)")
                .contains("Remarks on the log", "Columns not read")
                .contains("psi", "kPa", "engine, rpm", "minutes and seconds since the start")
                .containsSubsequence(TESTS);
        MapNode trace = attached(pdf, "trace.json");
        assertThat(text(trace, "sha256")).isEqualTo(sha256(LOG));
        String told = Cli.run("trace", LOG.toString()).out();
        Matcher intervals = Pattern.compile("95 %: (\\S+ to \\S+)\\)").matcher(told);
        assertThat(intervals.results().count()).isEqualTo(9);
        intervals.reset().results().forEach(each -> assertThat(text).contains(each.group(1)));
        assertThat(text(attached(pdf, "inspection.json"), "verdict")).isEqualTo("not-proven");
    }

    @Test
    void report_of_a_simulated_log_says_so_on_every_page() throws IOException {
        try (PDDocument document = Loader.loadPDF(report(LOG).toFile())) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(page);
                one.setEndPage(page);
                assertThat(one.getText(document)).contains("practice report, simulated");
            }
        }
    }

    @Test
    void first_page_is_the_report_that_judge_makes() throws IOException {
        String text = text(report(LOG));

        assertThat(text)
                .containsSubsequence(
                        "SIMULATED: NOT PROVEN",
                        "Axles and applied strokes",
                        "Findings",
                        "Statements and signatures",
                        "Cautions.",
                        "The trace this report rests on");
    }

    @Test
    void fonts_are_inside_and_nothing_is_in_colour_or_a_raster() throws IOException {
        try (PDDocument document = Loader.loadPDF(report(LOG).toFile())) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    assertThat(page.getResources().isImageXObject(name)).isFalse();
                }
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
                assertThat(colours(page)).isEmpty();
            }
        }
    }

    /** Operands of rg and RG whose three parts differ. */
    private static Set<String> colours(PDPage page) throws IOException {
        Set<String> colours = new TreeSet<>();
        String content = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
        for (String line : content.split("\n", -1)) {
            String[] words = line.strip().split(" ", -1);
            boolean colour = words.length == 4 && words[3].equalsIgnoreCase("rg");
            if (colour && !(words[0].equals(words[1]) && words[1].equals(words[2]))) {
                colours.add(line);
            }
        }
        return colours;
    }

    @Test
    void no_text_of_the_trace_pages_covers_another_or_leaves_the_page() throws IOException {
        try (PDDocument document = Loader.loadPDF(report(LOG).toFile())) {
            for (int page = 2; page <= document.getNumberOfPages(); page++) {
                Boxes boxes = new Boxes();
                boxes.setStartPage(page);
                boxes.setEndPage(page);
                boxes.getText(document);
                double width = document.getPage(page - 1).getMediaBox().getWidth();
                assertThat(boxes.overlaps()).as("page %s", page).isEmpty();
                assertThat(boxes.found).allMatch(box -> box[0] > 20 && box[2] < width - 20);
            }
        }
    }

    /** The boxes of the words on a page. */
    private static final class Boxes extends PDFTextStripper {
        private final List<double[]> found = new ArrayList<>();
        private final List<String> words = new ArrayList<>();

        @Override
        protected void writeString(String text, List<TextPosition> letters) {
            TextPosition first = letters.get(0);
            TextPosition last = letters.get(letters.size() - 1);
            double bottom = first.getYDirAdj();
            words.add(text);
            found.add(
                    new double[] {
                        first.getXDirAdj(),
                        bottom - 0.6 * first.getFontSizeInPt(),
                        last.getXDirAdj() + last.getWidthDirAdj(),
                        bottom
                    });
        }

        List<String> overlaps() {
            List<String> overlaps = new ArrayList<>();
            for (int i = 0; i < found.size(); i++) {
                for (int k = 0; k < i; k++) {
                    double[] a = found.get(i);
                    double[] b = found.get(k);
                    if (a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]) {
                        overlaps.add(words.get(k) + " | " + words.get(i));
                    }
                }
            }
            return overlaps;
        }
    }

    @Test
    void poppler_reads_the_same_names_and_finds_no_fault() throws Exception {
        Path pdf = report(LOG);
        Process process;
        try {
            process = new ProcessBuilder("pdftotext", pdf.toString(), "-").start();
        } catch (IOException e) {
            assumeTrue(false, "pdftotext of poppler-utils is not installed");
            throw e;
        }
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor()).isZero();
        assertThat(err).isEmpty();
        assertThat(out).contains(TESTS).contains(sha256(LOG));
    }

    @Test
    void same_log_gives_the_same_bytes() throws IOException {
        assertThat(report(LOG)).hasSameBinaryContentAs(report(LOG));
    }

    @Test
    void log_without_a_test_says_so() throws IOException {
        Path log = EXAMPLES.resolve("recordings/normal.log");
        String text = text(report(log));

        assertThat(text)
                .contains("It holds no test of the air system.", "none; no gap, sensor error")
                .contains("Air-brake inspection report")
                .doesNotContain("imulated");
    }

    @Test
    void gap_is_told_and_left_open_in_the_drawing() throws IOException {
        String text = text(report(joined(2)));

        assertThat(text).contains("nothing was recorded for 30 s");
    }

    @Test
    void log_of_hours_stays_readable_and_shows_what_is_judged() throws IOException {
        Path pdf = report(joined(36));
        String text = text(pdf);

        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isBetween(10, 30);
        }
        assertThat(text)
                .containsPattern("Of \\d{3} things recognised 40 are drawn by themselves")
                .containsPattern("\\d{3} more stand in the attached file trace.json")
                .contains("Governor cut-out: met", "Governor cut-in: met");
        // The last cut-out is the one judged; it has its row and its drawing among hundreds.
        assertThat(text)
                .containsPattern("Governor cut-out: \\d+\\.\\d psi .* 50\\d:\\d\\d\\.\\d to");
    }

    @Test
    void picture_names_every_test_and_stays_well_formed() throws Exception {
        Path svg = folder.resolve("plot.svg");
        Cli run = Cli.run("trace", LOG.toString(), "--plot", svg.toString());
        String text =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(svg.toFile())
                        .getDocumentElement()
                        .getTextContent()
                        .replaceAll("\\s+", " ");

        assertThat(run.exit()).isZero();
        assertThat(text)
                .contains("this is not a record of a real vehicle", "psi", "kPa", "engine, rpm")
                .contains("primary", "secondary", "supply", "low-air warning on")
                .contains("To know about the log", "Columns not read");
        run.out()
                .lines()
                .filter(line -> line.matches(" {2}\\d+:\\d\\d\\.\\d to .*"))
                .map(line -> line.replaceFirst("^ *\\S+ to \\S+ *", ""))
                .forEach(found -> assertThat(text).contains(found));
    }

    /** The example several times, each half a minute after the one before. */
    private Path joined(int times) throws IOException {
        List<String> rows = Files.readAllLines(LOG);
        StringBuilder all = new StringBuilder(rows.get(0)).append('\n');
        double start = 0;
        for (int i = 0; i < times; i++) {
            double time = 0;
            for (String row : rows.subList(1, rows.size())) {
                int comma = row.indexOf(',');
                time = start + Double.parseDouble(row.substring(0, comma));
                all.append(time).append(row.substring(comma)).append('\n');
            }
            start = time + 30;
        }
        return Files.writeString(folder.resolve("joined.csv"), all.toString());
    }

    private Path report(Path log) {
        try {
            Path pdf = Files.createTempFile(folder, "report", ".pdf");
            Cli run =
                    Cli.run(
                            "trace",
                            log.toString(),
                            "--place",
                            "CA-ON",
                            "--vehicle",
                            EXAMPLES.resolve("vehicles/tractor-box-trailer.yaml").toString(),
                            "--moment",
                            "2026-11-25T06:40:00-05:00",
                            "--report",
                            pdf.toString());
            assertThat(run.err()).isEmpty();
            assertThat(run.exit()).isEqualTo(3);
            return pdf;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static MapNode attached(Path pdf, String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            byte[] bytes =
                    document.getDocumentCatalog()
                            .getNames()
                            .getEmbeddedFiles()
                            .getKids()
                            .get(0)
                            .getNames()
                            .get(name)
                            .getEmbeddedFile()
                            .toByteArray();
            return (MapNode) Json.read(name, new String(bytes, StandardCharsets.UTF_8));
        }
    }

    private static String text(MapNode map, String key) {
        return ((ScalarNode) map.get(key).orElseThrow()).text();
    }

    private static String sha256(Path file) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
    }
}
