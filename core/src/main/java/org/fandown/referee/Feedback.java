package org.fandown.referee;

/**
 * One mistake.
 *
 * @param item which line of the sheet it counts under
 * @param seconds when, s since the start of the run
 * @param happened what happened, a sentence
 * @param spoiled what it spoiled or could have led to, a sentence; empty text if nothing more
 * @param instead what to do instead, a sentence
 */
public record Feedback(
        Item item, double seconds, String happened, String spoiled, String instead) {}
