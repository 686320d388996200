package org.fandown.plot;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LongCurveTest {
    @Test
    void few_values_are_all_kept() {
        LongCurve curve = new LongCurve();
        curve.add(0, 5);
        curve.add(1, 3);
        curve.add(2, 8);
        Curve kept = curve.curve("x");

        assertThat(kept.name()).isEqualTo("x");
        assertThat(kept.size()).isEqualTo(3);
        assertThat(kept.value(1)).isEqualTo(3);
        assertThat(kept.time(2)).isEqualTo(2);
    }

    @Test
    void of_many_values_the_peaks_stay_and_the_room_does_not_grow() {
        LongCurve curve = new LongCurve();
        for (int i = 0; i < 1_000_000; i++) {
            curve.add(i, i == 654_321 ? 140 : i == 123_456 ? 2 : 100);
        }
        Curve kept = curve.curve("x");

        assertThat(kept.size()).isBetween(1000, 2 * 4096);
        assertThat(kept.highest()).isEqualTo(140);
        assertThat(times(kept, 140)).containsExactly(654_321);
        assertThat(times(kept, 2)).containsExactly(123_456);
    }

    private static double[] times(Curve curve, double value) {
        return java.util.stream.IntStream.range(0, curve.size())
                .filter(i -> curve.value(i) == value)
                .mapToDouble(curve::time)
                .toArray();
    }

    @Test
    void nothing_makes_an_empty_curve() {
        assertThat(new LongCurve().curve("x").size()).isZero();
    }
}
