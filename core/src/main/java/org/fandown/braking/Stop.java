package org.fandown.braking;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * The estimate of a stop on a level, hard and dry road.
 *
 * @param deceleration after the brakes have risen (ft/s2)
 * @param shareOfWeight brake force as a part of the weight (percent)
 * @param shortest stopping distance at the greatest deceleration (ft), empty if there is none
 * @param longest stopping distance at the least deceleration (ft), empty if there is none: the
 *     vehicle may not stop
 */
public record Stop(
        Range deceleration,
        Range shareOfWeight,
        Optional<Quantity> shortest,
        Optional<Quantity> longest) {}
