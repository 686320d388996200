package org.fandown.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The typed amounts for physics. */
class AmountsTest {
    /** Two conversions of a number near 1000, each good to a few units in the last place. */
    private static final double ROUNDING = 1e-12;

    @Test
    void gauge_pressure_becomes_absolute_only_with_the_air_named() {
        AbsolutePressure air = AbsolutePressure.ofKilopascals(90);

        AbsolutePressure absolute = GaugePressure.ofKilopascals(600).toAbsolute(air);

        assertThat(absolute).isEqualTo(AbsolutePressure.ofKilopascals(690));
        assertThat(absolute.toGauge(air)).isEqualTo(GaugePressure.ofKilopascals(600));
    }

    @Test
    void an_empty_gauge_stands_at_the_pressure_of_the_air() {
        assertThat(new GaugePressure(0).toAbsolute(AbsolutePressure.STANDARD_ATMOSPHERE).pascals())
                .isEqualTo(101_325);
    }

    @Test
    void a_gauge_pressure_below_vacuum_is_refused() {
        AbsolutePressure thinAir = AbsolutePressure.ofKilopascals(80);

        assertThatThrownBy(() -> GaugePressure.ofKilopascals(-90).toAbsolute(thinAir))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("An absolute pressure must be finite and in 0 to 100 MPa.");
        assertThatThrownBy(() -> GaugePressure.ofPsi(-14.8))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(GaugePressure.ofPsi(-14.7).inPsi()).isEqualTo(-14.7, within(ROUNDING));
    }

    @Test
    void each_amount_reads_its_own_dimension_and_refuses_others() {
        assertThat(GaugePressure.parse("6.3 bar").pascals()).isEqualTo(630_000);
        assertThat(AbsolutePressure.parse("1 bar abs").pascals()).isEqualTo(100_000);
        assertThat(Length.parse("1 3/8 in").metres()).isEqualTo(0.034925);
        assertThat(Volume.parse("30 L").cubicMetres()).isEqualTo(0.03);
        assertThat(Force.parse("-2 kN").newtons()).isEqualTo(-2000);
        assertThat(TimeSpan.parse("1 min 14 s").seconds()).isEqualTo(74);
        assertThat(RotationalSpeed.parse("1200 rpm").revolutionsPerSecond()).isEqualTo(20);
        assertThat(Temperature.parse("20 C").kelvins()).isEqualTo(293.15);
        assertThat(Mass.parse("36.3 t").kilograms()).isEqualTo(36_300);
        assertThatThrownBy(() -> Length.parse("92 psi"))
                .isInstanceOf(QuantityFormatException.class);
        assertThatThrownBy(() -> Length.of(Quantity.parse("92 psi")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'92 psi' is a pressure, not a length.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1e12})
    void no_amount_holds_what_is_not_finite_or_out_of_range(double value) {
        ThrowingCallable[] makers = {
            () -> new GaugePressure(value),
            () -> new AbsolutePressure(value),
            () -> new Length(value),
            () -> new Volume(value),
            () -> new Force(value),
            () -> new TimeSpan(value),
            () -> new RotationalSpeed(value),
            () -> new Temperature(value),
            () -> new Mass(value),
        };
        for (ThrowingCallable maker : makers) {
            assertThatThrownBy(maker)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("must be finite and in");
        }
    }

    @Test
    void amounts_enter_and_leave_in_the_units_of_the_yard() {
        assertThat(GaugePressure.ofPsi(100).inPsi()).isEqualTo(100, within(ROUNDING));
        assertThat(GaugePressure.ofBar(6.3).inKilopascals()).isEqualTo(630, within(ROUNDING));
        assertThat(AbsolutePressure.ofPsi(14.7).inBar() * 100)
                .isEqualTo(AbsolutePressure.ofPsi(14.7).inKilopascals(), within(ROUNDING));
        assertThat(Length.ofInches(2).inMillimetres()).isEqualTo(50.8, within(ROUNDING));
        assertThat(Length.ofFeet(1).inInches()).isEqualTo(12, within(ROUNDING));
        assertThat(Volume.ofCubicInches(61).inCubicCentimetres())
                .isEqualTo(61 * 16.387064, within(ROUNDING));
        assertThat(Force.ofKilonewtons(2).inPoundsForce())
                .isEqualTo(Force.ofNewtons(2000).inPoundsForce(), within(ROUNDING));
        assertThat(TimeSpan.ofHours(1).inMinutes()).isEqualTo(60, within(ROUNDING));
        assertThat(RotationalSpeed.ofRpm(650).inRpm()).isEqualTo(650, within(ROUNDING));
        assertThat(Temperature.ofFahrenheit(68).inCelsius()).isEqualTo(20, within(ROUNDING));
        assertThat(Mass.ofTonnes(1).kilograms()).isEqualTo(1000, within(ROUNDING));
    }

    @Test
    void amounts_are_ordered_by_size_and_print_in_one_unit() {
        assertThat(Length.ofMillimetres(25)).isLessThan(Length.ofInches(1));
        assertThat(GaugePressure.ofPsi(100)).hasToString("689.5 kPa");
        assertThat(AbsolutePressure.STANDARD_ATMOSPHERE).hasToString("101.3 kPa abs");
        assertThat(Length.ofInches(1.375)).hasToString("34.9 mm");
        assertThat(TimeSpan.ofMinutes(2)).hasToString("120 s");
    }
}
