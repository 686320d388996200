package org.fandown.evidence;

import java.util.Map;
import org.fandown.check.Check;
import org.fandown.document.Tree;
import org.fandown.units.Quantity;

/** Writes what was measured and seen at one wheel, in the keys of an inspection. */
final class WheelDocument {
    private WheelDocument() {}

    static Tree.MapBuilder of(WheelReading wheel) {
        Tree.MapBuilder map = Tree.map();
        for (Map.Entry<Check, WheelReading.Measured> entry : wheel.values().entrySet()) {
            requireCommon(wheel, entry.getValue());
            put(map, entry.getKey(), entry.getValue());
        }
        wheel.answer(Check.STROKE_INDICATOR_HIDDEN)
                .ifPresent(hidden -> map.put("indicator-hidden", hidden));
        wheel.makersLimit()
                .ifPresent(limit -> map.put("makers-limit", ObservationsDocument.text(limit)));
        if (!wheel.defects().isEmpty()) {
            Tree.ListBuilder defects = Tree.list();
            wheel.defects().forEach(defects::add);
            map.put("defects", defects);
        }
        ObservationsDocument.circumstances(map, wheel.at());
        return map;
    }

    /** A wheel is written with one set of circumstances. */
    private static void requireCommon(WheelReading wheel, WheelReading.Measured measured) {
        if (!wheel.at(measured).equals(wheel.at())) {
            throw new IllegalArgumentException(
                    "What was measured at "
                            + wheel.wheel()
                            + " under different circumstances has to be written one by one.");
        }
    }

    /** A stroke found from two lengths keeps that it has the doubt of two readings. */
    private static void put(Tree.MapBuilder map, Check check, WheelReading.Measured measured) {
        Quantity value = measured.value();
        if (check == Check.PUSHROD_APPLIED_STROKE && measured.readings() == 2) {
            map.put("released", ObservationsDocument.text(Quantity.of(0, value.unit())));
            map.put("fully-applied-length", ObservationsDocument.text(value));
        } else {
            map.put(key(check), ObservationsDocument.text(value));
        }
    }

    private static String key(Check check) {
        return switch (check) {
            case PUSHROD_APPLIED_STROKE -> "applied";
            case PUSHROD_FREE_STROKE -> "free";
            case ADJUSTER_HAND_PLAY -> "hand-play";
            case LINING_THICKNESS -> "lining";
            case WEDGE_LINING_MOVEMENT -> "wedge-movement";
            case CAM_ANGLE -> "cam-angle";
            default ->
                    throw new IllegalArgumentException(
                            "'" + check.id() + "' is not measured at a wheel.");
        };
    }
}
