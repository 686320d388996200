package org.fandown.judgement;

import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * The mean fully developed deceleration of a stop, from two speeds and the distances travelled to
 * them. It is what type-approval rules on deceleration are compared with, since it leaves out the
 * time the brakes need to build up and the last moments of the stop.
 *
 * <p><i>Source:</i> UN Regulation No. 13, Annex 4, paragraph 1.1, as reprinted in paper GRRF-56-3
 * (2004); Directive 71/320/EEC (repealed), Annex II, 1.1.2 agrees. It is (vb^2 - ve^2) / (25.92 (Se
 * - Sb)) in m/s2 with speeds in km/h and distances in m; 25.92 = 2 x 3.6^2.
 *
 * <p><i>Assumes:</i> both distances are counted from the same point.
 *
 * <p><i>Valid for:</i> a stop from v0, with vb = 0.8 v0 and ve = 0.1 v0. The source asks that v0 is
 * at least 98 % of the speed prescribed for the test, and that speed and distance are known to 1 %.
 * Nobody checks that here.
 */
public final class MeanDeceleration {
    private static final double SPEED_B_SHARE = 0.8;
    private static final double SPEED_E_SHARE = 0.1;
    private static final double KMH_SQUARED_PER_M = 25.92;

    private MeanDeceleration() {}

    /**
     * Works it out from the speed at which the brakes were applied.
     *
     * @param v0 speed when the control is moved, above zero
     * @param sb distance travelled until the speed was 0.8 v0
     * @param se distance travelled until the speed was 0.1 v0, longer than {@code sb}
     * @return the mean fully developed deceleration (m/s2)
     * @throws IllegalArgumentException if a quantity is no speed or no distance, v0 is not above
     *     zero, or {@code se} is not longer than {@code sb}
     */
    public static Quantity of(Quantity v0, Quantity sb, Quantity se) {
        double start = in(v0, Dimension.SPEED, Unit.KMH);
        if (!(start > 0)) {
            throw new IllegalArgumentException("The speed " + v0 + " is not above zero.");
        }
        double way = in(se, Dimension.LENGTH, Unit.METRE) - in(sb, Dimension.LENGTH, Unit.METRE);
        if (!(way > 0)) {
            throw new IllegalArgumentException(
                    "The distance " + se + " is not longer than " + sb + ".");
        }
        double vb = SPEED_B_SHARE * start;
        double ve = SPEED_E_SHARE * start;
        return Quantity.of((vb * vb - ve * ve) / (KMH_SQUARED_PER_M * way), Unit.M_PER_S2);
    }

    private static double in(Quantity quantity, Dimension dimension, Unit unit) {
        if (quantity.dimension() != dimension) {
            throw new IllegalArgumentException(quantity + " is not " + dimension.phrase() + ".");
        }
        return quantity.valueIn(unit);
    }
}
