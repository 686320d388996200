package org.fandown.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    /** A few rounding steps of a number near 300. */
    private static final double ROUNDING = 2e-13;

    @ParameterizedTest
    @EnumSource
    void each_unit_is_read_by_the_symbol_under_which_it_is_printed(Unit unit) {
        assertThat(Quantity.parse("5 " + unit.symbol()).unit()).isEqualTo(unit);
    }

    @ParameterizedTest
    @EnumSource
    void each_dimension_has_units_and_an_example_that_can_be_read(Dimension dimension) {
        assertThat(Unit.of(dimension)).isNotEmpty().allMatch(unit -> unit.dimension() == dimension);
        assertThat(Quantity.parse(dimension.example(), dimension).dimension()).isEqualTo(dimension);
    }

    @Test
    void common_pairs_convert_without_any_rounding_error() {
        assertThat(Unit.INCH.convert(1, Unit.MM)).isEqualTo(25.4);
        assertThat(Unit.MM.convert(25.4, Unit.INCH)).isEqualTo(1);
        assertThat(Unit.MINUTE.convert(1.5, Unit.SECOND)).isEqualTo(90);
        assertThat(Unit.BAR.convert(6.3, Unit.KPA)).isEqualTo(630);
        assertThat(Unit.MPH.convert(1, Unit.KMH)).isEqualTo(1.609344);
        assertThat(Unit.FOOT.convert(1, Unit.INCH)).isEqualTo(12);
    }

    @Test
    void temperatures_shift_their_zero() {
        assertThat(Unit.FAHRENHEIT.convert(212, Unit.CELSIUS)).isEqualTo(100);
        assertThat(Unit.FAHRENHEIT.convert(-40, Unit.CELSIUS)).isEqualTo(-40);
        assertThat(Unit.CELSIUS.toBase(0)).isEqualTo(273.15);
        assertThat(Unit.FAHRENHEIT.toBase(32)).isEqualTo(273.15, within(ROUNDING));
        assertThat(Unit.FAHRENHEIT.fromBase(273.15)).isEqualTo(32, within(ROUNDING));
    }
}
