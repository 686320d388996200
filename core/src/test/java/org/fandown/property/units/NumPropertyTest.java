package org.fandown.property.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.fandown.units.Decimals;
import org.fandown.units.Num;

/** Compares our arithmetic with that of the platform, which tests may use and the core may not. */
class NumPropertyTest {
    /** The accuracy that is promised, relative to the result. */
    private static final double PROMISED = 1e-14;

    @Property
    void exp_agrees_with_the_platform(
            @ForAll @DoubleRange(min = -700, max = 709) @Scale(15) double x) {
        double expected = StrictMath.exp(x);

        assertThat(Num.exp(x)).isEqualTo(expected, within(PROMISED * expected));
    }

    @Property
    void log_agrees_with_the_platform_over_the_whole_range_of_doubles(
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(15) double mantissa,
            @ForAll @IntRange(min = -1074, max = 1022) int exponent) {
        double x = Math.scalb(1 + mantissa, exponent);
        double expected = StrictMath.log(x);

        assertThat(Num.log(x)).isEqualTo(expected, within(PROMISED * Math.abs(expected)));
    }

    @Property
    void log_keeps_its_relative_accuracy_near_one(
            @ForAll @DoubleRange(min = -1, max = 1) @Scale(15) double away,
            @ForAll @IntRange(min = 2, max = 52) int exponent) {
        double x = 1 + Math.scalb(away, -exponent);
        double expected = StrictMath.log(x);

        assertThat(Num.log(x)).isEqualTo(expected, within(PROMISED * Math.abs(expected)));
    }

    @Property
    void pow_agrees_with_the_platform_up_to_the_ends_of_the_range(
            @ForAll @DoubleRange(min = -20, max = 20) @Scale(15) double logOfBase,
            @ForAll @DoubleRange(min = -690, max = 690) @Scale(15) double logOfResult) {
        Assume.that(Math.abs(logOfBase) > 1e-6);
        double base = Math.exp(logOfBase);
        double power = logOfResult / logOfBase;
        double expected = StrictMath.pow(base, power);

        assertThat(Num.pow(base, power)).isEqualTo(expected, within(PROMISED * expected));
    }

    @Property
    void log_undoes_exp(@ForAll @DoubleRange(min = -700, max = 700) @Scale(15) double x) {
        // One unit in the last place of exp(x) is 2.2e-16 in its logarithm.
        double bound = PROMISED * Math.max(1, Math.abs(x));

        assertThat(Num.log(Num.exp(x))).isEqualTo(x, within(bound));
    }

    @Property
    void the_remainder_lies_between_zero_and_the_divisor(
            @ForAll @DoubleRange(min = -1e9, max = 1e9) @Scale(15) double value,
            @ForAll @DoubleRange(min = 1e-3, max = 1e6) @Scale(15) double divisor) {
        double rest = Num.floorMod(value, divisor);

        assertThat(rest).isGreaterThanOrEqualTo(0).isLessThan(divisor);
        BigDecimal whole =
                new BigDecimal(value).divide(new BigDecimal(divisor), 0, RoundingMode.FLOOR);
        double exact =
                new BigDecimal(value)
                        .subtract(whole.multiply(new BigDecimal(divisor)))
                        .doubleValue();
        // Just below the divisor the nearest double may be the divisor itself, which is zero again.
        double apart = Math.abs(rest - exact);
        assertThat(Math.min(apart, divisor - apart)).isLessThanOrEqualTo(4e-16 * divisor);
    }

    @Property
    void decimals_are_those_of_the_exact_binary_value(
            @ForAll @DoubleRange(min = -1e15, max = 1e15) @Scale(15) double value,
            @ForAll @IntRange(max = 15) int decimals) {
        assertThat(Decimals.format(value, decimals)).isEqualTo(exactText(value, decimals));
    }

    @Property
    void decimals_of_small_numbers_are_those_of_the_exact_binary_value(
            @ForAll @DoubleRange(min = -10, max = 10) @Scale(15) double value,
            @ForAll @IntRange(max = 15) int decimals) {
        assertThat(Decimals.format(value, decimals)).isEqualTo(exactText(value, decimals));
    }

    @Property
    void ties_and_their_neighbours_are_rounded_right(
            @ForAll @IntRange(min = -100_000, max = 100_000) int halves,
            @ForAll @IntRange(max = 4) int decimals) {
        double tie = halves / 2.0 / Math.pow(10, decimals);
        for (double value : new double[] {tie, Math.nextUp(tie), Math.nextDown(tie)}) {
            assertThat(Decimals.format(value, decimals)).isEqualTo(exactText(value, decimals));
        }
    }

    @Property
    void a_decimal_text_is_read_as_the_nearest_double(
            @ForAll @DoubleRange(min = -1e15, max = 1e15) @Scale(15) double value,
            @ForAll @IntRange(max = 25) int decimals) {
        String text = new BigDecimal(value).setScale(decimals, RoundingMode.DOWN).toPlainString();

        assertThat(Decimals.parse(text)).isEqualTo(Double.parseDouble(text) + 0.0);
    }

    @Property
    void rounding_to_decimals_is_the_nearest_double_of_the_rounded_text(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(15) double value,
            @ForAll @IntRange(max = 6) int decimals) {
        assertThat(Num.roundTo(value, decimals))
                .isEqualTo(Double.parseDouble(exactText(value, decimals)));
    }

    private static String exactText(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }
}
