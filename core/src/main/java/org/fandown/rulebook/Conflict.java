package org.fandown.rulebook;

/**
 * Another rule that says otherwise and is the one applied.
 *
 * @param with id of the rule that is applied
 * @param settled whether the other rule decides alone; if not, a reading on which the two disagree
 *     is undetermined
 * @param why how the choice was made
 */
public record Conflict(String with, boolean settled, String why) {}
