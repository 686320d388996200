package org.fandown.rulebook;

import java.util.Map;
import java.util.TreeMap;
import org.fandown.document.Fields;
import org.fandown.rulebook.Applies.Criterion;
import org.fandown.vehicle.Part;

/** The words that {@code has} and {@code lacks} understand. */
final class Features {
    private static final Map<String, Part> PARTS = new TreeMap<>();

    static {
        PARTS.put("trailer", Part.TRAILER);
        PARTS.put("air-braked-trailer", Part.AIR_BRAKED_TRAILER);
        PARTS.put("dolly", Part.DOLLY);
        PARTS.put("spring-brakes", Part.SPRING_BRAKES);
        PARTS.put("trailer-spring-brakes", Part.TRAILER_SPRING_BRAKES);
        PARTS.put("manual-adjusters", Part.MANUAL_ADJUSTERS);
        PARTS.put("automatic-adjusters", Part.AUTOMATIC_ADJUSTERS);
        PARTS.put("odometer", Part.ODOMETER);
        PARTS.put("abs", Part.ABS);
        PARTS.put("supply-reservoir", Part.SUPPLY_RESERVOIR);
        PARTS.put("drum", Part.DRUM_BRAKES);
        PARTS.put("disc", Part.DISC_BRAKES);
        PARTS.put("wedge", Part.WEDGE_BRAKES);
        PARTS.put("air-over-hydraulic", Part.AIR_OVER_HYDRAULIC);
    }

    private Features() {}

    static Criterion criterion(Fields fields, String key, String token, boolean wanted) {
        if (token.equals("exposed-push-rods")) {
            return Criteria.exposedPushRods(wanted);
        }
        Part part = PARTS.get(token);
        if (part == null) {
            throw fields.refuse(
                    key,
                    "names '" + token + "', which is no feature of a vehicle",
                    String.join(", ", PARTS.keySet()) + ", exposed-push-rods",
                    "Write one of these.");
        }
        return PartCriterion.has(part, wanted);
    }
}
