package org.fandown.trace;

/** Takes what a reader finds in a log, line by line in the order of the log. */
public interface FrameListener {
    /**
     * Takes a message.
     *
     * @param frame the message; the same object is filled again for the next one
     */
    void frame(CanFrame frame);

    /**
     * Takes note of a line that is no message with bytes: {@link LineKind#isProblem} tells a
     * damaged line from one that is left out on purpose. Blank lines are not mentioned.
     *
     * @param line number of the line, 1 for the first
     * @param kind what it is
     */
    default void skipped(long line, LineKind kind) {}

    /**
     * Takes note that the recorder lost messages.
     *
     * @param line number of the line, 1 for the first
     * @param frames how many messages it says were lost
     */
    default void dropped(long line, long frames) {}
}
