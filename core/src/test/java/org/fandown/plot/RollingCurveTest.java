package org.fandown.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RollingCurveTest {
    /** Strips of time in a picture. */
    private static final int STRIPS = 500;

    /**
     * The finest times, of which the one that reaches across the beginning of a part may have its
     * lowest and highest value before it, s.
     */
    private static final double SHORTEST = 1.0 / 16;

    /** The sums of a tenth of a second are off by less, s. */
    private static final double ROUNDING = 1e-6;

    @Test
    void few_values_are_all_kept() {
        RollingCurve rolling = new RollingCurve();
        for (int i = 0; i <= 10; i++) {
            rolling.add(i, 100 - i);
        }
        Curve part = rolling.part("primary", 3, 7, STRIPS);

        assertThat(part.name()).isEqualTo("primary");
        assertThat(part.size()).isEqualTo(5);
        assertThat(part.time(0)).isEqualTo(3);
        assertThat(part.value(0)).isEqualTo(97);
        assertThat(part.value(4)).isEqualTo(93);
    }

    @Test
    void last_minute_of_a_month_is_as_fine_as_ever_and_the_month_is_still_whole() {
        RollingCurve rolling = new RollingCurve();
        int samples = 30 * 24 * 3600;
        for (int i = 0; i < samples; i++) {
            rolling.add(i, i == 54_321 ? 140 : i == samples - 30 ? 90 : 120);
        }
        Curve minute = rolling.part("last minute", samples - 60, samples, STRIPS);
        Curve month = rolling.part("month", 0, samples, STRIPS);

        assertThat(minute.size()).isEqualTo(60);
        assertThat(lowest(minute)).isEqualTo(90);
        assertThat(month.highest()).isEqualTo(140);
        assertThat(lowest(month)).isEqualTo(90);
        assertThat(month.size()).isLessThanOrEqualTo(2 * STRIPS + 2);
    }

    @Property(tries = 200)
    void lowest_and_highest_of_what_was_just_recorded_are_never_lost(
            @ForAll @IntRange(min = 1, max = 3000) int count,
            @ForAll @DoubleRange(min = 0.01, max = 20) double step,
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 1) double from) {
        RollingCurve rolling = new RollingCurve();
        Random random = new Random(seed);
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = random.nextDouble() * 130;
            rolling.add(i * step, values[i]);
        }
        double end = (count - 1) * step;
        double begin = Math.max(from * end, end - 100);
        Curve part = rolling.part("p", begin, end, STRIPS);

        assertThat(part.size()).isLessThanOrEqualTo(2 * STRIPS + 2);
        for (int i = 0; i < count; i++) {
            if (i * step >= begin + SHORTEST) {
                assertThat(lowest(part)).isLessThanOrEqualTo(values[i]);
                assertThat(part.highest()).isGreaterThanOrEqualTo(values[i]);
            }
        }
        for (int i = 0; i < part.size(); i++) {
            assertThat(part.time(i)).isBetween(i == 0 ? begin : part.time(i - 1), end);
        }
    }

    @Test
    void parts_may_be_asked_for_while_values_come() {
        RollingCurve asked = new RollingCurve();
        RollingCurve left = new RollingCurve();
        for (int i = 0; i < 20_000; i++) {
            asked.add(i * 0.1, Math.abs(i % 100 - 50));
            left.add(i * 0.1, Math.abs(i % 100 - 50));
            if (i % 777 == 0) {
                asked.part("p", 0, i * 0.1 + 1, STRIPS);
            }
        }
        Curve one = asked.part("p", 0, 2000, STRIPS);
        Curve other = left.part("p", 0, 2000, STRIPS);

        assertThat(one.size()).isEqualTo(other.size());
        for (int i = 0; i < one.size(); i++) {
            assertThat(one.time(i)).isEqualTo(other.time(i), within(ROUNDING));
            assertThat(one.value(i)).isEqualTo(other.value(i));
        }
    }

    private static double lowest(Curve curve) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < curve.size(); i++) {
            lowest = Math.min(lowest, curve.value(i));
        }
        return lowest;
    }
}
