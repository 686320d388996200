package org.fandown.judgement;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.WheelReading;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.StrokeTable;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelId;

/** Counts the brakes beyond their limit and compares the share with the rule's. */
final class CountJudge {
    private static final double HUNDRED = 100;
    private static final double ROUNDING = 1e-9;

    private CountJudge() {}

    static Optional<Finding> judge(Case before, Ruling ruling) {
        Limit.BrakesOver limit = (Limit.BrakesOver) ruling.limit();
        Optional<StrokeTable> table = table(before);
        int bad = 0;
        int unknown = 0;
        int measured = 0;
        for (WheelId wheel : ruling.wheels()) {
            WheelReading reading = before.inspection().wheels().get(wheel);
            Status status =
                    reading == null ? Status.NOT_CHECKED : one(before, limit, table, reading);
            bad += status == Status.NOT_MET ? 1 : 0;
            unknown += status == Status.NOT_CHECKED || status == Status.UNDETERMINED ? 1 : 0;
            measured += status == Status.NOT_CHECKED ? 0 : 1;
        }
        return measured == 0
                ? ReadingJudge.notChecked(ruling)
                : Optional.of(counted(ruling, limit, bad, unknown));
    }

    private static Finding counted(Ruling ruling, Limit.BrakesOver limit, int bad, int unknown) {
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
                        () ->
                                bad
                                        + " of "
                                        + all
                                        + " brakes beyond the limit"
                                        + (unknown > 0 ? ", " + unknown + " not known" : "")
                                        + "; the rule asks for "
                                        + limit
                                        + "."
                                        + (status == Status.NOT_MET
                                                ? Demanded.sentence(ruling.rule().words())
                                                : ""),
                        () ->
                                status == Status.UNDETERMINED
                                        ? "Measure the remaining brakes."
                                        : ""));
    }

    private static Status one(
            Case before,
            Limit.BrakesOver limit,
            Optional<StrokeTable> table,
            WheelReading reading) {
        if (limit.overBy().isEmpty() && !reading.defects().isEmpty()) {
            return Status.NOT_MET;
        }
        Optional<Measured> stroke = reading.value(Check.PUSHROD_APPLIED_STROKE);
        if (stroke.isEmpty()) {
            return Status.NOT_CHECKED;
        }
        Unit unit = stroke.get().value().unit();
        Optional<Double> allowed =
                WheelJudge.strokeLimit(
                        table.orElse(NO_TABLE),
                        reading,
                        before.vehicle().wheel(reading.wheel()),
                        unit);
        if (allowed.isEmpty()) {
            return Status.UNDETERMINED;
        }
        double band =
                Uncertainty.expanded(
                        stroke.get().readings(), before.inspection().instruments().step(unit));
        double value = stroke.get().value().value();
        Edge edge =
                limit.overBy()
                        .map(by -> new Edge(allowed.get() + by.in(unit), false))
                        .orElseGet(() -> new Edge(allowed.get(), true));
        return Decision.decide(value - band, value + band, Optional.empty(), Optional.of(edge));
    }

    private static final StrokeTable NO_TABLE =
            new StrokeTable(java.util.Map.of(), Optional.empty());

    private static Optional<StrokeTable> table(Case before) {
        for (Ruling ruling : before.rules().of(Check.PUSHROD_APPLIED_STROKE)) {
            if (ruling.limit() instanceof Limit.Strokes strokes) {
                return Optional.of(strokes.table());
            }
        }
        return Optional.empty();
    }
}
