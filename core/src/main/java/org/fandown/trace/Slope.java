package org.fandown.trace;

/**
 * How fast a pressure falls, with what is known of it. All in the unit of the readings per second;
 * a falling pressure has a positive loss.
 *
 * @param loss the expected loss
 * @param uncertainty its standard uncertainty
 * @param low the truth is below this with a probability of 2.5 %
 * @param high the truth is above this with a probability of 2.5 %
 */
public record Slope(double loss, double uncertainty, double low, double high) {}
