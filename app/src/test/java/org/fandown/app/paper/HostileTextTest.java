package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.fandown.app.paper.PrintedReport.Word;
import org.fandown.evidence.Report.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class HostileTextTest {
    static Stream<Arguments> texts() {
        return Stream.of(
                Arguments.of("markup", "<script>alert(1)</script> & \"quotes\" <b>bold</b>"),
                Arguments.of("end of markup", "]]></style></html><!-- -->"),
                Arguments.of("one long word", "W".repeat(5000)),
                Arguments.of("many words", "wheel ".repeat(2000)),
                Arguments.of(
                        "accents",
                        "\u00c9l\u00e9onore \u0152uvr\u00e9e-\u00c7elik \u0141\u00f3d\u017a"),
                Arguments.of("stacked accents", "e" + "\u0301".repeat(300)),
                Arguments.of("from right to left", "\u05e9\u05e8\u05d4 \u05dc\u05d5\u05d9 (2)"),
                Arguments.of("turned direction", "ab\u202ecd\u202c\u2066ef\u2069"),
                Arguments.of("control characters", "a\u0000b\u0007c\td\r\ne\u001b[31m"),
                Arguments.of("no letter of the font", "\u6f22\u5b57 \ud83d\ude9b \ue000 \uffff"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("texts")
    void page_stays_whole_whatever_is_entered(String kind, String text) {
        ReportContent content =
                Samples.withReport(
                        Samples.QUEBEC_TRUCK,
                        entries -> {
                            for (Entry entry : Entry.values()) {
                                if (!entry.isYesNo()) {
                                    entries.put(entry, text);
                                }
                            }
                            return entries;
                        });
        PrintedReport report = PrintedReport.of(content);

        assertThat(report.pages()).as(kind).isBetween(1, 2);
        ReportPageTest.assertInside(report);
        assertThat(report.text()).contains("NOT PROVEN", "Statements and signatures", "Sources");
    }

    @Test
    void markup_is_shown_as_written() {
        String text = printed("<script>alert(1)</script>");

        assertThat(text).contains("<script>alert(1)</script>");
    }

    @Test
    void long_entry_is_cut_and_says_so() {
        String text = printed("x".repeat(1000));

        assertThat(text).contains("(whole text in the attached file)");
        assertThat(text.replace(" ", "")).contains("x".repeat(240)).doesNotContain("x".repeat(241));
    }

    @Test
    void name_from_right_to_left_stands_in_that_order_on_the_page() {
        List<Word> words = report("\u05e9\u05e8\u05d4 \u05dc\u05d5\u05d9").words();

        // The reader gives the letters from left to right, as they are seen.
        Word first = find(words, "\u05d4\u05e8\u05e9");
        Word second = find(words, "\u05d9\u05d5\u05dc");
        assertThat(second.right()).isLessThan(first.left());
        assertThat(second.top()).isEqualTo(first.top());
    }

    private static Word find(List<Word> words, String text) {
        return words.stream()
                .filter(word -> word.text().contains(text))
                .findFirst()
                .orElseThrow(() -> new AssertionError(text + " is not on the page"));
    }

    private static String printed(String operator) {
        return report(operator).text();
    }

    private static PrintedReport report(String operator) {
        return PrintedReport.of(
                Samples.withReport(
                        Samples.QUEBEC_TRUCK,
                        entries -> {
                            entries.put(Entry.OPERATOR, operator);
                            return entries;
                        }));
    }
}
