package org.fandown.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "0, 2, 0.00",
        "0.25, 1, 0.3",
        "-0.25, 1, -0.3",
        "0.5, 0, 1",
        "-0.5, 0, -1",
        "2.5, 0, 3",
        "-0.04, 1, 0.0",
        "1.005, 2, 1.00",
        "1.115, 2, 1.11",
        "0.999, 2, 1.00",
        "9.995, 1, 10.0",
        "813.58, 1, 813.6",
        "1e15, 2, 1000000000000000.00",
        "0.000001, 6, 0.000001",
    })
    void rounds_the_exact_binary_value_with_a_half_away_from_zero(
            double value, int decimals, String text) {
        assertThat(Decimals.format(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"92, 3, 92", "92.5, 3, 92.5", "100, 0, 100", "0.0004, 3, 0", "-1.50, 2, -1.5"})
    void the_short_form_has_no_trailing_zeros(double value, int decimals, String text) {
        assertThat(Decimals.formatShort(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1.1e15, -1.1e15})
    void what_cannot_be_printed_whole_is_refused(double value) {
        assertThatThrownBy(() -> Decimals.format(value, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 16})
    void the_count_of_decimals_has_limits(int decimals) {
        assertThatThrownBy(() -> Decimals.format(1, decimals))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("" + decimals);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "007, 7",
        "-0.25, -0.25",
        "+3, 3",
        "0.1, 0.1",
        "123456789012345, 123456789012345",
        "0.30000000000000004, 0.30000000000000004",
        "9007199254740993, 9007199254740992",
    })
    void reads_plain_decimals(String text, double value) {
        assertThat(Decimals.isDecimal(text)).isTrue();
        assertThat(Decimals.parse(text)).isEqualTo(value);
    }

    @Test
    void minus_zero_is_read_as_zero() {
        assertThat(1 / Decimals.parse("-0.0")).isPositive();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                ".",
                "5.",
                ".5",
                "1e3",
                "0x1F",
                "NaN",
                "Infinity",
                "1d",
                "1f",
                " 1",
                "1 ",
                "1,5",
                "--1",
                "1.2.3",
                "\u0661"
            })
    void refuses_all_other_notations_in_its_own_words(String text) {
        assertThat(Decimals.isDecimal(text)).isFalse();
        assertThatThrownBy(() -> Decimals.parse(text))
                .isExactlyInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith("is not a plain decimal number. Write digits with a point.");
    }

    @Test
    void a_number_beyond_the_range_of_a_double_is_refused() {
        assertThatThrownBy(() -> Decimals.parse("1" + "0".repeat(400)))
                .isExactlyInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith("is too large a number.");
    }
}
