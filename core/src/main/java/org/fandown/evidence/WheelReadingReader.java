package org.fandown.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelId;

/** Reads what was measured and seen at one wheel. */
final class WheelReadingReader {
    private WheelReadingReader() {}

    static WheelReading read(Fields fields, WheelId wheel, Circumstances general) {
        Map<Check, Measured> values = new EnumMap<>(Check.class);
        stroke(fields, values);
        length(fields, "free", Check.PUSHROD_FREE_STROKE, values);
        length(fields, "hand-play", Check.ADJUSTER_HAND_PLAY, values);
        length(fields, "lining", Check.LINING_THICKNESS, values);
        length(fields, "wedge-movement", Check.WEDGE_LINING_MOVEMENT, values);
        if (fields.has("cam-angle")) {
            values.put(
                    Check.CAM_ANGLE,
                    new Measured(fields.quantity("cam-angle", Dimension.ANGLE), 1));
        }
        Map<Check, Boolean> answers = new EnumMap<>(Check.class);
        fields.optionalTruth("indicator-hidden")
                .ifPresent(yes -> answers.put(Check.STROKE_INDICATOR_HIDDEN, yes));
        Optional<Quantity> makers =
                fields.has("makers-limit")
                        ? Optional.of(fields.quantity("makers-limit", Dimension.LENGTH))
                        : Optional.empty();
        List<String> defects = fields.optionalTexts("defects");
        Circumstances at = CircumstancesReader.read(fields).orElse(general);
        fields.end();
        return new WheelReading(wheel, values, answers, makers, defects, at);
    }

    /** Reads a wheel at which nothing but the applied stroke is noted. */
    static WheelReading brief(Fields wheels, String key, WheelId wheel, Circumstances general) {
        Map<Check, Measured> values = new EnumMap<>(Check.class);
        length(wheels, key, Check.PUSHROD_APPLIED_STROKE, values);
        return new WheelReading(wheel, values, Map.of(), Optional.empty(), List.of(), general);
    }

    private static void length(
            Fields fields, String key, Check check, Map<Check, Measured> values) {
        if (fields.has(key)) {
            Quantity value = fields.quantity(key, Dimension.LENGTH);
            requireNotNegative(fields, key, value.value());
            values.put(check, new Measured(value, 1));
        }
    }

    /** The applied stroke itself, or two lengths of push rod to subtract. */
    private static void stroke(Fields fields, Map<Check, Measured> values) {
        if (!fields.has("released")) {
            length(fields, "applied", Check.PUSHROD_APPLIED_STROKE, values);
            return;
        }
        Quantity released = fields.quantity("released", Dimension.LENGTH);
        Quantity full = fields.quantity("fully-applied-length", Dimension.LENGTH);
        Unit unit = full.unit();
        if (released.unit() != unit) {
            throw fields.refuse(
                    "released",
                    "is in another unit than fully-applied-length",
                    "one unit",
                    "Write both in one unit.");
        }
        double stroke = full.value() - released.value();
        requireNotNegative(fields, "fully-applied-length", stroke);
        values.put(Check.PUSHROD_APPLIED_STROKE, new Measured(Quantity.of(stroke, unit), 2));
    }

    private static void requireNotNegative(Fields fields, String key, double value) {
        if (value < 0) {
            throw fields.refuse(
                    key,
                    "gives a length below zero",
                    "a length such as 1 3/8 in",
                    "Measure again.");
        }
    }
}
