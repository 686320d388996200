package org.fandown.app.paper;

/**
 * What came of one check of a document.
 *
 * @param check what was checked, a word: {@code signature}
 * @param outcome what came of it
 * @param says why, and what to do next where something is left to do
 */
public record CheckLine(String check, Outcome outcome, String says) {
    /** What can come of a check. */
    public enum Outcome {
        /** It holds. */
        OK,
        /** It does not hold. */
        NOT_OK,
        /** It could not be looked at, so nothing is proven. */
        NOT_CHECKED
    }

    /** It holds. */
    public static CheckLine ok(String check, String says) {
        return new CheckLine(check, Outcome.OK, says);
    }

    /** It does not hold. */
    public static CheckLine notOk(String check, String says) {
        return new CheckLine(check, Outcome.NOT_OK, says);
    }

    /** It could not be looked at. */
    public static CheckLine notChecked(String check, String says) {
        return new CheckLine(check, Outcome.NOT_CHECKED, says);
    }
}
