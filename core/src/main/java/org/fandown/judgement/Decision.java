package org.fandown.judgement;

import java.util.Optional;

/**
 * The three-way decision: does the interval of a measured value lie wholly inside the limit, wholly
 * outside, or across an edge?
 *
 * <p>Source: JCGM 106:2012, 8.3.2 and 8.3.3, guarded acceptance and guarded rejection, with the
 * guard band equal to the expanded uncertainty; what lies between is not decided.
 */
final class Decision {
    /** Relative slack for rounding in the arithmetic of readings: far below any instrument. */
    private static final double ROUNDING = 1e-9;

    private Decision() {}

    static Status decide(double low, double high, Optional<Edge> lower, Optional<Edge> upper) {
        boolean inside =
                (lower.isEmpty() || above(low, lower.get()))
                        && (upper.isEmpty() || below(high, upper.get()));
        if (inside) {
            return Status.MET;
        }
        boolean outside =
                (lower.isPresent() && !above(high, lower.get()))
                        || (upper.isPresent() && !below(low, upper.get()));
        return outside ? Status.NOT_MET : Status.UNDETERMINED;
    }

    private static boolean above(double value, Edge edge) {
        double slack = slack(edge.value());
        return edge.passes() ? value >= edge.value() - slack : value > edge.value() + slack;
    }

    private static boolean below(double value, Edge edge) {
        double slack = slack(edge.value());
        return edge.passes() ? value <= edge.value() + slack : value < edge.value() - slack;
    }

    private static double slack(double value) {
        return ROUNDING * Math.max(1, Math.abs(value));
    }
}
