package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** What makes a chamber impossible. */
final class ChamberRules {
    private static final double LEAST_STROKE_INCHES = 0.5;
    private static final double GREATEST_STROKE_INCHES = 6;
    private static final int LONGEST_TYPE = 40;

    private ChamberRules() {}

    static void require(
            Mount mount,
            String type,
            boolean longStroke,
            Optional<Quantity> ratedStroke,
            Optional<Quantity> markedLimit) {
        ratedStroke.ifPresent(stroke -> requireStroke("rated-stroke", stroke));
        markedLimit.ifPresent(limit -> requireStroke("marked-limit", limit));
        if (mount == Mount.OTHER) {
            requireFreeType(type);
        } else {
            requireListed(mount, type);
            requireLongStroke(mount, type, longStroke, ratedStroke);
        }
        if (ratedStroke.isPresent()
                && markedLimit.isPresent()
                && markedLimit.get().valueIn(Unit.INCH) > ratedStroke.get().valueIn(Unit.INCH)) {
            throw new ImpossibleVehicleException(
                    "marked-limit",
                    "limit " + markedLimit.get() + " is more than the rated stroke",
                    "at most the rated stroke, " + ratedStroke.get(),
                    "read both marks again");
        }
    }

    private static void requireFreeType(String type) {
        if (type.isBlank() || !type.equals(type.strip()) || type.length() > LONGEST_TYPE) {
            throw new ImpossibleVehicleException(
                    "type",
                    "the type of an unlisted actuator is empty, padded or too long",
                    "1 to " + LONGEST_TYPE + " characters",
                    "write the type as the maker marked it");
        }
    }

    private static void requireListed(Mount mount, String type) {
        if (ChamberTable.find(mount, type).isEmpty()) {
            throw new ImpossibleVehicleException(
                    "chamber",
                    "there is no " + Labels.of(mount) + " chamber of type '" + type + "'",
                    String.join(", ", ChamberTable.types(mount)),
                    "read the type on the chamber; for an unlisted actuator write mount: other");
        }
    }

    private static void requireLongStroke(
            Mount mount, String type, boolean longStroke, Optional<Quantity> ratedStroke) {
        ChamberEntry entry = ChamberTable.find(mount, type).orElseThrow();
        if (longStroke && entry.longStroke().isEmpty() && ratedStroke.isEmpty()) {
            throw new ImpossibleVehicleException(
                    "chamber",
                    Labels.of(mount) + " " + type + " has no long-stroke form in any table",
                    "long on clamp 12, 16, 20, 24 and 30",
                    "take 'long' out, or give the rated stroke marked on the chamber");
        }
        if (!longStroke && ratedStroke.isPresent() && entry.longStroke().isPresent()) {
            double standard = entry.fullStroke().orElseThrow().value().valueIn(Unit.INCH);
            if (ratedStroke.get().valueIn(Unit.INCH) > standard) {
                throw new ImpossibleVehicleException(
                        "chamber",
                        "rated stroke " + ratedStroke.get() + " is that of a long-stroke chamber",
                        "at most " + entry.fullStroke().get().value() + " without 'long'",
                        "write 'long' after the type if the chamber is a long-stroke one");
            }
        }
    }

    private static void requireStroke(String key, Quantity stroke) {
        double inches = stroke.valueIn(Unit.INCH);
        if (!(inches >= LEAST_STROKE_INCHES && inches <= GREATEST_STROKE_INCHES)) {
            throw new ImpossibleVehicleException(
                    key,
                    "stroke " + stroke + " is not possible for a brake chamber",
                    "0.5 in to 6 in",
                    "check the number and its unit");
        }
    }
}
