package org.fandown.judgement;

import java.util.Optional;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.NumericLimit;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Chamber;
import org.jspecify.annotations.Nullable;

/** Works out the edges of a limit as numbers in the unit of a reading. */
final class Bounds {
    private final Case before;
    private final Unit unit;
    private final Circumstances at;
    private final @Nullable Quantity ownBefore;
    private final @Nullable Chamber chamber;
    private double uncertainty;
    private @Nullable String missing;

    private Bounds(
            Case before,
            Unit unit,
            Circumstances at,
            @Nullable Quantity ownBefore,
            @Nullable Chamber chamber) {
        this.before = before;
        this.unit = unit;
        this.at = at;
        this.ownBefore = ownBefore;
        this.chamber = chamber;
    }

    static Bounds in(Case before, Unit unit, Circumstances at) {
        return new Bounds(before, unit, at, null, null);
    }

    static Bounds withBefore(Case before, Quantity ownBefore, Circumstances at) {
        return new Bounds(before, ownBefore.unit(), at, ownBefore, null);
    }

    static Bounds withChamber(Case before, Unit unit, Circumstances at, @Nullable Chamber chamber) {
        return new Bounds(before, unit, at, null, chamber);
    }

    /** Expanded uncertainty of the edges, where they depend on readings. */
    double uncertainty() {
        return uncertainty;
    }

    /** What was needed and is not known, empty if everything was. */
    Optional<String> missing() {
        return Optional.ofNullable(missing);
    }

    Optional<Edge> lower(NumericLimit limit) {
        return limit.lower().map(e -> new Edge(value(e.bound()), e.passes()));
    }

    Optional<Edge> upper(NumericLimit limit) {
        return limit.upper().map(e -> new Edge(value(e.bound()), e.passes()));
    }

    double value(Bound bound) {
        if (bound instanceof Bound.Figure figure) {
            return figure.printed().in(unit);
        }
        if (bound instanceof Bound.ShareOfCheck share) {
            return shareOfCheck(share);
        }
        if (bound instanceof Bound.ShareOfOwn share) {
            return shareOfOwn(share);
        }
        if (bound instanceof Bound.LeastOf least) {
            double lowest = Double.POSITIVE_INFINITY;
            for (Bound each : least.bounds()) {
                lowest = Math.min(lowest, value(each));
            }
            return lowest;
        }
        if (bound instanceof Bound.PlusPerTrailer plus) {
            return plus.base().valueIn(unit)
                    + before.vehicle().trailers().size() * plus.plus().valueIn(unit);
        }
        if (bound instanceof Bound.ByReservoirRatio ratio) {
            return byReservoirRatio(ratio);
        }
        return bySpeed((Bound.BySpeed) bound);
    }

    private double shareOfCheck(Bound.ShareOfCheck share) {
        Optional<Measurement> other = before.other(share.of(), unit);
        if (other.isEmpty()) {
            return lacking("a reading of " + share.of().id());
        }
        uncertainty =
                Uncertainty.combine(uncertainty, other.get().uncertainty() * share.percent() / 100);
        return other.get().value() * share.percent() / 100;
    }

    private double shareOfOwn(Bound.ShareOfOwn share) {
        if (share.of() == Bound.Own.BEFORE) {
            if (ownBefore == null) {
                return lacking("the pressure before");
            }
            uncertainty =
                    Uncertainty.combine(
                            uncertainty, before.ofOneReading(unit) * share.percent() / 100);
            return ownBefore.value() * share.percent() / 100;
        }
        Optional<Double> rated = chamber == null ? Optional.empty() : Strokes.rated(chamber, unit);
        return rated.isEmpty()
                ? lacking("the rated stroke of the chamber")
                : rated.get() * share.percent() / 100;
    }

    private double byReservoirRatio(Bound.ByReservoirRatio ratio) {
        Optional<Double> share = before.groundwork().reservoirPercent(before.vehicle().powerUnit());
        return share.isEmpty()
                ? lacking("the volume of each reservoir and chamber")
                : ratio.atMinimum().valueIn(unit)
                        * share.get()
                        / ReservoirVolume.REQUIRED_PERCENT_POWERED;
    }

    private double bySpeed(Bound.BySpeed bound) {
        Optional<Quantity> speed = at.quantity(Circumstance.SPEED);
        if (speed.isEmpty()) {
            return lacking("the speed");
        }
        double v = speed.get().valueIn(Unit.KMH);
        double metres = bound.lag() * v + v * v / bound.squareOver();
        return Quantity.of(metres, Unit.METRE).valueIn(unit);
    }

    private double lacking(String what) {
        missing = what;
        return 0;
    }
}
