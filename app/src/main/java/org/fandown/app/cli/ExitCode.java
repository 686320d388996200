package org.fandown.app.cli;

import org.fandown.check.Verdict;

/** What a command ends with, for scripts that start it. */
public final class ExitCode {
    /** The work is done and, where there is a verdict, the vehicle is fit to move. */
    public static final int DONE = 0;

    /** The vehicle is not fit to move. */
    public static final int NOT_FIT_TO_MOVE = 1;

    /** The order of work that was examined is not sound. */
    public static final int NOT_SOUND = 1;

    /** What was checked is not as it must be. */
    public static final int WRONG = 1;

    /** A marked run is not passed. */
    public static final int NOT_PASSED = 1;

    /** Something in the store that was checked is not as it was kept. */
    public static final int BROKEN = 1;

    /** Nothing was judged: bad usage, bad input, or a failure of the program itself. */
    public static final int REFUSED = 2;

    /** The evidence does not prove that the vehicle is fit to move. */
    public static final int NOT_PROVEN = 3;

    private ExitCode() {}

    /** Returns what a verdict ends with. */
    static int of(Verdict verdict) {
        return switch (verdict) {
            case FIT_TO_MOVE -> DONE;
            case NOT_FIT_TO_MOVE -> NOT_FIT_TO_MOVE;
            case NOT_PROVEN -> NOT_PROVEN;
        };
    }
}
