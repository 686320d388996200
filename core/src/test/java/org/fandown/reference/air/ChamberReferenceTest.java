package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fandown.reference.air.AirFigures.PSI;
import static org.fandown.reference.air.AirFigures.psi;

import org.fandown.air.ChamberLaw;
import org.fandown.air.PushRodStroke;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChamberReferenceTest {
    /** Conversions to SI and back cost a few units in the last place. */
    private static final double ROUNDING = 1e-9;

    /** The expected value is printed to ten digits. */
    private static final double TEN_DIGITS_PERCENT = 1e-6;

    private static final double CUBIC_INCH = 1.6387064e-5;

    @Source(
            work = "Stroke model of this project",
            edition = "assumption, worked by hand",
            where = "type 30, 0.5 in free, 0.0105 in/psi above 8 psi, 14 in3 at rest, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "shows that the law is as stated, not that chambers follow it")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "3, 0, 14, before the push rod moves",
        "6.5, 0.25, 21.5, half the free stroke",
        "20, 0.626, 32.78, 20 psi",
        "60, 1.046, 45.38, 60 psi",
        "90, 1.361, 54.83, 90 psi",
        "100, 1.466, 57.98, 100 psi",
        "300, 2.5, 89, bottomed: the rated volume of 89 in3"
    })
    void stroke_and_volume_follow_the_phases(
            double gauge, double inches, double cubicInches, String where) {
        ChamberLaw chamber = type30();

        assertThat(chamber.strokeAt(psi(gauge)).inInches()).isEqualTo(inches, within(ROUNDING));
        assertThat(chamber.volumeAt(psi(gauge)).inCubicInches())
                .isEqualTo(cubicInches, within(ROUNDING));
    }

    @Source(
            work = "Boyle's law on the stroke model of this project",
            edition = "worked by hand",
            where = "104.695949 psi absolute x 54.83 in3",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void an_amount_of_air_has_one_pressure() {
        double joules = 5740.478884 * PSI * CUBIC_INCH;

        GaugePressure pressure = type30().pressureOf(joules, AbsolutePressure.STANDARD_ATMOSPHERE);

        assertThat(pressure.inPsi()).isCloseTo(90.000, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Boyle's law on the stroke model of this project",
            edition = "worked by hand from the strokes above",
            where = "(gauge + 14.695949 psi) x volume, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "3, 14, before the push rod moves",
        "6.5, 21.5, half the free stroke",
        "20, 32.78, after the linings touch",
        "300, 89, bottomed"
    })
    void the_pressure_is_found_again_in_every_phase(
            double gauge, double cubicInches, String where) {
        double joules = (gauge * PSI + AirFigures.ATMOSPHERE) * cubicInches * CUBIC_INCH;

        GaugePressure pressure = type30().pressureOf(joules, AbsolutePressure.STANDARD_ATMOSPHERE);

        assertThat(pressure.inPsi()).isCloseTo(gauge, withinPercentage(TEN_DIGITS_PERCENT));
    }

    @Source(
            work = "Spring line of this project: hold-off 65 psi at no travel, 48.3 psi at 2.5 in",
            edition = "assumption, worked by hand",
            where = "30 in2 with 20 in3 at rest; half way between start and hold-off",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "shows that the law is as stated, not that spring brakes follow it")
    @Test
    void a_spring_chamber_fills_between_the_start_of_release_and_hold_off() {
        ChamberLaw spring =
                ChamberLaw.spring(
                        Volume.ofCubicInches(20), 30, psi(48.3), psi(65), Length.ofInches(2.5));

        assertThat(spring.volumeAt(psi(48.3)).inCubicInches()).isEqualTo(20, within(ROUNDING));
        assertThat(spring.volumeAt(psi(56.65)).inCubicInches()).isEqualTo(57.5, within(ROUNDING));
        assertThat(spring.volumeAt(psi(65)).inCubicInches()).isEqualTo(95, within(ROUNDING));
        assertThat(spring.volumeAt(psi(120)).inCubicInches()).isEqualTo(95, within(ROUNDING));
    }

    private static ChamberLaw type30() {
        PushRodStroke stroke =
                new PushRodStroke(
                        psi(5), psi(8), Length.ofInches(0.5), 0.0105, Length.ofInches(2.5));
        return ChamberLaw.service(Volume.ofCubicInches(14), 30, stroke);
    }
}
