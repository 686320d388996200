package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fandown.units.Quantity;
import org.junit.jupiter.api.Test;

class MeanDecelerationTest {
    /** Conversions round in the last bits. */
    private static final double LAST_BITS = 1e-12;

    @Test
    void other_units_of_speed_and_distance_give_the_same() {
        // 100 km/h: vb = 80, ve = 10; (6400 - 100) / (25.92 x 50) = 4.8611... m/s2
        Quantity metric = deceleration("100 km/h", "20 m", "70 m");

        assertThat(metric.value()).isCloseTo(6300 / (25.92 * 50), within(LAST_BITS));
        assertThat(deceleration("100 km/h", "0.02 km", "7000 cm").value())
                .isCloseTo(metric.value(), within(LAST_BITS));
    }

    @Test
    void speed_that_is_not_above_zero_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> deceleration("0 km/h", "10 m", "20 m"))
                .withMessageContaining("0 km/h");
    }

    @Test
    void end_that_is_not_beyond_the_beginning_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> deceleration("60 km/h", "20 m", "20 m"))
                .withMessageContaining("not longer than 20 m");
    }

    @Test
    void quantity_of_another_kind_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> deceleration("60 s", "10 m", "20 m"))
                .withMessageContaining("60 s is not a speed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> deceleration("60 km/h", "10 kPa", "20 m"))
                .withMessageContaining("10 kPa is not a length");
    }

    private static Quantity deceleration(String v0, String sb, String se) {
        return MeanDeceleration.of(Quantity.parse(v0), Quantity.parse(sb), Quantity.parse(se));
    }
}
