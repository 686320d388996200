package org.fandown.trace;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Reading;
import org.fandown.evidence.Sample;
import org.fandown.trace.Recognised.Point;
import org.fandown.units.Dimension;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Turns what was recognised into readings that the judge weighs like those of a person.
 *
 * <p>Where a thing was done more than once, the last counts, of build-ups the longest climb and of
 * losses the longest time. What nothing tells is not noted.
 */
public final class TraceReadings {
    private static final double COVERAGE = 2;

    /** Decimals to which a reading is written down. */
    private static final int WRITTEN = 6;

    /** A circuit that loses less than this while the supply reservoir empties is held, psi. */
    private static final double HELD = 5;

    private final Map<Check, Reading> readings = new EnumMap<>(Check.class);
    private final Map<Check, Recognised> used = new EnumMap<>(Check.class);

    private TraceReadings() {}

    /** Makes the readings of what was recognised. */
    public static TraceReadings of(List<Recognised> recognised) {
        TraceReadings all = new TraceReadings();
        recognised.forEach(all::add);
        return all;
    }

    /** Returns the readings, by check. */
    public Map<Check, Reading> readings() {
        return Collections.unmodifiableMap(readings);
    }

    /**
     * Returns the readings as somebody would write them down beside others: each says how finely it
     * was read, and is timed from its own beginning.
     *
     * @param by the steps of the trace
     */
    public Map<Check, Reading> readings(Instruments by) {
        Map<Check, Reading> all = new EnumMap<>(Check.class);
        Instruments steps = written(by);
        readings.forEach((check, reading) -> all.put(check, with(steps, reading)));
        return all;
    }

    private static Reading with(Instruments by, Reading reading) {
        if (reading instanceof Reading.Span span) {
            return new Reading.Span(
                    span.check(), fromZero(span), span.at(), span.note(), Optional.of(by));
        }
        if (reading instanceof Reading.Reserve reserve) {
            return new Reading.Reserve(
                    reserve.check(),
                    written(reserve.before()),
                    written(reserve.after()),
                    written(reserve.at()),
                    reserve.note(),
                    Optional.of(by));
        }
        return reading instanceof Reading.Estimate estimate
                ? new Reading.Estimate(
                        estimate.check(),
                        written(estimate.value()),
                        written(estimate.within()),
                        estimate.over(),
                        written(estimate.at()),
                        estimate.note())
                : reading;
    }

    private static List<Sample> fromZero(Reading.Span span) {
        Quantity first = span.first().time();
        return span.samples().stream()
                .map(s -> new Sample(written(later(first, s.time())), written(s.pressure())))
                .toList();
    }

    private static Quantity later(Quantity first, Quantity time) {
        return Quantity.of(time.value() - first.value(), time.unit());
    }

    private static Instruments written(Instruments by) {
        Map<Dimension, Quantity> steps = new EnumMap<>(Dimension.class);
        by.steps().forEach((dimension, step) -> steps.put(dimension, written(step)));
        return new Instruments(steps);
    }

    private static Circumstances written(Circumstances at) {
        Map<Circumstance, Quantity> quantities = new EnumMap<>(Circumstance.class);
        at.quantities().forEach((what, quantity) -> quantities.put(what, written(quantity)));
        return new Circumstances(at.states(), quantities);
    }

    /** Far finer than any gauge, and no longer than what is read back. */
    private static Quantity written(Quantity quantity) {
        return Quantity.of(Num.roundTo(quantity.value(), WRITTEN), quantity.unit());
    }

    /** Returns what each reading was taken from. */
    public Map<Check, Recognised> used() {
        return Collections.unmodifiableMap(used);
    }

    /** Returns the checks that a trace can hold a reading of. */
    public static List<Check> possible() {
        return List.of(
                Check.BUILD_UP,
                Check.GOVERNOR_CUT_OUT,
                Check.GOVERNOR_CUT_IN,
                Check.AIR_LOSS_RELEASED,
                Check.AIR_LOSS_APPLIED,
                Check.LOW_AIR_WARNING,
                Check.PARKING_VALVE_CLOSING,
                Check.TRAILER_SUPPLY_CLOSING,
                Check.RESERVOIR_RESERVE,
                Check.CHECK_VALVE);
    }

    private void add(Recognised found) {
        switch (found.kind()) {
            case BUILD_UP -> put(Check.BUILD_UP, found, buildUp(found));
            case CUT_OUT ->
                    put(Check.GOVERNOR_CUT_OUT, found, value(Check.GOVERNOR_CUT_OUT, found));
            case CUT_IN -> put(Check.GOVERNOR_CUT_IN, found, value(Check.GOVERNOR_CUT_IN, found));
            case LOSS_RELEASED -> loss(Check.AIR_LOSS_RELEASED, found);
            case LOSS_APPLIED -> loss(Check.AIR_LOSS_APPLIED, found);
            case WARNING -> put(Check.LOW_AIR_WARNING, found, value(Check.LOW_AIR_WARNING, found));
            case PARKING_CLOSED -> {
                Check check = Check.PARKING_VALVE_CLOSING;
                put(check, found, value(check, found));
            }
            case TRAILER_CLOSED -> {
                Check check = Check.TRAILER_SUPPLY_CLOSING;
                put(check, found, value(check, found));
            }
            case APPLICATIONS -> reserve(found);
            case SUPPLY_DRAINED -> held(found);
            case LOSS -> {}
        }
    }

