package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CleanTest {
    @Test
    void line_ends_and_tabs_become_spaces() {
        assertThat(Clean.text("a\tb\nc\u2028d")).isEqualTo("a b c d");
    }

    @Test
    void control_characters_and_turning_marks_are_dropped() {
        assertThat(Clean.text("a\u0000b\u001b[31mc\u202ed\u200be")).isEqualTo("ab[31mcde");
    }

    @Test
    void half_characters_and_private_ones_are_replaced() {
        assertThat(Clean.text("a\ud83db\ue000c")).isEqualTo("a\ufffdb\ufffdc");
    }

    @Test
    void accents_and_other_scripts_stay() {
        String text = "\u00c9l\u00e9onore \u0153uvre \u0394 \u0416 \u05e9";

        assertThat(Clean.text(text)).isEqualTo(text);
    }

    @Test
    void cut_counts_characters_not_halves() {
        assertThat(Clean.cut("\ud83d\ude9b\ud83d\ude9bx", 2))
                .isEqualTo("\ud83d\ude9b\ud83d\ude9b\u2026");
        assertThat(Clean.cut("ab", 2)).isEqualTo("ab");
    }

    @ParameterizedTest
    @CsvSource({
        "plain, plain",
        "'\u05d0\u05d1\u05d2', '\u05d2\u05d1\u05d0'",
        "'x \u05d0\u05d1 y', 'x \u05d1\u05d0 y'",
        "'\u05d0(\u05d1)', '(\u05d1)\u05d0'",
        "'\u05d0 12 \u05d1', '\u05d1 12 \u05d0'"
    })
    void writing_from_right_to_left_is_put_in_the_order_it_is_seen(String written, String seen) {
        assertThat(Writing.asSeen(written)).isEqualTo(seen);
    }
}
