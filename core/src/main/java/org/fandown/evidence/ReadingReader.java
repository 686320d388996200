package org.fandown.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.document.Fields;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

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
        Reading reading =
                switch (check.kind()) {
                    case VALUE -> value(fields, check, at, note);
                    case BUILD_UP -> buildUp(fields, check, at, note);
                    case AIR_LOSS -> airLoss(fields, check, at, note);
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
                            check,
                            readings.quantities(key, dimension(check)),
                            Optional.empty(),
                            general,
                            "");
            case YES_NO -> new Reading.Answer(check, readings.truth(key), general, "");
            default ->
                    throw readings.refuse(
                            key,
                            "needs more than one figure",
                            check == Check.BUILD_UP
                                    ? "{ from: 85 psi, to: 100 psi, time: 40 s }"
                                    : "{ start: 110 psi, end: 108 psi, time: 60 s }",
                            "Write the figures as a map.");
        };
    }

    private static Dimension dimension(Check check) {
        return check.dimension().orElseThrow();
    }

    private static Reading value(Fields fields, Check check, Circumstances at, String note) {
        Dimension dimension = dimension(check);
        String key =
                dimension == Dimension.GAUGE_PRESSURE
                        ? "gauge"
                        : dimension == Dimension.TIME ? "time" : "value";
        List<Quantity> values = fields.quantities(key, dimension);
        for (Quantity value : values) {
            if (value.unit() != values.get(0).unit()) {
                throw fields.refuse(
                        key,
                        "mixes units",
                        "one unit for all gauges",
                        "Write both needles in one unit.");
            }
        }
        Optional<Quantity> to =
                fields.has("to")
                        ? Optional.of(fields.quantity("to", Dimension.GAUGE_PRESSURE))
                        : Optional.empty();
        return new Reading.Value(check, values, to, at, note);
    }

    private static Reading buildUp(Fields fields, Check check, Circumstances at, String note) {
        return fields.has("points")
                ? points(fields, check, at, note)
                : span(fields, check, "from", "to", at, note);
    }

    private static Reading airLoss(Fields fields, Check check, Circumstances at, String note) {
        if (fields.has("points")) {
            return points(fields, check, at, note);
        }
        if (!fields.has("loss")) {
            return span(fields, check, "start", "end", at, note);
        }
        Quantity time = fields.quantity("time", Dimension.TIME);
        requirePositive(fields, "time", time);
        Quantity loss = fields.quantity("loss", Dimension.GAUGE_PRESSURE);
        List<Sample> samples =
                List.of(
                        new Sample(Quantity.of(0, time.unit()), loss),
                        new Sample(time, Quantity.of(0, loss.unit())));
        return new Reading.Span(check, samples, at.with(Circumstance.HELD_FOR, time), note);
    }

    private static Reading span(
            Fields fields, Check check, String from, String to, Circumstances at, String note) {
        Quantity time = fields.quantity("time", Dimension.TIME);
        requirePositive(fields, "time", time);
        Quantity start = fields.quantity(from, Dimension.GAUGE_PRESSURE);
        Quantity end = fields.quantity(to, Dimension.GAUGE_PRESSURE);
        if (start.unit() != end.unit()) {
            throw fields.refuse(
                    to, "is in another unit than " + from, "one unit", "Write both in one unit.");
        }
        if (check == Check.BUILD_UP && !(end.value() > start.value())) {
            throw fields.refuse(
                    to, "is not above " + from, "a higher pressure", "Swap or correct the two.");
        }
        List<Sample> samples =
                List.of(new Sample(Quantity.of(0, time.unit()), start), new Sample(time, end));
        Circumstances held = at.with(Circumstance.HELD_FOR, time);
        return new Reading.Span(check, samples, withStart(held, check, start), note);
    }

    private static Circumstances withStart(Circumstances at, Check check, Quantity start) {
        return check == Check.BUILD_UP ? at : at.with(Circumstance.START_PRESSURE, start);
    }

    private static Reading points(Fields fields, Check check, Circumstances at, String note) {
        List<Sample> samples = new ArrayList<>();
        Fields items = fields.items("points");
        for (String index : items.keys()) {
            Fields point = items.fields(index);
            Sample sample =
                    new Sample(
                            point.quantity("at", Dimension.TIME),
                            point.quantity("gauge", Dimension.GAUGE_PRESSURE));
            requireOrder(point, samples, sample);
            point.end();
            samples.add(sample);
        }
        if (samples.size() < 2) {
            throw fields.refuse(
                    "points", "has fewer than two points", "two or more", "Add a point.");
        }
        Unit unit = samples.get(0).time().unit();
        Quantity held =
                Quantity.of(
                        samples.get(samples.size() - 1).time().valueIn(unit)
                                - samples.get(0).time().value(),
                        unit);
        Circumstances with = at.with(Circumstance.HELD_FOR, held);
        return new Reading.Span(
                check, samples, withStart(with, check, samples.get(0).pressure()), note);
    }

    private static void requireOrder(Fields point, List<Sample> before, Sample sample) {
        if (before.isEmpty()) {
            return;
        }
        Sample last = before.get(before.size() - 1);
        Unit seconds = Unit.SECOND;
        if (!(sample.time().valueIn(seconds) > last.time().valueIn(seconds))) {
            throw point.refuse(
                    "at",
                    "is not later than the point before",
                    "rising time",
                    "Put the points in order.");
        }
        if (sample.pressure().unit() != last.pressure().unit()) {
            throw point.refuse(
                    "gauge",
                    "is in another unit than the point before",
                    "one unit",
                    "Write all in one unit.");
        }
    }

    private static Reading reserve(Fields fields, Check check, Circumstances at, String note) {
        Quantity before = fields.quantity("before", Dimension.GAUGE_PRESSURE);
        Quantity after = fields.quantity("after", Dimension.GAUGE_PRESSURE);
        if (before.unit() != after.unit()) {
            throw fields.refuse(
                    "after",
                    "is in another unit than before",
                    "one unit",
                    "Write both in one unit.");
        }
        return new Reading.Reserve(check, before, after, at, note);
    }

    private static void requirePositive(Fields fields, String key, Quantity time) {
        if (!(time.value() > 0)) {
            throw fields.refuse(
                    key, "is not above zero", "a time such as 60 s", "Correct the time.");
        }
    }
}
