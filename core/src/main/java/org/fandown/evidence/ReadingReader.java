package org.fandown.evidence;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads one reading of the vehicle as a whole. */
final class ReadingReader {
    private ReadingReader() {}

    static Reading read(Fields readings, String key, Check check, Circumstances general) {
        if (!readings.isMap(key)) {
            return brief(readings, key, check, general);
        }
        Fields fields = readings.fields(key);
        Circumstances at = CircumstancesReader.read(fields).orElse(general);
        String note = fields.optionalText("note").orElse("");
        if (fields.has("within")) {
            Reading estimate = EstimateReader.read(fields, check, at, note);
            fields.end();
            return estimate;
        }
        Reading reading =
                switch (check.kind()) {
                    case VALUE -> value(fields, check, at, note);
                    case BUILD_UP, AIR_LOSS -> new SpanReader(fields, check, at, note).read();
                    case RESERVE -> reserve(fields, check, at, note);
                    default -> new Reading.Answer(check, fields.truth("answer"), at, note);
                };
        fields.end();
        return reading;
    }

    private static Reading brief(Fields readings, String key, Check check, Circumstances general) {
        return switch (check.kind()) {
            case VALUE ->
                    new Reading.Value(
                            check, needles(readings, key, check), Optional.empty(), general, "");
            case YES_NO -> new Reading.Answer(check, readings.truth(key), general, "");
            default ->
                    throw readings.refuse(
                            key, "one figure is not enough", form(check), "write all of them");
        };
    }

    private static String form(Check check) {
        return switch (check.kind()) {
            case BUILD_UP -> "{ from: 85 psi, to: 100 psi, time: 40 s }";
            case AIR_LOSS -> "{ start: 110 psi, end: 108 psi, time: 60 s }";
            default -> "{ before: 110 psi, after: 70 psi, applications: 5 }";
        };
    }

    private static Reading value(Fields fields, Check check, Circumstances at, String note) {
        String key = key(check);
        List<Quantity> values = needles(fields, key, check);
        Optional<Quantity> to =
                fields.has("to")
                        ? Optional.of(Plausible.GAUGE.read(fields, "to"))
                        : Optional.empty();
        return new Reading.Value(check, values, to, at, note);
    }

    /** The key of the single figure of a check. */
    static String key(Check check) {
        Dimension dimension = check.dimension().orElseThrow();
        return dimension == Dimension.GAUGE_PRESSURE
                ? "gauge"
                : dimension == Dimension.TIME ? "time" : "value";
    }

    /** One figure, or one for each gauge that was read. */
    private static List<Quantity> needles(Fields fields, String key, Check check) {
        Plausible range = Plausible.of(check);
        List<Quantity> values =
                fields.oneOrMore(key, range.dimension().phrase(), node -> range.read(node));
        if (values.isEmpty()) {
            throw fields.refuse(
                    key, "the list is empty", "one figure for each gauge", "write at least one");
        }
        for (Quantity value : values) {
            if (value.unit() != values.get(0).unit()) {
                throw fields.refuse(
                        key,
                        "the figures are in different units",
                        "one unit for all gauges",
                        "write all figures in one unit");
            }
        }
        return values;
    }

    private static Reading reserve(Fields fields, Check check, Circumstances at, String note) {
        Quantity before = Plausible.GAUGE.read(fields, "before");
        Quantity after = Plausible.GAUGE.read(fields, "after");
        if (before.unit() != after.unit()) {
            throw fields.refuse(
                    "after",
                    "this is in another unit than 'before'",
                    "one unit for both",
                    "write both in one unit");
        }
        if (after.value() > before.value()) {
            throw fields.refuse(
                    "after",
                    "more pressure is left than there was before",
                    "at most " + before,
                    "swap the two, or make the test again with the engine off");
        }
        return new Reading.Reserve(check, before, after, at, note, InstrumentsReader.own(fields));
    }
}
