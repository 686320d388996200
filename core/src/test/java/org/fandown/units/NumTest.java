package org.fandown.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumTest {
    @ParameterizedTest
    @CsvSource({
        "0.5, 1",
        "-0.5, -1",
        "1.5, 2",
        "-2.5, -3",
        "0.49999999999999994, 0",
        "-0.3, 0",
        "4503599627370497.5, 4503599627370498",
        "9007199254740993, 9007199254740992",
        "1e300, 1e300",
    })
    void rounds_a_half_away_from_zero(double value, double rounded) {
        assertThat(Num.round(value)).isEqualTo(rounded);
    }

    @Test
    void never_rounds_to_minus_zero() {
        assertThat(1 / Num.round(-0.3)).isPositive();
        assertThat(1 / Num.roundTo(-0.003, 2)).isPositive();
        assertThat(1 / Num.floorMod(-5, 5)).isPositive();
    }

    @Test
    void rounds_to_decimals() {
        assertThat(Num.roundTo(813.58, 1)).isEqualTo(813.6);
        assertThat(Num.roundTo(-0.25, 1)).isEqualTo(-0.3);
    }

    @ParameterizedTest
    @CsvSource({
        "7, 3, 1",
        "-7, 3, 2",
        "7, -3, -2",
        "-7, -3, -1",
        "6, 3, 0",
        "5.5, 2, 1.5",
        "370, 360, 10",
        "-10, 360, 350",
    })
    void the_remainder_has_the_sign_of_the_divisor(double value, double divisor, double rest) {
        assertThat(Num.floorMod(value, divisor)).isEqualTo(rest);
    }

    @Test
    void a_remainder_that_has_no_meaning_is_refused() {
        assertThatThrownBy(() -> Num.floorMod(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Num.floorMod(1e300, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Num.floorMod(Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void exp_ends_where_doubles_end() {
        assertThat(Num.exp(0)).isEqualTo(1);
        assertThat(Num.exp(710)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Num.exp(-800)).isZero();
        assertThat(Num.exp(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(Num.exp(Double.NaN)).isNaN();
    }

    @Test
    void log_is_exact_at_one_and_refuses_negative_numbers_as_nan() {
        assertThat(Num.log(1)).isZero();
        assertThat(Num.log(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(Num.log(-1)).isNaN();
        assertThat(Num.log(Double.POSITIVE_INFINITY)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void pow_knows_its_corners() {
        assertThat(Num.pow(0, 0)).isEqualTo(1);
        assertThat(Num.pow(0, 2)).isZero();
        assertThat(Num.pow(0, -1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Num.pow(1, 1e300)).isEqualTo(1);
        assertThat(Num.pow(2, 1e300)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Num.pow(2, -1e300)).isZero();
        assertThat(Num.pow(10, 308.25469)).isLessThan(Double.POSITIVE_INFINITY);
        assertThat(Num.pow(10, 309)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Num.pow(-2, 3)).isEqualTo(-8);
        assertThat(Num.pow(-2, 4)).isEqualTo(16);
        assertThat(Num.pow(-2, 0.5)).isNaN();
        assertThat(Num.pow(Double.NaN, 1)).isNaN();
        assertThat(Num.pow(2, Double.NaN)).isNaN();
    }
}
