package org.fandown.braking;

import java.util.Optional;

/**
 * The forces at one wheel.
 *
 * @param pushRod force on the push rod (lbf), the return spring's part taken off
 * @param atTyre brake force at the tyre (lbf)
 * @param shareOfAdjusted brake force as a part of that of the same brake cold and fully adjusted
 *     (percent), empty without a brake
 */
public record WheelForce(Range pushRod, Range atTyre, Optional<Range> shareOfAdjusted) {}
