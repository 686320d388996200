package org.fandown.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.rulebook.StrokeTable.Family;
import org.fandown.units.Dimension;

/** Reads a table of stroke limits. */
final class StrokeTableReader {
    private StrokeTableReader() {}

    static StrokeTable read(Fields fields) {
        Map<Family, Map<String, Printed>> limits = new LinkedHashMap<>();
        for (Family family : Family.values()) {
            String key = key(family);
            if (fields.has(key)) {
                limits.put(family, column(fields.fields(key)));
            }
        }
        Optional<Double> percent = Optional.empty();
        if (fields.has("unlisted")) {
            Fields unlisted = fields.fields("unlisted");
            percent = Optional.of(unlisted.number("percent-of-rated-stroke", 1, 100));
            unlisted.end();
        }
        fields.end();
        return new StrokeTable(limits, percent);
    }

    private static Map<String, Printed> column(Fields fields) {
        Map<String, Printed> column = new LinkedHashMap<>();
        for (String type : fields.keys()) {
            column.put(type, BoundReader.figure(fields, type, Dimension.LENGTH));
        }
        fields.end();
        return column;
    }

    private static String key(Family family) {
        return switch (family) {
            case CLAMP -> "clamp";
            case CLAMP_LONG -> "clamp-long";
            case CLAMP_LONG_3_IN -> "clamp-long-3-in";
            case BOLT -> "bolt";
            case ROTOCHAMBER -> "rotochamber";
            case DD3 -> "dd3";
        };
    }
}
