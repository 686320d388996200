package org.fandown.judgement;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.WheelReading;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Printed;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.StrokeTable;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/**
 * The greatest applied stroke allowed at each wheel, as a figure, for those who show a stroke
 * beside its limit. The judge itself compares each rule on its own.
 */
public final class StrokeLimits {
    private final Case before;

    private StrokeLimits(Case before) {
        this.before = before;
    }

    /** The limits by which the judgement was made. */
    public static StrokeLimits of(Judgement judgement) {
        return new StrokeLimits(Case.of(judgement.inspection(), judgement.rules()));
    }

    /**
     * The limit at a wheel: the strictest of the rules that decide, or else of the others.
     *
     * @param wheel a wheel of the vehicle
     * @return the limit in the unit in which strokes were entered, or in which the rule prints it
     *     if none was; empty if no rule gives the wheel a figure
     */
    public Optional<Quantity> at(WheelId wheel) {
        Unit unit = unit(wheel);
        Optional<Double> deciding = strictest(wheel, unit, true);
        Optional<Double> limit = deciding.isPresent() ? deciding : strictest(wheel, unit, false);
        return limit.map(value -> Quantity.of(value, unit));
    }

    private Unit unit(WheelId wheel) {
        return stroke(wheel)
                .or(
                        () ->
                                before.inspection().wheels().keySet().stream()
                                        .flatMap(other -> stroke(other).stream())
                                        .findFirst())
                .or(() -> printed(wheel))
                .orElse(Unit.MM);
    }

    private Optional<Unit> printed(WheelId wheel) {
        return before.rules().of(Check.PUSHROD_APPLIED_STROKE).stream()
                .filter(ruling -> ruling.wheels().contains(wheel))
                .flatMap(ruling -> printed(ruling.limit()).stream())
                .map(figure -> figure.own().unit())
                .findFirst();
    }

    private static Optional<Printed> printed(Limit limit) {
        if (limit instanceof Limit.Strokes strokes) {
            return strokes.table().limits().values().stream()
                    .flatMap(byType -> byType.values().stream())
                    .findFirst();
        }
        return limit instanceof Limit.Numeric numeric
                ? numeric.edges()
                        .upper()
                        .filter(edge -> edge.bound() instanceof Bound.Figure)
                        .map(edge -> ((Bound.Figure) edge.bound()).printed())
                : Optional.empty();
    }

    private Optional<Unit> stroke(WheelId wheel) {
        return reading(wheel)
                .flatMap(reading -> reading.value(Check.PUSHROD_APPLIED_STROKE))
                .map(Measured::value)
                .map(Quantity::unit);
    }

    private Optional<WheelReading> reading(WheelId wheel) {
        return Optional.ofNullable(before.inspection().wheels().get(wheel));
    }

    private Optional<Double> strictest(WheelId wheel, Unit unit, boolean deciding) {
        List<Ruling> rulings = before.rules().of(Check.PUSHROD_APPLIED_STROKE);
        return rulings.stream()
                .filter(r -> r.decides() == deciding && r.rule().weight().standing().isJudged())
                .filter(r -> r.wheels().contains(wheel))
                .flatMap(r -> limit(r, wheel, unit).stream())
                .min(Double::compare);
    }

    private Optional<Double> limit(Ruling ruling, WheelId wheel, Unit unit) {
        WheelEnd end = before.vehicle().wheel(wheel);
        if (ruling.limit() instanceof Limit.Strokes strokes) {
            StrokeTable table = strokes.table();
            return reading(wheel).isPresent()
                    ? WheelJudge.strokeLimit(table, reading(wheel).get(), end, unit)
                    : end.chamber().flatMap(chamber -> Strokes.limit(table, chamber, unit));
        }
        if (!(ruling.limit() instanceof Limit.Numeric numeric)) {
            return Optional.empty();
        }
        Bounds bounds =
                Bounds.withChamber(before, unit, Circumstances.NONE, end.chamber().orElse(null));
        Optional<Double> upper = bounds.upper(numeric.edges()).map(Edge::value);
        return bounds.missing().isPresent() ? Optional.empty() : upper;
    }
}
