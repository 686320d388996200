package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.fandown.app.paper.PrintedReport.Word;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ReportPageTest {
    /** What a printer cannot reach at the edge of a sheet: about 6 mm, in points. */
    private static final double UNPRINTABLE = 17;

    /** The width of a letter sheet and of A4 in whole points, with the rounding of pdfinfo. */
    private static final double POINT = 1;

    static List<String> examples() {
        return Samples.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_is_printed_inside_the_page_with_its_verdict(String example) {
        ReportContent content = Samples.example(example);
        PrintedReport report = PrintedReport.of(content);

        assertThat(report.pages()).isLessThanOrEqualTo(2);
        assertThat(report.text())
                .contains(content.judgement().verdict().title().toUpperCase(Locale.ROOT))
                .contains(content.judgement().inspection().vehicle().name());
        assertInside(report);
    }

    @ParameterizedTest
    @CsvSource({
        "ontario-truck-in-order.yaml, single unit",
        "quebec-bus-coarse-gauge.yaml, bus",
        "us-flat-bed-warning-late.yaml, air over hydraulic",
        "ontario-stroke-over.yaml, tractor-trailer",
        "british-columbia-strokes-at-full-pressure.yaml, tractor-trailer",
        "western-australia-artic-in-order.yaml, tractor-trailer"
    })
    void single_units_and_tractor_trailers_take_one_page(String example, String kind) {
        assertThat(PrintedReport.of(Samples.example(example)).pages()).as(kind).isEqualTo(1);
    }

    @Test
    void north_america_prints_on_letter_and_others_on_a4() {
        assertThat(size(Samples.QUEBEC_TRUCK)).containsExactly(612, 792);
        double[] a4 =
                PrintedReport.of(Samples.example("great-britain-leak-on-walk-round.yaml")).size();

        assertThat(a4[0]).isBetween(595.3 - POINT, 595.3 + POINT);
        assertThat(a4[1]).isBetween(841.9 - POINT, 841.9 + POINT);
    }

    @Test
    void page_reads_from_verdict_to_sources() {
        String text = PrintedReport.of(Samples.sample(Samples.ONTARIO_TRACTOR_TRAILER)).text();

        assertThat(text)
                .containsSubsequence(
                        "NOT FIT TO MOVE",
                        "Vehicle",
                        "Axles and applied strokes",
                        "Findings",
                        "Statements and signatures",
                        "Cautions.",
                        "Not known here",
                        "Sources, last checked");
    }

    @Test
    void page_holds_no_colour_so_that_nothing_is_lost_in_black_and_white() {
        for (String name : List.of(Samples.ONTARIO_TRACTOR_TRAILER, Samples.US_DOUBLES)) {
            byte[] picture = PrintedReport.of(Samples.sample(name)).picture(60);
            int start = picture.length - pixels(picture) * 3;

            for (int i = start; i < picture.length; i += 3) {
                assertThat(picture[i] == picture[i + 1] && picture[i] == picture[i + 2])
                        .as("pixel " + (i - start) / 3 + " is grey")
                        .isTrue();
            }
        }
    }

    @Test
    void every_status_is_said_by_a_mark_and_a_word() {
        String text = PrintedReport.of(Samples.sample(Samples.ONTARIO_TRACTOR_TRAILER)).text();

        assertThat(text)
                .contains("\u2717 not met")
                .contains("? undetermined")
                .contains("\u25cb not checked")
                .contains("\u2713 met");
        assertThat(
                        PrintedReport.of(
                                        Samples.example(
                                                "british-columbia-strokes-at-full-pressure.yaml"))
                                .text())
                .contains("\u26a0 spoiled");
    }

    private static double[] size(String name) {
        return PrintedReport.of(Samples.sample(name)).size();
    }

    static void assertInside(PrintedReport report) {
        double[] size = report.size();
        List<Word> words = report.words();
        assertThat(words).hasSizeGreaterThan(100);
        assertThat(words)
                .allSatisfy(
                        word -> {
                            assertThat(word.left()).isGreaterThanOrEqualTo(UNPRINTABLE);
                            assertThat(word.right()).isLessThanOrEqualTo(size[0] - UNPRINTABLE);
                            assertThat(word.top()).isGreaterThanOrEqualTo(UNPRINTABLE);
                            assertThat(word.bottom()).isLessThanOrEqualTo(size[1] - UNPRINTABLE);
                        });
    }

    /** The number of pixels a portable pixmap says it has. */
    private static int pixels(byte[] picture) {
        String head = new String(picture, 0, 20, java.nio.charset.StandardCharsets.US_ASCII);
        String[] words = head.split("\\s+", -1);
        assertThat(words[0]).isEqualTo("P6");
        return Integer.parseInt(words[1]) * Integer.parseInt(words[2]);
    }
}
