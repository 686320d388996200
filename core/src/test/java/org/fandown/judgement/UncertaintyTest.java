package org.fandown.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class UncertaintyTest {
    /** Square roots in double arithmetic. */
    private static final double ROUNDING = 1e-12;

    @Test
    void one_reading_is_off_by_half_a_step_at_most() {
        assertThat(Uncertainty.expanded(1, 2)).isEqualTo(1, within(ROUNDING));
    }

    @Test
    void difference_of_two_readings_is_off_by_two_standard_errors() {
        assertThat(Uncertainty.expanded(2, 1)).isEqualTo(2 / Math.sqrt(6), within(ROUNDING));
    }

    @Test
    void exact_instrument_leaves_no_doubt() {
        assertThat(Uncertainty.expanded(1, 0)).isZero();
        assertThat(Uncertainty.expanded(2, 0)).isZero();
    }

    @Test
    void independent_doubts_add_by_squares() {
        assertThat(Uncertainty.combine(3, 4)).isEqualTo(5, within(ROUNDING));
        assertThat(Uncertainty.combine(0, -0.4)).isEqualTo(0.4);
        assertThat(Uncertainty.combine(0.3, 0)).isEqualTo(0.3);
    }
}
