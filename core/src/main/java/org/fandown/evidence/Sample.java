package org.fandown.evidence;

import org.fandown.units.Quantity;

/**
 * A needle read at a moment of a test.
 *
 * @param time time since the clock was started
 * @param pressure gauge pressure
 */
public record Sample(Quantity time, Quantity pressure) {}
