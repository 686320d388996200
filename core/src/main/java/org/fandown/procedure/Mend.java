package org.fandown.procedure;

/**
 * The smallest change that mends a violation.
 *
 * @param text what to change, as an order
 * @param order the order after it
 * @param left how many violations are left then
 */
public record Mend(String text, Order order, int left) {}
