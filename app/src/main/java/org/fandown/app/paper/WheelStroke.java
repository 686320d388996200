package org.fandown.app.paper;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.WheelReading;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.judgement.StrokeLimits;
import org.fandown.units.Quantities;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/**
 * What the diagram shows at one wheel.
 *
 * @param end what is fitted there
 * @param stroke the applied stroke as entered, empty if it was not measured
 * @param limit its limit, empty if none is known
 * @param mayBeOff by how much the stroke may be off (mm)
 * @param status what the judge says of the stroke, empty if no rule was applied to it
 */
record WheelStroke(
        WheelEnd end,
        Optional<Quantity> stroke,
        Optional<Quantity> limit,
        double mayBeOff,
        Optional<Status> status) {

    static WheelStroke of(Judgement judgement, StrokeLimits limits, WheelId wheel) {
        WheelEnd end = judgement.inspection().vehicle().wheel(wheel);
        WheelReading reading = judgement.inspection().wheels().get(wheel);
        Optional<Quantity> stroke =
                Optional.ofNullable(reading)
                        .flatMap(r -> r.value(Check.PUSHROD_APPLIED_STROKE))
                        .map(WheelStroke::asNoted);
        Optional<Finding> finding = finding(judgement, wheel);
        double off =
                finding.flatMap(Finding::measured)
                        .map(m -> Quantity.of(m.uncertainty(), m.unit()).valueIn(Unit.MM))
                        .orElse(0.0);
        Optional<Quantity> limit = end.hasPushRod() ? limits.at(wheel) : Optional.empty();
        return new WheelStroke(end, stroke, limit, off, finding.map(Finding::status));
    }

    /** A subtracted stroke is written as a rule would show it. */
    private static Quantity asNoted(Measured measured) {
        Quantity value = measured.value();
        return measured.readings() == 1
                ? value
                : Quantity.parse(Quantities.print(value.value(), value.unit()));
    }

    /** The worst finding on the stroke of this wheel among those that decide, else among all. */
    private static Optional<Finding> finding(Judgement judgement, WheelId wheel) {
        Optional<Finding> worst = Optional.empty();
        for (Finding finding : judgement.findings()) {
            boolean here =
                    finding.ruling().rule().check() == Check.PUSHROD_APPLIED_STROKE
                            && finding.wheel().equals(Optional.of(wheel));
            if (here && (worst.isEmpty() || goesBefore(finding, worst.get()))) {
                worst = Optional.of(finding);
            }
        }
        return worst;
    }

    private static boolean goesBefore(Finding one, Finding other) {
        return one.decides() == other.decides()
                ? one.status().compareTo(other.status()) > 0
                : one.decides();
    }

    boolean isOver() {
        return status.equals(Optional.of(Status.NOT_MET));
    }

    double strokeMm() {
        return stroke.map(s -> s.valueIn(Unit.MM)).orElse(0.0);
    }

    double limitMm() {
        return limit.map(l -> l.valueIn(Unit.MM)).orElse(0.0);
    }

    /** The stroke as entered or subtracted, or why there is none. */
    String strokeText() {
        if (stroke.isPresent()) {
            return stroke.get().written().replace(' ', '\u00a0');
        }
        return end.hasPushRod() ? "not measured" : end.isBraked() ? "no push rod" : "no brake";
    }

    String limitText() {
        if (!end.hasPushRod()) {
            return "";
        }
        return limit.map(l -> "limit " + Words.quantity(l.value(), l.unit())).orElse("no limit");
    }
}