    private void put(Check check, Recognised found, Reading reading) {
        Recognised before = used.get(check);
        if (before != null && isBetter(before, found)) {
            return;
        }
        used.put(check, found);
        readings.put(check, reading);
    }

    /** Whether the one found before tells more than a new one. */
    private static boolean isBetter(Recognised before, Recognised found) {
        return switch (found.kind()) {
            case BUILD_UP -> climb(before) > climb(found);
            case LOSS_RELEASED, LOSS_APPLIED ->
                    before.to() - before.from() > found.to() - found.from();
            default -> false;
        };
    }

    private static double climb(Recognised found) {
        List<Point> points = found.points();
        return points.get(points.size() - 1).psi() - points.get(0).psi();
    }

    private static Quantity psi(double value) {
        return Quantity.of(value, Unit.PSI);
    }

    private static Reading value(Check check, Recognised found) {
        return new Reading.Estimate(
                check,
                psi(found.value()),
                psi(COVERAGE * found.uncertainty()),
                Optional.empty(),
                engine(found),
                note(found));
    }

    private static Reading buildUp(Recognised found) {
        List<Sample> samples =
                found.points().stream()
                        .map(p -> new Sample(Quantity.of(p.seconds(), Unit.SECOND), psi(p.psi())))
                        .toList();
        return new Reading.Span(Check.BUILD_UP, samples, engine(found), note(found));
    }

    private void loss(Check check, Recognised found) {
        Circumstances at =
                engine(found)
                        .orElse(
                                states(
                                        Circumstance.SERVICE_BRAKE,
                                        check == Check.AIR_LOSS_APPLIED ? "applied" : "released"))
                        .orElse(states(Circumstance.AFTER_INITIAL_DROP, "yes"))
                        .with(Circumstance.START_PRESSURE, psi(found.start()))
                        .with(Circumstance.HELD_FOR, heldFor(found));
        put(
                check,
                found,
                new Reading.Estimate(
                        check,
                        psi(found.value()),
                        psi(halfWidth(found)),
                        Optional.of(Quantity.of(60, Unit.SECOND)),
                        at,
                        note(found)));
    }

    /** The time since the initial drop, of which the first part is not measured. */
    private static Quantity heldFor(Recognised found) {
        return Quantity.of(found.to() - found.from() + Losses.SETTLE, Unit.SECOND);
    }

    /** The wider half of the interval, which need not be even. */
    private static double halfWidth(Recognised found) {
        double low = found.value() - found.points().get(0).psi();
        double high = found.points().get(1).psi() - found.value();
        return Math.max(0, Math.max(low, high));
    }

    private void reserve(Recognised found) {
        List<Point> points = found.points();
        Circumstances at =
                engine(found)
                        .with(Circumstance.APPLICATIONS, Quantity.of(points.size() - 1, Unit.EACH));
        Reading reading =
                new Reading.Reserve(
                        Check.RESERVOIR_RESERVE,
                        psi(points.get(0).psi()),
                        psi(points.get(points.size() - 1).psi()),
                        at,
                        note(found),
                        Optional.empty());
        put(Check.RESERVOIR_RESERVE, found, reading);
    }

    private void held(Recognised found) {
        Circumstances at = states(Circumstance.TANKS, "drained");
        boolean holds = found.value() < HELD;
        put(
                Check.CHECK_VALVE,
                found,
                new Reading.Answer(Check.CHECK_VALVE, holds, at, note(found)));
    }

    /** What the trace tells of the engine. */
    private static Circumstances engine(Recognised found) {
        if (Double.isNaN(found.engine())) {
            return Circumstances.NONE;
        }
        boolean runs = found.engine() > 0;
        Circumstances at = states(Circumstance.ENGINE, runs ? "running" : "off");
        return runs
                ? at.with(Circumstance.ENGINE_SPEED, Quantity.of(found.engine(), Unit.RPM))
                : at;
    }

    private static Circumstances states(Circumstance circumstance, String state) {
        Map<Circumstance, String> states = new EnumMap<>(Circumstance.class);
        states.put(circumstance, state);
        return new Circumstances(states, Map.of());
    }

    private static String note(Recognised found) {
        return "from the trace, "
                + Quantity.of(found.from(), Unit.SECOND)
                + " to "
                + Quantity.of(found.to(), Unit.SECOND);
    }
}
