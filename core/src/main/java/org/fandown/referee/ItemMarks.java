package org.fandown.referee;

import java.util.List;

/**
 * What one line of the sheet came to.
 *
 * @param item the line
 * @param deducted points taken off
 * @param of the most that could be taken off
 * @param critical whether a mistake here fails the run
 * @param feedback the mistakes, in time
 */
public record ItemMarks(
        Item item, int deducted, int of, boolean critical, List<Feedback> feedback) {
    /** Copies the list. */
    public ItemMarks {
        feedback = List.copyOf(feedback);
    }
}
