package org.fandown.reference.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fandown.app.files.DocumentText;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.vehicle.WheelId;

/**
 * Writes the inspection that notes one value of a row, as a person would write it.
 *
 * <p>What a row has beside its values goes, by its name: into an open place of the test vehicle; to
 * the readings, if it is the name of a check; into the map of the reading itself, if it is anything
 * else. {@code limit} is the stroke that all brakes have in a row that counts brakes.
 */
final class TripleInspection {
    private static final Pattern COUNTED = Pattern.compile("(\\d+) (?:over by (.+)|defective)");
    private static final String LIMIT = "limit";

    private final Triple row;
    private final Check check;
    private final List<WheelId> wheels;
    private final Map<String, String> filling = new LinkedHashMap<>();
    private final Map<String, String> others = new LinkedHashMap<>();
    private final Map<String, String> own = new LinkedHashMap<>();

    TripleInspection(Triple row, Check check, List<WheelId> wheels) {
        this.row = row;
        this.check = check;
        this.wheels = wheels;
        Set<String> open = TestVehicle.named(row.vehicle()).open();
        row.beside()
                .forEach(
                        (key, text) -> {
                            if (open.contains(key)) {
                                filling.put(key, text);
                            } else if (Check.byId(key).isPresent()) {
                                others.put(key, text);
                            } else if (!key.equals(LIMIT)) {
                                own.put(key, text);
                            }
                        });
    }

    Node vehicle() {
        return TestVehicle.named(row.vehicle()).filledIn(filling);
    }

    Inspection noting(String value) {
        StringBuilder text = new StringBuilder();
        text.append("place: ").append(row.place()).append('\n');
        text.append("moment: ").append(row.on()).append("T08:00:00Z\n");
        text.append("vehicle: ").append(row.vehicle()).append('\n');
        text.append("instruments: exact\nconditions: as-printed\nreadings:\n");
        text.append(
                check.dimension().isPresent() && isOfWholeVehicle()
                        ? "  " + check.id() + ": " + reading(value) + "\n"
                        : "");
        others.forEach((key, other) -> text.append("  " + key + ": " + other + "\n"));
        text.append(text.toString().endsWith("readings:\n") ? "  {}\n" : "");
        if (check.kind() == CheckKind.WHEEL_VALUE) {
            own.put(wheelField(), value);
            text.append("wheels:\n");
            wheels.forEach(wheel -> text.append("  " + wheel + ": " + flow(own) + "\n"));
        }
        if (check.kind() == CheckKind.BRAKE_COUNT) {
            text.append("wheels:\n").append(counted(value));
        }
        if (check.kind() == CheckKind.DESIGN) {
            filling.put(
                    check == Check.TRAILER_RESERVOIR_VOLUME ? "trailer-volume" : "volume", value);
        }
        return new InspectionReader(name -> vehicle())
                .read(DocumentText.yaml("inspection.yaml", text.toString()));
    }

    private boolean isOfWholeVehicle() {
        return switch (check.kind()) {
            case VALUE, BUILD_UP, AIR_LOSS, RESERVE -> true;
            default -> false;
        };
    }

    private String reading(String value) {
        Map<String, String> fields = new LinkedHashMap<>();
        switch (check.kind()) {
            case BUILD_UP -> fields.put("time", value);
            case AIR_LOSS -> {
                fields.put("loss", value);
                fields.put("time", "1 min");
            }
            case RESERVE -> fields.put("after", value);
            default -> fields.put(valueField(), value);
        }
        fields.putAll(own);
        return flow(fields);
    }

    /** The map as YAML on one line. */
    private static String flow(Map<String, String> fields) {
        StringJoiner text = new StringJoiner(", ", "{ ", " }");
        fields.forEach((key, value) -> text.add(key + ": " + value));
        return text.toString();
    }

    private String valueField() {
        Dimension dimension = check.dimension().orElseThrow();
        return dimension == Dimension.GAUGE_PRESSURE
                ? "gauge"
                : dimension == Dimension.TIME ? "time" : "value";
    }

    private String wheelField() {
        return switch (check) {
            case PUSHROD_APPLIED_STROKE -> "applied";
            case PUSHROD_FREE_STROKE -> "free";
            case ADJUSTER_HAND_PLAY -> "hand-play";
            case LINING_THICKNESS -> "lining";
            case WEDGE_LINING_MOVEMENT -> "wedge-movement";
            case CAM_ANGLE -> "cam-angle";
            default -> throw new IllegalArgumentException(check + " is not measured at a wheel");
        };
    }

    /**
     * The first so many brakes over the limit by so much, or defective; all others at the limit.
     */
    private String counted(String value) {
        Matcher matcher = COUNTED.matcher(value);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(value + " is not such as 2 over by 6.4 mm");
        }
        int bad = Integer.parseInt(matcher.group(1));
        Quantity limit = Quantity.parse(row.beside().getOrDefault(LIMIT, ""));
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < wheels.size(); i++) {
            boolean isBad = i < bad;
            String over = matcher.group(2);
            double more = isBad && over != null ? Quantity.parse(over).valueIn(limit.unit()) : 0;
            Quantity stroke = Quantity.of(limit.value() + more, limit.unit());
            String defect = isBad && over == null ? ", defects: [lining-cracked]" : "";
            text.append("  " + wheels.get(i) + ": { applied: " + stroke + defect + " }\n");
        }
        return text.toString();
    }
}
