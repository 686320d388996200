package org.fandown.rulebook;

/**
 * Whether a rule applies to a vehicle, or which fact would tell.
 *
 * @param answer yes, no, or unknown
 * @param missing the fact the vehicle file does not give, empty unless unknown
 */
public record Fit(Answer answer, String missing) {
    /** It applies. */
    public static final Fit YES = new Fit(Answer.YES, "");

    /** It does not apply. */
    public static final Fit NO = new Fit(Answer.NO, "");

    /** Yes, no, or unknown. */
    public enum Answer {
        /** It applies. */
        YES,
        /** It does not apply. */
        NO,
        /** The vehicle file does not say. */
        UNKNOWN
    }

    static Fit of(boolean applies) {
        return applies ? YES : NO;
    }

    static Fit unknown(String missing) {
        return new Fit(Answer.UNKNOWN, missing);
    }

    /** Both have to hold: no beats unknown, unknown beats yes. */
    Fit and(Fit other) {
        if (answer == Answer.NO || other.answer == Answer.NO) {
            return NO;
        }
        return answer == Answer.UNKNOWN ? this : other;
    }
}
