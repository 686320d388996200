package org.fandown.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.rulebook.StrokeTable.Family;
import org.fandown.units.Dimension;
import org.fandown.vehicle.ChamberTable;
import org.fandown.vehicle.Mount;

/** Reads a table of stroke limits. */
final class StrokeTableReader {
    private StrokeTableReader() {}

    static StrokeTable read(Fields fields) {
        Map<Family, Map<String, Printed>> limits = new LinkedHashMap<>();
        for (Family family : Family.values()) {
            String key = key(family);
            if (fields.has(key)) {
                limits.put(family, column(fields.fields(key), mount(family)));
            }
        }
        Optional<Double> percent = Optional.empty();
        if (fields.has("unlisted")) {
            Fields unlisted = fields.fields("unlisted");
            percent = Optional.of(unlisted.number("percent-of-rated-stroke", 1, 100));
            unlisted.end();
        }
        fields.end();
        if (limits.isEmpty() && percent.isEmpty()) {
            throw fields.refuseHere(
                    "lists no chamber",
                    "clamp, clamp-long, clamp-long-3-in, bolt, rotochamber, dd3, unlisted",
                    "Copy the columns that the source prints.");
        }
        return new StrokeTable(limits, percent);
    }

    private static Map<String, Printed> column(Fields fields, Mount mount) {
        Map<String, Printed> column = new LinkedHashMap<>();
        for (String type : fields.keys()) {
            if (ChamberTable.find(mount, type).isEmpty()) {
                throw fields.refuseKey(
                        type,
                        "is not a type of this kind of chamber",
                        String.join(", ", ChamberTable.types(mount)),
                        "Correct the type, or move the row to its own kind of chamber.");
            }
            column.put(type, BoundReader.figure(fields, type, Dimension.LENGTH));
        }
        fields.end();
        return column;
    }

    private static Mount mount(Family family) {
        return switch (family) {
            case CLAMP, CLAMP_LONG, CLAMP_LONG_3_IN -> Mount.CLAMP;
            case BOLT -> Mount.BOLT;
            case ROTOCHAMBER -> Mount.ROTOCHAMBER;
            case DD3 -> Mount.DD3;
        };
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
