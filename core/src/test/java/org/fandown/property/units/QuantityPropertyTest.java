package org.fandown.property.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.Dimension;
import org.fandown.units.GaugePressure;
import org.fandown.units.Quantities;
import org.fandown.units.Quantity;
import org.fandown.units.QuantityFormatException;
import org.fandown.units.Unit;

class QuantityPropertyTest {
    /** Two conversions round at most four times, each by 1.1e-16 of the number. */
    private static final double FOUR_ROUNDINGS = 5e-16;

    /** A pressure near 1e8 Pa, to which a number was added and taken away again. */
    private static final double ROUNDING_NEAR_1E8 = 3e-8;

    @Property
    void what_is_written_is_read_back_equal(
            @ForAll @LongRange(min = -999_999_999_999_999L, max = 999_999_999_999_999L)
                    long millionths,
            @ForAll Unit unit) {
        Quantity quantity = Quantity.of(millionths / 1e6, unit);

        assertThat(Quantity.parse(quantity.toString())).isEqualTo(quantity);
    }

    @Property
    void the_text_that_was_read_is_given_back(@ForAll("written") String text) {
        Quantity quantity = Quantity.parse("  " + text + " ");

        assertThat(quantity).hasToString(text);
        assertThat(Quantity.parse(quantity.toString())).isEqualTo(quantity);
    }

    @Property
    void what_is_printed_is_read_back_within_the_printed_digit(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(9) double value, @ForAll Unit unit) {
        Quantity read = Quantity.parse(Quantities.print(value, unit), unit.dimension());

        double digit = Math.pow(10, -Math.min(unit.decimals(), unit == Unit.MINUTE ? 2 : 9));
        assertThat(read.valueIn(unit)).isEqualTo(value, within(0.51 * digit));
    }

    @Property
    void a_fraction_of_an_inch_is_read_as_its_exact_value(
            @ForAll @IntRange(max = 40) int whole, @ForAll @IntRange(min = 1, max = 15) int parts) {
        Quantity quantity = Quantity.parse(whole + " " + parts + "/16 in", Dimension.LENGTH);

        assertThat(quantity.value()).isEqualTo(whole + parts / 16.0);
        assertThat(Quantity.parse(quantity.print(Unit.INCH))).isEqualTo(quantity);
    }

    @Property
    void there_and_back_again_is_where_we_were(
            @ForAll @DoubleRange(min = -1e9, max = 1e9) @Scale(9) double value,
            @ForAll("pairs") Pair pair) {
        Unit unit = pair.unit();
        Unit other = pair.other();
        Assume.that(unit.dimension() != Dimension.TEMPERATURE);

        double back = other.convert(unit.convert(value, other), unit);

        assertThat(back).isEqualTo(value, within(FOUR_ROUNDINGS * Math.abs(value)));
    }

    @Property
    void conversion_through_the_base_unit_agrees_with_the_direct_one(
            @ForAll @DoubleRange(min = 1, max = 1e6) @Scale(9) double value,
            @ForAll("pairs") Pair pair) {
        Unit unit = pair.unit();
        Unit other = pair.other();

        double direct = unit.convert(value, other);
        double base = unit.toBase(value);

        // A temperature may come out near zero, so its error is judged by the kelvins.
        double size = Math.max(Math.abs(direct), Math.abs(base));
        assertThat(other.fromBase(base)).isEqualTo(direct, within(2 * FOUR_ROUNDINGS * size));
    }

    @Property
    void gauge_to_absolute_and_back_is_the_same_pressure(
            @ForAll @DoubleRange(min = 0, max = 9e7) @Scale(9) double gauge,
            @ForAll @DoubleRange(min = 5e4, max = 1.1e5) @Scale(9) double ambient) {
        AbsolutePressure air = new AbsolutePressure(ambient);
        GaugePressure pressure = new GaugePressure(gauge);

        GaugePressure back = pressure.toAbsolute(air).toGauge(air);

        assertThat(back.pascals()).isEqualTo(gauge, within(ROUNDING_NEAR_1E8));
        assertThat(pressure.toAbsolute(air).pascals()).isGreaterThanOrEqualTo(ambient);
    }

    @Property(tries = 10_000)
    void any_text_is_read_or_refused_in_the_documented_way(@ForAll String text) {
        assertReadOrRefused(text);
    }

    @Property(tries = 10_000)
    void any_text_that_looks_like_a_quantity_is_read_or_refused_in_the_documented_way(
            @ForAll("nearlyQuantities") String text) {
        assertReadOrRefused(text);
    }

    private static void assertReadOrRefused(String text) {
        try {
            Quantity quantity = Quantity.parse(text);
            assertThat(Quantity.parse(quantity.toString())).isEqualTo(quantity);
        } catch (QuantityFormatException e) {
            assertThat(e.problem()).isNotBlank();
            assertThat(e.allowed()).isNotBlank();
            assertThat(e.nextStep()).isNotBlank();
            assertThat(e.getMessage()).doesNotContain("\n");
        }
    }

    /** Two units of one dimension. */
    record Pair(Unit unit, Unit other) {}

    @Provide
    Arbitrary<Pair> pairs() {
        return Arbitraries.of(Unit.values())
                .flatMap(
                        unit ->
                                Arbitraries.of(Unit.of(unit.dimension()))
                                        .map(other -> new Pair(unit, other)));
    }

    @Provide
    Arbitrary<String> written() {
        Arbitrary<String> numbers =
                Arbitraries.of(
                        "92", "6.3", "1 3/8", "1-3/8", "3/4", "1 000", "0.5", "-20", "\u00be");
        Arbitrary<String> units =
                Arbitraries.of("psi", "kPa", "bar", "in", "\"", "mm", "s", "rpm", "\u00b0C", "in3");
        Arbitrary<String> gaps = Arbitraries.of("", " ", "  ");
        return Combinators.combine(numbers, gaps, units).as((n, g, u) -> n + g + u);
    }

    @Provide
    Arbitrary<String> nearlyQuantities() {
        Arbitrary<String> parts =
                Arbitraries.of(
                        "1",
                        "3/8",
                        "0",
                        "60",
                        "14",
                        ".",
                        ",",
                        ":",
                        "-",
                        "+",
                        "/",
                        " ",
                        "psi",
                        "min",
                        "s",
                        "h",
                        "ft",
                        "in",
                        "in3",
                        "\"",
                        "kPa",
                        "abs",
                        "m",
                        "\u00bd",
                        "\u00b0",
                        "\u2212",
                        "e",
                        "%",
                        "\u00a0",
                        "99999999999999999999");
        return parts.list().ofMaxSize(8).map(list -> String.join("", list));
    }
}
