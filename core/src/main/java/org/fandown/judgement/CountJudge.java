package org.fandown.judgement;

import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.WheelReading;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.rulebook.Fit;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.StrokeTable;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/** Counts the brakes beyond their limit and compares the share with the rule's. */
final class CountJudge {
    private static final double HUNDRED = 100;
    private static final double ROUNDING = 1e-9;
    private static final StrokeTable NO_TABLE = new StrokeTable(Map.of(), Optional.empty());

    private CountJudge() {}

    static Optional<Finding> judge(Case before, Ruling ruling) {
        int bad = 0;
        int unknown = 0;
        int measured = 0;
        Fit fit = Fit.YES;
        for (WheelId wheel : ruling.wheels()) {
            WheelReading reading = before.inspection().wheels().get(wheel);
            Status status = reading == null ? Status.NOT_CHECKED : one(before, ruling, reading);
            bad += status == Status.NOT_MET ? 1 : 0;
            unknown += status == Status.NOT_CHECKED || status == Status.UNDETERMINED ? 1 : 0;
            measured += status == Status.NOT_CHECKED ? 0 : 1;
            Fit here = ruling.rule().applies().wheelFit(before.vehicle(), wheel);
            fit = here.answer() == Fit.Answer.UNKNOWN ? here : fit;
        }
        if (measured == 0) {
            return ReadingJudge.notChecked(ruling);
        }
        return Optional.of(
                fit.answer() == Fit.Answer.UNKNOWN
                        ? WheelJudge.unknownFit(ruling, fit)
                        : counted(ruling, bad, unknown));
    }

    private static Finding counted(Ruling ruling, int bad, int unknown) {
        Limit.BrakesOver limit = (Limit.BrakesOver) ruling.limit();
        int all = ruling.wheels().size();
        double least = HUNDRED * bad / all;
        double most = HUNDRED * (bad + unknown) / all;
        Measurement share = new Measurement((least + most) / 2, Unit.PERCENT, (most - least) / 2);
        Status status =
                least >= limit.share() - ROUNDING
                        ? Status.NOT_MET
                        : most < limit.share() - ROUNDING ? Status.MET : Status.UNDETERMINED;
        return Finding.of(
                ruling,
                status,
                share,
                Why.of(
                        () -> counted(ruling, status, bad, unknown),
                        () ->
                                status == Status.UNDETERMINED
                                        ? "Measure the remaining brakes, each as its rule asks."
                                        : ""));
    }

    private static String counted(Ruling ruling, Status status, int bad, int unknown) {
        return bad
                + " of "
                + ruling.wheels().size()
                + " brakes beyond the limit"
                + (unknown > 0 ? ", " + unknown + " not known" : "")
                + "; the rule asks for "
                + ruling.limit()
                + "."
                + (status == Status.NOT_MET ? Demanded.sentence(ruling.rule().words()) : "");
    }

    /** One brake; a stroke that was measured under the wrong circumstances tells nothing. */
    private static Status one(Case before, Ruling ruling, WheelReading reading) {
        Limit.BrakesOver limit = (Limit.BrakesOver) ruling.limit();
        if (limit.overBy().isEmpty() && !reading.defects().isEmpty()) {
            return Status.NOT_MET;
        }
        Optional<Measured> stroke = reading.value(Check.PUSHROD_APPLIED_STROKE);
        if (stroke.isEmpty()) {
            return Status.NOT_CHECKED;
        }
        Optional<Ruling> table = before.groundwork().strokeRule(reading.wheel());
        Circumstances at = reading.at(stroke.get());
        boolean spoiled =
                Demanded.objection(before, ruling, at).isPresent()
                        || (table.isPresent()
                                && Demanded.objection(before, table.get(), at).isPresent());
        return spoiled
                ? Status.UNDETERMINED
                : compared(before, limit, table.map(CountJudge::strokes).orElse(NO_TABLE), reading);
    }

    private static Status compared(
            Case before, Limit.BrakesOver limit, StrokeTable table, WheelReading reading) {
        Measured stroke = reading.value(Check.PUSHROD_APPLIED_STROKE).orElseThrow();
        Unit unit = stroke.value().unit();
        WheelEnd end = before.vehicle().wheel(reading.wheel());
        Optional<Double> allowed = WheelJudge.strokeLimit(table, reading, end, unit);
        if (allowed.isEmpty()) {
            return Status.UNDETERMINED;
        }
        double band =
                Uncertainty.expanded(
                        stroke.readings(), before.inspection().instruments().step(unit));
        double value = stroke.value().value();
        Edge edge =
                limit.overBy()
                        .map(by -> new Edge(allowed.get() + by.in(unit), false))
                        .orElseGet(() -> new Edge(allowed.get(), true));
        return Decision.decide(value - band, value + band, Optional.empty(), Optional.of(edge));
    }

    private static StrokeTable strokes(Ruling ruling) {
        return ((Limit.Strokes) ruling.limit()).table();
    }
}
