package org.fandown.reference.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.fandown.braking.ChamberAir;
import org.fandown.braking.PushRodForce;
import org.fandown.braking.SpringBrake;
import org.fandown.braking.StrokeModel;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PushRodReferenceTest {
    /** Conversions to SI and back cost a few units in the last place. */
    private static final double ROUNDING = 1e-9;

    /** The expected value is printed to eight digits. */
    private static final double PRINTED_TO_8_DIGITS_PERCENT = 1e-6;

    /** The increments are printed to a hundredth of an inch. */
    private static final double PRINTED_TO_HUNDREDTHS = 0.005;

    /** The expected value is printed to a tenth of a pound. */
    private static final double PRINTED_TO_TENTHS = 0.05;

    private static final PushRodForce TYPE_30 = PushRodForce.of(30, Length.ofInches(2.5));

    @Source(
            work = "Provincial and state commercial driver manuals, air brake chapters",
            edition = "undated",
            where = "force = pressure x area: 24 and 36 square inches at 60 psi",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "24, 60, 1440, 24 in2 at 60 psi",
        "36, 60, 2160, 36 in2 at 60 psi",
        "6, 60, 360, 6 in2 at 60 psi",
        "30, 100, 3000, type 30 at 100 psi"
    })
    void force_is_pressure_times_area(double area, double psi, double pounds, String where) {
        PushRodForce chamber = PushRodForce.of(area, Length.ofInches(2.5));

        assertThat(chamber.gross(GaugePressure.ofPsi(psi), Length.ofInches(1)).inPoundsForce())
                .isEqualTo(pounds, within(ROUNDING));
    }

    @Source(
            work = "Force curve of this project: 1 - 0.5 ((x - 0.7) / 0.3)^2",
            edition = "assumption, worked by hand",
            where = "type 30 at 100 psi, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "shows that the curve is as stated, not that chambers follow it")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "1.75, 3000, at the knee",
        "2.0, 2833.3, half an inch before the end",
        "2.25, 2333.3, a quarter inch before the end",
        "2.499999, 1500, just before the end",
        "2.5, 0, at the end"
    })
    void force_falls_towards_the_end_of_the_stroke(double inches, double pounds, String where) {
        assertThat(TYPE_30.gross(GaugePressure.ofPsi(100), Length.ofInches(inches)).inPoundsForce())
                .isEqualTo(pounds, within(PRINTED_TO_TENTHS));
    }

    @Source(
            work = "UN Regulation No. 13, annex on the effective stroke of chambers",
            edition = "text of the directive and regulation, read in a poor copy",
            where = "average thrust from 1/3 to 2/3 of the stroke; effective stroke at 90 % of it",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "the definition is the regulation's, the curve it is applied to is assumed here")
    @Test
    void effective_stroke_is_where_thrust_falls_to_ninety_percent() {
        assertThat(TYPE_30.averageThrust(GaugePressure.ofPsi(100)).inPoundsForce())
                .isEqualTo(3000, within(ROUNDING));
        assertThat(TYPE_30.effectiveStroke().inInches())
                .isCloseTo(2.0854102, withinPercentage(PRINTED_TO_8_DIGITS_PERCENT));
    }

    @Source(
            work = "Stroke model of this project",
            edition = "assumption, worked by hand",
            where = "type 30 with 0.5 in free stroke and 14 in3 before the stroke, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "shows that the model is as stated, not that brakes follow it")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "3, 0, 14, 3 psi",
        "6.5, 0.25, 21.5, 6.5 psi",
        "20, 0.626, 32.78, 20 psi",
        "60, 1.046, 45.38, 60 psi",
        "90, 1.361, 54.83, 90 psi",
        "100, 1.466, 57.98, 100 psi"
    })
    void stroke_and_volume_follow_the_phases(
            double psi, double inches, double cubicInches, String where) {
        GaugePressure pressure = GaugePressure.ofPsi(psi);

        assertThat(adjusted().strokeAt(pressure).inInches()).isEqualTo(inches, within(ROUNDING));
        assertThat(air().volumeAt(pressure).inCubicInches())
                .isEqualTo(cubicInches, within(ROUNDING));
    }

    @Source(
            work = "Boyle's law on the stroke model of this project",
            edition = "worked by hand",
            where = "104.695949 psi absolute x 54.83 in3",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void the_amount_of_air_gives_the_pressure_back() {
        assertThat(air().pressureOf(5740.478884, AbsolutePressure.STANDARD_ATMOSPHERE).inPsi())
                .isCloseTo(90.000, withinPercentage(PRINTED_TO_8_DIGITS_PERCENT));
    }

    @Source(
            work = "Spring line of this project: 1950 lbf - 200 lbf/in",
            edition = "assumption, worked by hand",
            where = "type 30, row by row; hold-off 1950 lbf / 30 in2",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "within the 1500 to 2000 lbf of a provincial driver manual")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "0.6, 1830, 0.6 in",
        "1.0, 1750, 1.0 in",
        "1.5, 1650, 1.5 in",
        "2.0, 1550, 2.0 in",
        "2.5, 1450, 2.5 in"
    })
    void spring_force_falls_with_travel(double inches, double pounds, String where) {
        SpringBrake spring = SpringBrake.of(30);

        assertThat(spring.force(Length.ofInches(inches)).inPoundsForce())
                .isEqualTo(pounds, within(ROUNDING));
        assertThat(spring.holdOff().inPsi()).isEqualTo(65, within(ROUNDING));
    }

    @Source(
            work = "Trade press report of a stroke test with cold and hot drums",
            edition = "undated",
            where = "1.5 in at 70 F and 2.125 in at 600 F, both at 85 psi",
            kind = Kind.MEASUREMENT,
            accessed = "2026-11-25",
            note = "read at second hand")
    @Test
    void a_hot_drum_lengthens_the_stroke_as_measured() {
        GaugePressure pressure = GaugePressure.ofPsi(85);
        StrokeModel cold = applied(1.5, 85);
        Length hot = StrokeModel.drumGrowth(Temperature.ofFahrenheit(600));

        assertThat(hot.inInches()).isEqualTo(0.625, within(ROUNDING));
        assertThat(cold.longerBy(hot).strokeAt(pressure).inInches())
                .isEqualTo(2.125, within(ROUNDING));
        assertThat(StrokeModel.drumGrowth(Temperature.ofFahrenheit(170)).inInches())
                .isCloseTo(0.1179245, withinPercentage(1e-4));
    }

    @Source(
            work = "Published stroke increments of rolling stops: 0.05 + 0.034 t",
            edition = "undated",
            where = "stops from 30, 40, 50 and 60 mph",
            kind = Kind.PAPER,
            accessed = "2026-11-25",
            note = "read at second hand; the stop times are worked back from the printed formula")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "2.35, 0.13, 30 mph",
        "3.24, 0.16, 40 mph",
        "4.12, 0.19, 50 mph",
        "5.00, 0.22, 60 mph"
    })
    void rolling_lengthens_the_stroke(double seconds, double inches, String where) {
        assertThat(StrokeModel.rollingGrowth(TimeSpan.ofSeconds(seconds)).inInches())
                .isEqualTo(inches, within(PRINTED_TO_HUNDREDTHS));
    }

    @Source(
            work = "Saskatchewan air brake manual, within an inch of your life",
            edition = "undated",
            where = "type 30 at 80 psi: 1 3/4 in of 2 1/2 in, hot drum 1/2 in, wear 1/4 in",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void heat_and_wear_use_up_the_reserve_of_a_slack_brake() {
        GaugePressure pressure = GaugePressure.ofPsi(80);
        StrokeModel slack = applied(1.75, 80);
        StrokeModel hot = slack.longerBy(Length.parse("1/2 in"));
        StrokeModel worn = hot.longerBy(Length.parse("1/4 in"));

        assertThat(2.5 - slack.strokeAt(pressure).inInches()).isEqualTo(0.75, within(ROUNDING));
        assertThat(2.5 - hot.strokeAt(pressure).inInches()).isEqualTo(0.25, within(ROUNDING));
        assertThat(2.5 - worn.strokeAt(pressure).inInches()).isEqualTo(0, within(ROUNDING));
        assertThat(TYPE_30.net(pressure, hot.strokeAt(pressure)).newtons()).isPositive();
        assertThat(TYPE_30.net(pressure, worn.strokeAt(pressure)).newtons()).isZero();
    }

    private static StrokeModel adjusted() {
        return StrokeModel.ofFreeStroke(30, Length.ofInches(2.5), Length.ofInches(0.5));
    }

    private static StrokeModel applied(double inches, double psi) {
        return StrokeModel.ofAppliedStroke(
                30, Length.ofInches(2.5), Length.ofInches(inches), GaugePressure.ofPsi(psi));
    }

    private static ChamberAir air() {
        return ChamberAir.of(adjusted(), 30, Volume.ofCubicInches(14));
    }
}
