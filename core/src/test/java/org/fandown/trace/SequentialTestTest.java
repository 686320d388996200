package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.fandown.trace.SequentialTest.State;
import org.fandown.units.Num;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SequentialTestTest {
    /** The sum over the mixture has cells of a hundredth of its spread, out to eight of them. */
    private static final double SUMMED = 1e-4;

    /** Two of a hundred runs more or less, in a thousand runs. */
    private static final double BY_CHANCE = 0.015;

    private static final int RUNS = 1000;

    @ParameterizedTest
    @CsvSource({"0, 0.5", "0.8, 0.5", "-1.5, 0.5", "2, 0.3", "-0.4, 1.7", "3, 4"})
    void ratio_is_the_mixture_of_the_ratios_of_wald(double off, double uncertainty) {
        double sum = 0;
        double cell = SequentialTest.SPREAD / 100;
        for (int i = -800; i <= 800; i++) {
            double other = i * cell;
            double weight = Num.exp(-0.5 * i * i / 1e4) / Math.sqrt(2 * Math.PI) / 100;
            double wald = (off * other - other * other / 2) / (uncertainty * uncertainty);
            sum += weight * Num.exp(wald);
        }
        assertThat(SequentialTest.logRatio(off, uncertainty))
                .isCloseTo(Num.log(sum), within(SUMMED));
    }

    @Test
    void boundary_is_where_the_ratio_reaches_one_over_the_risk() {
        // 0.5 sqrt(1.0625 (2 ln 20 + ln 17)), the spread being 2 and the risk 0.05
        assertThat(SequentialTest.boundary(0.5)).isCloseTo(1.53103, within(1e-5));
        for (double u : new double[] {0.05, 0.2, 1, 3}) {
            double at = SequentialTest.boundary(u);
            assertThat(SequentialTest.logRatio(at, u)).isCloseTo(Num.log(20), within(1e-9));
            assertThat(SequentialTest.decide(4 - at - 1e-6, u, 4)).isEqualTo(State.WITHIN);
            assertThat(SequentialTest.decide(4 + at + 1e-6, u, 4)).isEqualTo(State.OVER);
            assertThat(SequentialTest.decide(4 - at + 1e-6, u, 4)).isEqualTo(State.UNDECIDED);
        }
    }

    @Test
    void looking_at_every_second_does_not_spoil_the_risk() {
        int within = 0;
        int over = 0;
        for (int run = 0; run < RUNS; run++) {
            State state = run(3, 3, run);
            within += state == State.WITHIN ? 1 : 0;
            over += state == State.OVER ? 1 : 0;
        }
        assertThat(within / (double) RUNS).isLessThan(SequentialTest.RISK / 2 + BY_CHANCE);
        assertThat(over / (double) RUNS).isLessThan(SequentialTest.RISK / 2 + BY_CHANCE);
    }

    @Test
    void truth_away_from_the_limit_is_found_and_hardly_ever_missed() {
        int right = 0;
        for (int run = 0; run < RUNS; run++) {
            State state = run(2, 3, run);
            right += state == State.WITHIN ? 1 : 0;
        }
        assertThat(right / (double) RUNS).isGreaterThan(0.99);
    }

    /**
     * Readings once a second for five minutes with independent errors of 0.3 psi; the line through
     * all so far is looked at every second.
     */
    private static State run(double loss, double limit, long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        double sumT = 0;
        double sumY = 0;
        double sumTt = 0;
        double sumTy = 0;
        for (int n = 1; n <= 300; n++) {
            double t = n / 60.0;
            double y = -loss * t + 0.3 * gauss(lot);
            sumT += t;
            sumY += y;
            sumTt += t * t;
            sumTy += t * y;
            double spread = sumTt - sumT * sumT / n;
            if (n >= 10) {
                double estimate = -(sumTy - sumT * sumY / n) / spread;
                State state = SequentialTest.decide(estimate, 0.3 / Math.sqrt(spread), limit);
                if (state != State.UNDECIDED) {
                    return state;
                }
            }
        }
        return State.UNDECIDED;
    }

    private static double gauss(SplittableRandom lot) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += lot.nextDouble();
        }
        return sum;
    }

    @Test
    void time_that_is_needed_is_when_the_boundary_comes_down_to_the_estimate() {
        double needed = SequentialTest.secondsNeeded(-1, 0.5, 30, 300);

        assertThat(SequentialTest.boundary(0.5 * 30 / needed)).isCloseTo(1, within(0.02));
        assertThat(SequentialTest.secondsNeeded(0.05, 0.5, 30, 300)).isNaN();
    }
}
