package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fandown.evidence.Sample;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.junit.jupiter.api.Test;

class StraightLineTest {
    /** Sums of a few readings in double arithmetic. */
    private static final double ROUNDING = 1e-12;

    @Test
    void line_through_points_of_a_line_is_that_line() {
        StraightLine line = line(new double[] {0, 10, 25, 60}, new double[] {100, 99, 97.5, 94});

        assertThat(line.slope()).isEqualTo(-0.1, within(ROUNDING));
        assertThat(line.time()).isEqualTo(60);
        assertThat(line.uncertainty(0)).isEqualTo(0, within(ROUNDING));
    }

    @Test
    void times_in_other_units_are_brought_to_the_clock_asked_for() {
        List<Sample> samples =
                List.of(
                        new Sample(Quantity.parse("0 s"), Quantity.parse("100 psi")),
                        new Sample(Quantity.parse("30 s"), Quantity.parse("99 psi")),
                        new Sample(Quantity.parse("1 min"), Quantity.parse("98 psi")));

        assertThat(StraightLine.through(samples, Unit.MINUTE).slope())
                .isEqualTo(-2, within(ROUNDING));
    }

    @Test
    void scatter_counts_twice_its_standard_error() {
        // Least squares through 100, 98, 99 at 0, 30, 60 s: slope -1/60, residuals 0.5, -1, 0.5.
        StraightLine line = line(new double[] {0, 30, 60}, new double[] {100, 98, 99});

        assertThat(line.slope()).isEqualTo(-1.0 / 60, within(ROUNDING));
        assertThat(line.uncertainty(0)).isEqualTo(2 * Math.sqrt(1.5 / 1800), within(ROUNDING));
    }

    @Test
    void three_even_readings_of_a_coarse_gauge_are_off_by_as_much_as_the_two_at_the_ends() {
        StraightLine line = line(new double[] {0, 30, 60}, new double[] {100, 98, 96});

        assertThat(line.uncertainty(1) * 60).isEqualTo(1, within(ROUNDING));
    }

    @Test
    void uneven_times_do_not_make_a_line_surer_than_its_readings_allow() {
        // Eight readings close together in the middle show one step; nothing is known beyond.
        double[] times = {0, 27, 28, 29, 30, 30.5, 31, 32, 33, 60};
        double[] needle = {100, 100, 100, 100, 100, 99, 99, 99, 99, 99};
        StraightLine line = line(times, needle);

        double low = line.slope() - line.uncertainty(1);
        assertThat(low * 60).isLessThanOrEqualTo(-1.9);
        assertThat(line.slope() + line.uncertainty(1)).isGreaterThanOrEqualTo(0);
    }

    @Test
    void needle_that_never_moves_is_off_by_the_bound_no_rounding_exceeds() {
        double[] times = new double[61];
        double[] needle = new double[61];
        for (int i = 0; i <= 60; i++) {
            times[i] = i;
            needle[i] = 100;
        }
        StraightLine line = line(times, needle);

        assertThat(line.slope()).isZero();
        // Distances from the middle add up to 930 s, their squares to 18 910 s2.
        assertThat(line.uncertainty(1) * 60).isEqualTo(0.5 * 930 / 18_910 * 60, within(ROUNDING));
    }

    @Test
    void scatter_beyond_the_step_is_not_mistaken_for_rounding() {
        double[] times = {0, 10, 20, 30, 40, 50, 60};
        double[] needle = {100, 103, 96, 101, 95, 99, 94};
        StraightLine line = line(times, needle);

        assertThat(line.uncertainty(0.001)).isEqualTo(line.uncertainty(0), within(1e-4));
    }

    private static StraightLine line(double[] times, double[] needle) {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            samples.add(
                    new Sample(
                            Quantity.of(times[i], Unit.SECOND), Quantity.of(needle[i], Unit.PSI)));
        }
        return StraightLine.through(samples, Unit.SECOND);
    }
}
