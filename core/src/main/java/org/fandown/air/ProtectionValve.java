package org.fandown.air;

import org.fandown.units.GaugePressure;

/**
 * A valve that keeps air back for what is before it: shut up to a pressure before it, opening
 * evenly over a range above, and never passing air backwards.
 *
 * @param way the way, wide open
 * @param crack pressure lost on the way, as in a check valve, 0 or more
 * @param shut pressure before it up to which it is shut
 * @param range how far above that it is wide open, more than 0
 */
public record ProtectionValve(
        Restriction way, GaugePressure crack, GaugePressure shut, GaugePressure range) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public ProtectionValve {
        if (!(crack.pascals() >= 0) || !(range.pascals() > 0)) {
            throw new IllegalArgumentException(
                    "A protection valve needs an opening pressure of 0 or more and a range above"
                            + " 0.");
        }
    }
}
