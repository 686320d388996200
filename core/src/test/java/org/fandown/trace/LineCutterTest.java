package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineCutterTest {
    private static final int LONGEST = 8;

    /** Keeps the lines with their numbers. */
    private static final class Kept implements LineCutter.Taker {
        private final List<String> lines = new ArrayList<>();
        private final LineCutter cutter = new LineCutter(LONGEST, this);

        @Override
        public void line(byte[] buffer, int from, int to) {
            String text = new String(buffer, from, to - from, StandardCharsets.ISO_8859_1);
            lines.add(cutter.lines() + ":" + text);
        }

        @Override
        public void tooLong() {
            lines.add(cutter.lines() + " too long");
        }
    }

    private static List<String> cut(String text, int piece) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        Kept kept = new Kept();
        for (int from = 0; from < bytes.length; from += piece) {
            kept.cutter.accept(bytes, from, Math.min(bytes.length, from + piece));
        }
        kept.cutter.finish();
        return kept.lines;
    }

    private static List<String> cut(String text) {
        List<String> whole = cut(text, Integer.MAX_VALUE / 2);
        for (int piece = 1; piece <= text.length(); piece++) {
            assertThat(cut(text, piece)).as("in pieces of %d", piece).isEqualTo(whole);
        }
        return whole;
    }

    static List<String> ends() {
        return List.of("\n", "\r", "\r\n");
    }

    @ParameterizedTest
    @MethodSource("ends")
    void each_end_of_a_line_ends_one(String end) {
        assertThat(cut("a" + end + "bc" + end)).containsExactly("1:a", "2:bc");
    }

    @ParameterizedTest
    @MethodSource("ends")
    void empty_lines_count(String end) {
        assertThat(cut(end + "a" + end + end + "b" + end))
                .containsExactly("1:", "2:a", "3:", "4:b");
    }

    @ParameterizedTest
    @MethodSource("ends")
    void last_line_needs_no_end(String end) {
        assertThat(cut("a" + end + "b")).containsExactly("1:a", "2:b");
    }

    @Test
    void ends_may_be_mixed() {
        assertThat(cut("a\rb\r\nc\n\rd\r\r\ne\n\n"))
                .containsExactly("1:a", "2:b", "3:c", "4:", "5:d", "6:", "7:e", "8:");
    }

    @Test
    void nothing_holds_no_line() {
        assertThat(cut("")).isEmpty();
    }

    @Test
    void empty_piece_changes_nothing() {
        Kept kept = new Kept();
        byte[] bytes = "a\r\nb".getBytes(StandardCharsets.US_ASCII);
        kept.cutter.accept(bytes, 0, 2);
        kept.cutter.accept(bytes, 2, 2);
        kept.cutter.accept(bytes, 2, 4);
        kept.cutter.finish();

        assertThat(kept.lines).containsExactly("1:a", "2:b");
    }

    @ParameterizedTest
    @MethodSource("ends")
    void line_at_the_limit_is_taken_and_one_byte_more_is_not(String end) {
        assertThat(cut("12345678" + end + "123456789" + end + "c" + end))
                .containsExactly("1:12345678", "2 too long", "3:c");
    }

    @ParameterizedTest
    @ValueSource(ints = {9, 17, 1000})
    void last_line_may_be_too_long_as_well(int length) {
        assertThat(cut("a\n" + "x".repeat(length))).containsExactly("1:a", "2 too long");
    }

    @Test
    void bytes_of_a_binary_file_are_bytes_of_a_line() {
        assertThat(cut("\u0000\u00ff\n\u0000\u000b\u0085\u001a\n"))
                .containsExactly("1:\u0000\u00ff", "2:\u0000\u000b\u0085\u001a");
    }

    @Test
    void lines_are_counted_to_the_last_one() {
        Kept kept = new Kept();
        byte[] bytes = "a\r\rb\r\n".getBytes(StandardCharsets.US_ASCII);
        kept.cutter.accept(bytes, 0, bytes.length);
        kept.cutter.finish();

        assertThat(kept.cutter.lines()).isEqualTo(3);
    }
}
