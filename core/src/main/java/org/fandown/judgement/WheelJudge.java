package org.fandown.judgement;

import java.util.List;
import java.util.Optional;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.WheelReading;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.rulebook.Fit;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.StrokeTable;
import org.fandown.units.Quantities;
import org.fandown.units.Unit;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/** Judges what was measured or seen at each wheel. */
final class WheelJudge {
    private WheelJudge() {}

    static void judge(Case before, Ruling ruling, List<Finding> findings) {
        for (WheelId wheel : ruling.wheels()) {
            Optional<Finding> finding = one(before, ruling, wheel);
            if (finding.isPresent()) {
                findings.add(finding.get().at(wheel));
            }
        }
    }

    private static Optional<Finding> one(Case before, Ruling ruling, WheelId wheel) {
        WheelReading reading = before.inspection().wheels().get(wheel);
        if (reading == null) {
            return ReadingJudge.notChecked(ruling);
        }
        Optional<Measured> measured = reading.value(ruling.rule().check());
        Optional<Boolean> answer = reading.answer(ruling.rule().check());
        if (measured.isEmpty() && answer.isEmpty()) {
            return ReadingJudge.notChecked(ruling);
        }
        Fit fit = ruling.rule().applies().wheelFit(before.vehicle(), wheel);
        if (fit.answer() == Fit.Answer.UNKNOWN) {
            return Optional.of(unknownFit(ruling, fit));
        }
        Circumstances at = measured.map(reading::at).orElse(reading.at());
        Optional<Finding> objection = Demanded.objection(before, ruling, at);
        if (objection.isPresent()) {
            return objection;
        }
        return Optional.of(
                measured.isPresent()
                        ? compared(before, ruling, reading, measured.get())
                        : answer(ruling, answer.orElseThrow()));
    }

    static Finding unknownFit(Ruling ruling, Fit fit) {
        return Finding.of(
                ruling,
                Status.UNDETERMINED,
                Why.of(
                        () ->
                                "The vehicle file does not say "
                                        + fit.missing()
                                        + ", so it is not known whether the rule applies.",
                        () -> "Add it to the vehicle file."));
    }

    private static Finding answer(Ruling ruling, boolean yes) {
        return yes
                ? Finding.of(ruling, Status.MET, Why.of(() -> "Noted: yes."))
                : Finding.of(
                        ruling,
                        Status.NOT_MET,
                        Why.of(() -> "Noted: no." + Demanded.sentence(ruling.rule().words())));
    }

    private static Finding compared(
            Case before, Ruling ruling, WheelReading reading, Measured measured) {
        Unit unit = measured.value().unit();
        double step = before.inspection().instruments().step(unit);
        Measurement value =
                new Measurement(
                        measured.value().value(),
                        unit,
                        Uncertainty.expanded(measured.readings(), step));
        WheelEnd end = before.vehicle().wheel(reading.wheel());
        if (ruling.limit() instanceof Limit.Strokes strokes) {
            return stroke(ruling, strokes.table(), reading, end, value);
        }
        Bounds bounds =
                Bounds.withChamber(before, unit, reading.at(measured), end.chamber().orElse(null));
        return NumericJudge.compare(ruling, value, bounds);
    }

    private static Finding stroke(
            Ruling ruling,
            StrokeTable table,
            WheelReading reading,
            WheelEnd end,
            Measurement value) {
        Optional<Double> limit = strokeLimit(table, reading, end, value.unit());
        if (limit.isEmpty()) {
            return NumericJudge.lacking(
                    ruling, value, "a chamber the table lists, or the stroke marked on it");
        }
        Optional<Edge> upper = Optional.of(new Edge(limit.get(), true));
        Status status = Decision.decide(value.low(), value.high(), Optional.empty(), upper);
        Why why = strokeWhy(ruling, status, value, limit.get(), end);
        return Finding.of(ruling, status, value, why).within(Optional.empty(), upper);
    }

    private static Why strokeWhy(
            Ruling ruling, Status status, Measurement value, double limit, WheelEnd end) {
        return Why.of(
                () ->
                        "Stroke "
                                + value
                                + ", limit for "
                                + end.chamber().map(Chamber::text).orElse("chamber")
                                + " "
                                + Quantities.print(limit, value.unit())
                                + (status == Status.UNDETERMINED ? ": too close to decide." : ".")
                                + (status == Status.NOT_MET
                                        ? Demanded.sentence(ruling.rule().words())
                                        : ""),
                () -> status == Status.UNDETERMINED ? Advice.closer(ruling.rule().check()) : "");
    }

    /** The stroke limit at a wheel in the unit: the maker's as noted, or the table's. */
    static Optional<Double> strokeLimit(
            StrokeTable table, WheelReading reading, WheelEnd end, Unit unit) {
        if (reading.makersLimit().isPresent()) {
            return Optional.of(reading.makersLimit().get().valueIn(unit));
        }
        return end.chamber().isPresent()
                ? Strokes.limit(table, end.chamber().get(), unit)
                : Optional.empty();
    }
}
