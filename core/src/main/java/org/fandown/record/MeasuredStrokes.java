package org.fandown.record;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.braking.BrakingEstimate;
import org.fandown.braking.Conditions;
import org.fandown.check.Check;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.WheelReading;
import org.fandown.units.Length;
import org.fandown.vehicle.WheelId;

/** What the measured strokes of an inspection mean for braking. */
public final class MeasuredStrokes {
    private MeasuredStrokes() {}

    /**
     * The estimate from the applied strokes of an inspection, empty if none was measured at a wheel
     * with a push rod.
     *
     * @param inspection the inspection
     */
    public static Optional<BrakingEstimate> estimate(Inspection inspection) {
        Map<WheelId, Length> strokes = new TreeMap<>();
        for (WheelReading reading : inspection.wheels().values()) {
            if (inspection.vehicle().wheel(reading.wheel()).hasPushRod()) {
                reading.value(Check.PUSHROD_APPLIED_STROKE)
                        .ifPresent(m -> strokes.put(reading.wheel(), Length.of(m.value())));
            }
        }
        return strokes.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        BrakingEstimate.of(inspection.vehicle(), strokes, Conditions.usual()));
    }
}
