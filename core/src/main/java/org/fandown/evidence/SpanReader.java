package org.fandown.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.Circumstance;
import org.fandown.document.Fields;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Reads a needle that was watched over time: a build-up or a loss of air. */
final class SpanReader {
    /** No test of a needle is shorter (s). */
    private static final double SHORTEST = 1;

    /** Nobody reads a needle twice in less (s). */
    private static final double SHORTEST_STEP = 0.05;

    private static final String LEAST = "1 s or more";
    private static final String TOO_SHORT = "nobody watches a needle for so short a time";

    private final Fields fields;
    private final Check check;
    private final Circumstances at;
    private final String note;
    private final boolean builds;
    private final Plausible clock;
    private final Optional<Instruments> by;

    SpanReader(Fields fields, Check check, Circumstances at, String note) {
        this.fields = fields;
        this.check = check;
        this.at = at;
        this.note = note;
        this.builds = check.kind() == CheckKind.BUILD_UP;
        this.clock = builds ? Plausible.TIMED : Plausible.WATCHED;
        this.by = InstrumentsReader.own(fields);
    }

    Reading read() {
        if (fields.has("points")) {
            return points();
        }
        if (builds) {
            return ends("from", "to");
        }
        return fields.has("loss") ? loss() : ends("start", "end");
    }

    /** The loss itself, read as a difference; the pressure it began at is not known. */
    private Reading loss() {
        Quantity time = time();
        Quantity loss = Plausible.GAUGE.read(fields, "loss");
        List<Sample> samples =
                List.of(
                        new Sample(Quantity.of(0, time.unit()), loss),
                        new Sample(time, Quantity.of(0, loss.unit())));
        return new Reading.Span(check, samples, at.with(Circumstance.HELD_FOR, time), note, by);
    }

    private Reading ends(String from, String to) {
        Quantity time = time();
        Quantity start = Plausible.GAUGE.read(fields, from);
        Quantity end = Plausible.GAUGE.read(fields, to);
        if (start.unit() != end.unit()) {
            throw fields.refuse(
                    to,
                    "this is in another unit than '" + from + "'",
                    "one unit for both",
                    "write both in one unit");
        }
        if (builds && !(end.value() > start.value())) {
            throw fields.refuse(
                    to,
                    "the pressure does not rise from '" + from + "'",
                    "more than " + start,
                    "swap the two, or correct one");
        }
        return span(
                List.of(new Sample(Quantity.of(0, time.unit()), start), new Sample(time, end)),
                time);
    }

    private Reading points() {
        List<Sample> samples = new ArrayList<>();
        Fields items = fields.items("points");
        for (String index : items.keys()) {
            Fields point = items.fields(index);
            Sample sample =
                    new Sample(clock.read(point, "at"), Plausible.GAUGE.read(point, "gauge"));
            requireOrder(point, samples, sample);
            point.end();
            samples.add(sample);
        }
        if (samples.size() < 2) {
            throw fields.refuse(
                    "points",
                    "one point shows no change",
                    "two points or more",
                    "add what was read later");
        }
        Quantity first = samples.get(0).time();
        double last = samples.get(samples.size() - 1).time().valueIn(first.unit());
        Quantity held = Quantity.of(last - first.value(), first.unit());
        if (isTooShort(held)) {
            throw fields.refuse("points", TOO_SHORT, LEAST, "watch the needle for longer");
        }
        return span(samples, held);
    }

    private Reading span(List<Sample> samples, Quantity held) {
        Circumstances noted = at.with(Circumstance.HELD_FOR, held);
        return new Reading.Span(
                check,
                samples,
                builds ? noted : noted.with(Circumstance.START_PRESSURE, samples.get(0).pressure()),
                note,
                by);
    }

    private static void requireOrder(Fields point, List<Sample> before, Sample sample) {
        if (before.isEmpty()) {
            return;
        }
        Sample last = before.get(before.size() - 1);
        Unit seconds = Unit.SECOND;
        if (sample.time().valueIn(seconds) - last.time().valueIn(seconds) < SHORTEST_STEP) {
            throw point.refuse(
                    "at",
                    "this is not later than the point before",
                    "more than " + last.time(),
                    "put the points in order");
        }
        if (sample.pressure().unit() != last.pressure().unit()) {
            throw point.refuse(
                    "gauge",
                    "this is in another unit than the point before",
                    "one unit for all points",
                    "write all in one unit");
        }
    }

    private Quantity time() {
        Quantity time = clock.read(fields, "time");
        if (isTooShort(time)) {
            throw fields.refuse("time", TOO_SHORT, LEAST, "write the time on the clock");
        }
        return time;
    }

    private static boolean isTooShort(Quantity time) {
        return time.valueIn(Unit.SECOND) < SHORTEST;
    }
}
