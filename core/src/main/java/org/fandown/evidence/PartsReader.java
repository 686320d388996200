package org.fandown.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fandown.check.Component;
import org.fandown.check.Severity;
import org.fandown.document.Fields;
import org.fandown.document.Names;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.evidence.PartReading.Found;

/** Reads the parts looked at. */
final class PartsReader {
    private static final String OTHERS = "all-others";

    private PartsReader() {}

    /** Reads into the map; returns whether all other parts are declared to be in order. */
    static boolean read(Fields fields, Map<Component, PartReading> parts) {
        Map<String, Component> byId = Names.byKebab(Component.values());
        boolean others = false;
        for (String key : fields.keys()) {
            if (key.equals(OTHERS)) {
                fields.choice(key, InOrder.values());
                others = true;
                continue;
            }
            Component part = byId.get(key);
            if (part == null) {
                throw fields.refuseKey(
                        key,
                        "this is not a part the program knows",
                        String.join(", ", byId.keySet()) + ", " + OTHERS,
                        Nearest.advice(
                                key,
                                byId.keySet(),
                                "write one of these, and the rest under notes"));
            }
            parts.put(part, part(fields, key, part));
        }
        fields.end();
        return others;
    }

    private static PartReading part(Fields fields, String key, Component part) {
        List<Found> found = new ArrayList<>();
        if (fields.isMap(key)) {
            found.add(found(fields.fields(key)));
        } else if (fields.isList(key)) {
            for (Node item : fields.list(key)) {
                found.add(found(Fields.of(item)));
            }
        } else {
            fields.choice(key, InOrder.values());
        }
        return new PartReading(part, found);
    }

    private static Found found(Fields fields) {
        Found found =
                new Found(
                        fields.text("condition"),
                        fields.optionalChoice("severity", Severity.values()),
                        fields.optionalText("note").orElse(""));
        fields.end();
        return found;
    }

    private enum InOrder {
        OK
    }
}
