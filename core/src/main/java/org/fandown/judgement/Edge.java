package org.fandown.judgement;

/**
 * One edge of a limit as a number in the unit of the reading.
 *
 * @param value the figure
 * @param passes whether the figure itself passes
 */
public record Edge(double value, boolean passes) {}
