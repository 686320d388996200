package org.fandown.reference.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.fandown.braking.FoundationBrake;
import org.fandown.braking.Stopping;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.Force;
import org.fandown.units.Length;
import org.fandown.units.Quantity;
import org.fandown.units.TimeSpan;
import org.fandown.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoppingReferenceTest {
    /** The expected values are printed to nine or ten digits. */
    private static final double PRINTED_TO_9_DIGITS_PERCENT = 1e-6;

    /** The table prints whole feet, and rows without lag were rounded down by up to half a foot. */
    private static final double PRINTED_TO_WHOLE_FEET = 0.5;

    private static final Quantity TWENTY_MPH = Quantity.parse("20 mph");

    @Source(
            work = "Accident-reconstruction worksheet for cam brakes",
            edition = "undated",
            where = "2 x push x arm x friction x drum radius x 0.6 / (0.5 x tyre radius)",
            kind = Kind.OTHER_PROGRAM,
            accessed = "2026-11-25",
            note = "2700 lbf, 5.5 in, 0.35, 8.25 in, 19.5 in; worked by hand from the formula")
    @Test
    void brake_force_follows_the_worksheet() {
        FoundationBrake brake =
                FoundationBrake.cam(
                        Length.ofInches(5.5), 0.35, Length.ofInches(8.25), Length.ofInches(19.5));

        double pounds = brake.atTyre(Force.ofPoundsForce(2700)).inPoundsForce();

        assertThat(pounds).isCloseTo(5277.461538, withinPercentage(PRINTED_TO_9_DIGITS_PERCENT));
        assertThat(pounds * 19.5)
                .as("brake torque, lbf in")
                .isCloseTo(102_910.5, withinPercentage(PRINTED_TO_9_DIGITS_PERCENT));
    }

    @Source(
            work = "Kinematics: v^2 / 2a",
            edition = "worked by hand",
            where = "20 mph at the decelerations of 49 CFR 393.52",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "14, 30.73015873, 14 ft/s2",
        "17, 25.30718954, 17 ft/s2",
        "21, 20.48677249, 21 ft/s2"
    })
    void distance_without_lag(double deceleration, double feet, String where) {
        assertThat(feet(deceleration))
                .isCloseTo(feet, withinPercentage(PRINTED_TO_9_DIGITS_PERCENT));
    }

    @Source(
            work = "49 CFR 393.52, brake performance",
            edition = "rule structure of 2002, numbers as a state inspection code copies them",
            where = "table, rows of 17 and 21 ft/s2: service stop 25 and 20 ft",
            kind = Kind.REGULATION,
            accessed = "2026-11-25",
            note = "these two rows leave nothing for lag")
    @ParameterizedTest(name = "{2}")
    @CsvSource({"17, 25, 17 ft/s2 within 25 ft", "21, 20, 21 ft/s2 within 20 ft"})
    void the_table_s_short_stops_agree_without_lag(double deceleration, double feet, String where) {
        assertThat(feet(deceleration)).isEqualTo(feet, within(PRINTED_TO_WHOLE_FEET));
    }

    @Source(
            work = "Kinematics: dead time, even rise, constant deceleration",
            edition = "worked by hand",
            where = "20 mph, 14 ft/s2, 0.1 s and 0.4 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void distance_with_dead_time_and_rise() {
        Quantity distance =
                Stopping.distance(
                        TWENTY_MPH,
                        Quantity.parse("14 ft/s2"),
                        TimeSpan.ofSeconds(0.1),
                        TimeSpan.ofSeconds(0.4));

        assertThat(distance.valueIn(Unit.FOOT))
                .isCloseTo(39.4368254, withinPercentage(PRINTED_TO_9_DIGITS_PERCENT));
    }

    private static double feet(double deceleration) {
        return Stopping.distance(TWENTY_MPH, Quantity.of(deceleration, Unit.FT_PER_S2))
                .valueIn(Unit.FOOT);
    }
}
