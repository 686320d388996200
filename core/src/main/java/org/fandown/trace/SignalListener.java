package org.fandown.trace;

/** Takes the signals of a log in the order of its lines. */
public interface SignalListener {
    /**
     * Takes a value.
     *
     * @param signal what it is of
     * @param frame the message it came with, for its time, source and line; filled again afterwards
     * @param value the value in the unit of the signal; 0 or 1 for a switch
     */
    void value(Signal signal, CanFrame frame, double value);

    /**
     * Takes note that a message had no value for a signal.
     *
     * @param signal the signal
     * @param frame the message; filled again afterwards
     * @param why why there is none
     */
    default void absent(Signal signal, CanFrame frame, Absence why) {}
}
