package org.fandown.trace;

import java.util.List;

/**
 * The marks of a log, as a person wrote them down.
 *
 * @param marks the marks
 * @param reaction the longest time from what happened to the mark of it, s
 */
public record OperatorMarks(List<OperatorMark> marks, double reaction) {
    /**
     * The longest time that a person who waits for a lamp or a knob needs to see it and to press a
     * key, s (assumption).
     */
    public static final double USUAL_REACTION = 1.5;

    /** No marks. */
    public static final OperatorMarks NONE = new OperatorMarks(List.of(), USUAL_REACTION);

    /** Copies the list. */
    public OperatorMarks {
        marks = List.copyOf(marks);
    }
}
