package org.fandown.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/** Reads what was measured and seen at one wheel. */
final class WheelReadingReader {
    private static final Plausible LIMIT = new Plausible(0.5, 6, Unit.INCH);

    private final WheelId wheel;
    private final WheelStrokes strokes;
    private final Circumstances general;
    private final Map<Check, Measured> values = new EnumMap<>(Check.class);

    WheelReadingReader(WheelId wheel, WheelEnd end, Circumstances general) {
        this.wheel = wheel;
        this.strokes = new WheelStrokes(end, values);
        this.general = general;
    }

    /** Reads a wheel at which nothing but the applied stroke is noted. */
    WheelReading brief(Fields wheels, String key) {
        strokes.applied(wheels, key);
        return new WheelReading(wheel, values, Map.of(), Optional.empty(), List.of(), general);
    }

    WheelReading read(Fields fields) {
        strokes.read(fields);
        measure(fields, "hand-play", Plausible.STROKE, Check.ADJUSTER_HAND_PLAY);
        measure(fields, "lining", Plausible.LINING, Check.LINING_THICKNESS);
        measure(fields, "wedge-movement", Plausible.LINING, Check.WEDGE_LINING_MOVEMENT);
        measure(fields, "cam-angle", Plausible.CAM, Check.CAM_ANGLE);
        Map<Check, Boolean> answers = new EnumMap<>(Check.class);
        fields.optionalTruth("indicator-hidden")
                .ifPresent(yes -> answers.put(Check.STROKE_INDICATOR_HIDDEN, yes));
        Optional<Quantity> makers =
                fields.has("makers-limit")
                        ? Optional.of(LIMIT.read(fields, "makers-limit"))
                        : Optional.empty();
        List<String> defects = fields.optionalTexts("defects");
        Circumstances at = CircumstancesReader.read(fields).orElse(general);
        fields.end();
        return new WheelReading(wheel, values, answers, makers, defects, at);
    }

    private void measure(Fields fields, String key, Plausible range, Check check) {
        if (fields.has(key)) {
            values.put(check, new Measured(range.read(fields, key), 1));
        }
    }
}
