package org.fandown.trace;

/** What a line of a log turned out to be. */
public enum LineKind {
    /** A classic message with its bytes. */
    FRAME(false, "a message"),
    /** Nothing but white space. */
    BLANK(false, "an empty line"),
    /** The recorder says that it lost messages. */
    DROP_NOTE(false, "a note that messages were lost"),
    /** A request for a message, without bytes. */
    REMOTE_FRAME(false, "a remote request, which carries no value"),
    /** A message of the network about an error of its own. */
    ERROR_FRAME(false, "an error frame of the network"),
    /** A message with flexible data rate, which SAE J1939 of this kind does not use. */
    FD_FRAME(false, "a CAN FD message, which is not decoded"),
    /** A message of the XL kind. */
    XL_FRAME(false, "a CAN XL message, which is not decoded"),
    /** The time is not one. */
    BAD_TIME(
            true,
            "the time cannot be read; allowed: (seconds.fraction) with 1 to 9 digits after the"
                    + " point, or (year-month-day hour:minute:second.fraction)"),
    /** The identifier is not one. */
    BAD_IDENTIFIER(true, "the identifier cannot be read; allowed: 3 or 8 hexadecimal digits"),
    /** The bytes are not as many, or not such, as they must be. */
    BAD_DATA(
            true,
            "the bytes cannot be read; allowed: as many pairs of hexadecimal digits as the length"
                    + " says, 0 to 8"),
    /** Not a line of a candump log at all. */
    NOT_CANDUMP(
            true,
            "this is not a line of a candump log; allowed: '(0.1) can0 18FEAE31#FFFF6E6E' or"
                    + " '(0.1)  can0  18FEAE31   [4]  FF FF 6E 6E'"),
    /** Said to come more than a day after the line before. */
    NOT_SINCE_LAST(
            true,
            "the time is said to be that since the line before, but is more than a day; allowed: up"
                    + " to 86,400 s. If the log has times of one clock, read it without"
                    + " --delta-times"),
    /** Longer than any message. */
    TOO_LONG(true, "the line is longer than any message; allowed: 8000 bytes");

    private final boolean problem;
    private final String text;

    LineKind(boolean problem, String text) {
        this.problem = problem;
        this.text = text;
    }

    /** Returns whether the line is damaged or does not belong in a log. */
    public boolean isProblem() {
        return problem;
    }

    /** Returns what it is in words, a clause. */
    public String text() {
        return text;
    }

    /** Returns a sentence about a line. */
    public String at(long line) {
        return "Line " + line + ": " + text + ".";
    }
}
