package org.fandown.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FractionsTest {
    @ParameterizedTest
    @CsvSource({
        "1.375, 16, 1 3/8",
        "1.375, 32, 1 3/8",
        "0.75, 16, 3/4",
        "2, 16, 2",
        "0, 16, 0",
        "-0.01, 16, 0",
        "-1.5, 16, -1 1/2",
        "0.03125, 32, 1/32",
        "0.03125, 16, 1/16",
        "1.99, 16, 2",
        "0.96875, 16, 1",
    })
    void prints_the_nearest_mixed_fraction_in_lowest_terms(
            double value, int denominator, String text) {
        assertThat(Fractions.mixed(value, denominator)).isEqualTo(text);
    }

    @Test
    void knows_what_a_tape_can_show_without_loss() {
        assertThat(Fractions.isMultiple(1.375, 16)).isTrue();
        assertThat(Fractions.isMultiple(34.925 / 25.4, 16)).isTrue();
        assertThat(Fractions.isMultiple(1.38, 16)).isFalse();
        assertThat(Fractions.isMultiple(1.03125, 16)).isFalse();
        assertThat(Fractions.isMultiple(1.03125, 32)).isTrue();
        assertThat(Fractions.isMultiple(2e6, 16)).isFalse();
        assertThat(Fractions.isMultiple(Double.NaN, 16)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -16, 65})
    void a_denominator_that_no_tape_has_is_refused(int denominator) {
        assertThatThrownBy(() -> Fractions.mixed(1, denominator))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Fractions.isMultiple(1, denominator))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 1.1e6, Double.NEGATIVE_INFINITY})
    void a_number_beyond_the_valid_size_is_refused(double value) {
        assertThatThrownBy(() -> Fractions.mixed(value, 16))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
