package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoarseLineTest {
    private static final int READINGS = 61;

    /** Readings floor(level + 0.5 - loss t), one a second, with steps of 1 psi and no noise. */
    private static Slope staircase(double level, double lossPerMinute) {
        double[] times = new double[READINGS];
        double[] readings = new double[READINGS];
        for (int i = 0; i < READINGS; i++) {
            times[i] = i;
            readings[i] = Math.floor(level - lossPerMinute / 60 * i + 0.5);
        }
        return CoarseLine.fit(times, readings, READINGS, 1, 0);
    }

    @Test
    void the_interval_of_a_staircase_holds_the_truth_wherever_the_first_step_falls() {
        int outside = 0;
        for (int k = 0; k < 40; k++) {
            Slope slope = staircase(100 + k / 40.0, 2);
            boolean holds = 60 * slope.low() <= 2 && 60 * slope.high() >= 2;
            outside += holds ? 0 : 1;
            assertThat(60 * slope.loss()).isBetween(1.4, 2.6);
        }
        assertThat(outside).isLessThanOrEqualTo(3);
    }

    /** A needle that never moved tells only that less than a step was lost. */
    @Test
    void a_needle_that_stands_still_leaves_a_loss_open() {
        Slope slope = staircase(100, 0);

        assertThat(60 * slope.high()).isBetween(0.5, 1.1);
        assertThat(slope.low()).isBetween(0.0, 0.001);
    }

    /** With 100 draws the share inside lies within 0.95 +- 0.066 in 997 of 1000 cases. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.15", "1, 0.05", "1, 0.4", "1.16, 0.2"})
    void ninety_five_of_a_hundred_intervals_hold_the_truth(double step, double noise) {
        SplittableRandom lot = new SplittableRandom(20261125);
        int inside = 0;
        int draws = 100;
        for (int k = 0; k < draws; k++) {
            double loss = 8 * lot.nextDouble();
            Slope slope = noisy(loss, step, noise, lot);
            inside += 60 * slope.low() <= loss && 60 * slope.high() >= loss ? 1 : 0;
        }
        assertThat((double) inside / draws).isBetween(0.884, 1.0);
    }

    private static Slope noisy(double loss, double step, double noise, SplittableRandom lot) {
        double[] times = new double[READINGS];
        double[] readings = new double[READINGS];
        double level = 100 + 5 * lot.nextDouble();
        for (int i = 0; i < READINGS; i++) {
            double sum = -6;
            for (int j = 0; j < 12; j++) {
                sum += lot.nextDouble();
            }
            times[i] = i;
            double psi = level - loss / 60 * i + noise * sum;
            readings[i] = step * Math.floor(psi / step + 0.5);
        }
        return CoarseLine.fit(times, readings, READINGS, step, 0);
    }
}
