package org.fandown.judgement;

import org.fandown.check.Check;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;

/** What to do next when a reading does not decide. */
final class Advice {
    private Advice() {}

    static String closer(Check check) {
        return switch (check.kind()) {
            case AIR_LOSS -> "Hold for longer (two minutes halve the doubt) or read a finer gauge.";
            case BUILD_UP -> "Read a finer gauge, or note the needle at several moments.";
            case WHEEL_VALUE -> "Measure again with a thin mark and a finer rule.";
            default -> "Repeat the test, or read a finer gauge.";
        };
    }

    /** Whether a limit depends on other readings, so that its figure has to be shown. */
    static boolean isWorkedOut(Limit limit) {
        if (!(limit instanceof Limit.Numeric numeric)) {
            return false;
        }
        NumericLimit edges = numeric.edges();
        return edges.lower().map(e -> !(e.bound() instanceof Bound.Figure)).orElse(false)
                || edges.upper().map(e -> !(e.bound() instanceof Bound.Figure)).orElse(false);
    }
}
