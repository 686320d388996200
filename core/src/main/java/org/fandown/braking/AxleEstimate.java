package org.fandown.braking;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * The estimate for one axle.
 *
 * @param axle its number, counted through the combination from the front
 * @param force brake force of both ends together (lbf), or why it is not known
 * @param imbalance difference of the two ends as a part of the stronger one (percent), empty unless
 *     the force of both ends is known and a stroke was read; zero if neither end has any force
 */
public record AxleEstimate(int axle, Answer<Range> force, Optional<Quantity> imbalance) {}
