package org.fandown.property.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fandown.air.Flow;
import org.fandown.air.Restriction;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.Temperature;

class FlowPropertyTest {
    /** Rounding of a square root and a few products. */
    private static final double ROUNDING = 1e-12;

    /** Ratio from which the flow is a straight line. */
    private static final double STRAIGHT_FROM = 0.999;

    /** A step of the ratio so small that a jump would stand out against the slope. */
    private static final double NEAR = 1e-9;

    /** The steepest part, the straight line for a critical ratio of 0.9: choked x 141 per unit. */
    private static final double STEEPEST = 150;

    private static final double CONDUCTANCE = 1e-7;

    @Property
    void flow_grows_with_the_pressure_it_comes_from_and_falls_with_the_one_it_goes_to(
            @ForAll @DoubleRange(min = 1e4, max = 1e6) double from,
            @ForAll @DoubleRange(min = 1e4, max = 1e6) double to,
            @ForAll @DoubleRange(min = 0, max = 1e5) double more,
            @ForAll @DoubleRange(min = 0, max = 0.9) double ratio) {
        double flow = flow(ratio, from, to);
        double choked = flow(ratio, 1.2e6, 0);

        assertThat(flow(ratio, from + more, to)).isGreaterThanOrEqualTo(flow - choked * ROUNDING);
        assertThat(flow(ratio, from, to + more)).isLessThanOrEqualTo(flow + choked * ROUNDING);
    }

    @Property
    void nothing_flows_between_equal_pressures_and_flow_turns_with_them(
            @ForAll @DoubleRange(min = 1e4, max = 1e6) double from,
            @ForAll @DoubleRange(min = 1e4, max = 1e6) double to,
            @ForAll @DoubleRange(min = 0, max = 0.9) double ratio) {
        assertThat(flow(ratio, from, from)).isZero();
        assertThat(flow(ratio, from, to)).isEqualTo(-flow(ratio, to, from));
    }

    @Property
    void flow_has_no_jump_where_its_law_changes(
            @ForAll @DoubleRange(min = 1e4, max = 1e6) double from,
            @ForAll @DoubleRange(min = 0.01, max = 0.9) double ratio) {
        double choked = flow(ratio, from, 0);
        for (double corner : new double[] {ratio, STRAIGHT_FROM}) {
            double below = flow(ratio, from, from * (corner - NEAR));
            double above = flow(ratio, from, from * (corner + NEAR));

            assertThat(below).isEqualTo(above, within(choked * 2 * NEAR * STEEPEST));
        }
    }

    @Property
    void a_leak_is_in_proportion_to_the_absolute_pressure(
            @ForAll @DoubleRange(min = 3e5, max = 1e6) double pressure,
            @ForAll @DoubleRange(min = 1, max = 3) double times) {
        double once = flow(0.5, pressure, 101_325);

        assertThat(flow(0.5, times * pressure, 101_325))
                .isEqualTo(times * once, within(times * once * ROUNDING));
    }

    private static double flow(double ratio, double from, double to) {
        return Flow.massFlow(
                new Restriction(CONDUCTANCE, ratio),
                new AbsolutePressure(from),
                new AbsolutePressure(to),
                new Temperature(293.15));
    }
}
