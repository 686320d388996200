package org.fandown.procedure;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.NumericLimit;
import org.fandown.units.Dimension;
import org.fandown.units.Unit;

/** Edges of printed limits in whole psi, on the safe side. */
final class Edges {
    private static final double ROUNDING = 1e-6;

    private final Durations durations;

    Edges(Durations durations) {
        this.durations = durations;
    }

    /** The least whole pressure above a lower edge, empty if there is none or it is not known. */
    Optional<Integer> lower(NumericLimit limit) {
        return limit.lower()
                .flatMap(edge -> psi(edge.bound()).map(psi -> lower(psi, edge.passes())));
    }

    /** The greatest whole pressure below an upper edge. */
    Optional<Integer> upper(NumericLimit limit) {
        return limit.upper()
                .flatMap(edge -> psi(edge.bound()).map(psi -> upper(psi, edge.passes())));
    }

    private static int lower(double psi, boolean passes) {
        int least = (int) Math.ceil(psi - ROUNDING);
        return !passes && least - psi < ROUNDING ? least + 1 : least;
    }

    private static int upper(double psi, boolean passes) {
        int most = (int) Math.floor(psi + ROUNDING);
        return !passes && psi - most < ROUNDING ? most - 1 : most;
    }

    /** A figure in psi, empty if it is no pressure or has to be read first. */
    Optional<Double> psi(Bound bound) {
        if (bound instanceof Bound.Figure figure) {
            boolean pressure = figure.printed().own().dimension() == Dimension.GAUGE_PRESSURE;
            return pressure ? Optional.of(figure.printed().in(Unit.PSI)) : Optional.empty();
        }
        if (bound instanceof Bound.ShareOfCheck share) {
            double of =
                    share.of() == Check.GOVERNOR_CUT_IN
                            ? durations.cutIn()
                            : share.of() == Check.GOVERNOR_CUT_OUT ? durations.cutOut() : 0;
            return of > 0 ? Optional.of(of * share.percent() / 100) : Optional.empty();
        }
        return Optional.empty();
    }
}
