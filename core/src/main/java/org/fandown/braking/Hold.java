package org.fandown.braking;

/**
 * The estimate of what the spring brakes hold.
 *
 * @param force holding force at the tyres (lbf)
 * @param grade steepest grade on which they hold the vehicle (percent: rise by run), or why it is
 *     not known
 */
public record Hold(Range force, Answer<Range> grade) {}
