package org.fandown.trace;

/**
 * Something a person marked.
 *
 * @param word what
 * @param clock whose time it is
 * @param seconds when
 */
public record OperatorMark(MarkWord word, Clock clock, double seconds) {
    /** Whose time a mark has. */
    public enum Clock {
        /** Seconds since the first sample, as results show them. */
        TRACE,
        /** The time that stands in the log; dates count as seconds since 1970. */
        LOG
    }
}
