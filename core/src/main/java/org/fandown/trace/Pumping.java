package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.Recognised.Point;
import org.jspecify.annotations.Nullable;

/**
 * Finds where pressure is pumped up: from a low to a high of the lower circuit that is more than
 * the instrument's steps, and what ended it.
 */
final class Pumping {
    /** A climb smaller than this is not told from a tremble, psi. */
    private static final double LEAST_CLIMB = 1.5;

    /** A climb of at least this is worth timing, psi. */
    private static final double BUILD_UP = 8;

    /** A governor cuts out at this or more, psi. */
    private static final double LEAST_CUT_OUT = 85;

    /** Without a new high for at least this time the pumping has ended, s. */
    private static final double PLATEAU = 6;

    /** A climb by this much and two steps is waited for, psi. */
    private static final double AWAITED = 1;

    /** The governor of no vehicle cuts in below this, psi. */
    private static final double LEAST_CUT_IN = 65;

    /** What is read just after or before an event is the mean of this time, s. */
    private static final double LOOK = 3;

    /** A fall by more than this just before hides where the governor cut in, psi. */
    private static final double PLUNGE = 12;

    /** Just before, s. */
    private static final double PLUNGED = 8;

    /** A vehicle faster than this is being driven, km/h. */
    private static final double DRIVEN = 3;

    /** Points of a climb that tell how fast it is now. */
    private static final int RECENT = 10;

    private final Consumer<Recognised> found;
    private final RawWindow primary;
    private final RawWindow secondary;
    private final History history = new History();
    private final List<Point> climb = new ArrayList<>();
    private boolean rising;
    private boolean driven;
    private boolean cutOutSeen;
    private boolean knobsMoved;
    private double parking = Double.NaN;
    private double trailer = Double.NaN;
    private double low = Double.POSITIVE_INFINITY;
    private double lowTime;
    private double high;
    private double highTime;
    private double last = Double.NaN;

    Pumping(Consumer<Recognised> found, RawWindow primary, RawWindow secondary) {
        this.found = found;
        this.primary = primary;
        this.secondary = secondary;
    }

    void moment(Moment now) {
        history.add(now);
        watchKnobs(now);
        double level = now.lower();
        if (now.has(Channel.SPEED)) {
            driven = now.get(Channel.SPEED) > DRIVEN;
        }
        if (driven) {
            rising = false;
            low = Double.POSITIVE_INFINITY;
        } else if (!Double.isNaN(level)) {
            level(now, level);
        }
    }

    private void level(Moment now, double level) {
        if (rising) {
            climbing(now, level);
        } else {
            falling(now, level);
        }
        last = now.time;
    }

    /** A knob that is moved takes air, which looks like braking down to the cut-in. */
    private void watchKnobs(Moment now) {
        knobsMoved |= changes(now, Channel.PARKING_SWITCH, parking);
        knobsMoved |= changes(now, Channel.TRAILER_SHUT, trailer);
        parking = now.has(Channel.PARKING_SWITCH) ? now.get(Channel.PARKING_SWITCH) : parking;
        trailer = now.has(Channel.TRAILER_SHUT) ? now.get(Channel.TRAILER_SHUT) : trailer;
    }

    private static boolean changes(Moment now, Channel channel, double before) {
        return now.has(channel) && !Double.isNaN(before) && now.get(channel) != before;
    }

    private double step() {
        return Math.max(primary.step(), secondary.step());
    }

    private double noticed() {
        return Math.max(LEAST_CLIMB, 2.2 * step());
    }

    private void falling(Moment now, double level) {
        if (level < low) {
            low = level;
            lowTime = now.time;
        } else if (level - low > noticed() && !Boolean.FALSE.equals(turns(lowTime, now.time))) {
            begin(now, level);
        }
    }

    /** The governor cut in somewhere in the last fall: its middle is said, its width is doubt. */
    private void begin(Moment now, double level) {
        rising = true;
        high = level;
        highTime = now.time;
        climb.clear();
        climb.add(new Point(lowTime, low));
        climb.add(new Point(now.time, level));
        double fallen = history.mean(lowTime - PLUNGED, lowTime - PLUNGED + 2, Moment::lower) - low;
        if (cutOutSeen && !(fallen > PLUNGE) && !knobsMoved && low >= LEAST_CUT_IN) {
            double before = history.mean(lowTime - LOOK, lowTime - LOOK / 2, Moment::higher);
            double after = history.mean(lowTime - 0.1, lowTime + 0.1, Moment::higher);
            double fell = Double.isNaN(before) ? 0 : Math.max(0, before - after);
            double value = after + fell / 2;
            double fine = Math.max(step() / Math.sqrt(12), 0.3);
            double doubt = Math.sqrt(fine * fine + fell * fell / 12);
            found.accept(
                    Recognised.of(Kind.CUT_IN, lowTime, now.time, value, doubt, rpm(lowTime, now)));
        }
        cutOutSeen = false;
    }

    /** Whether the engine turned in a stretch, null if nothing tells. */
    private @Nullable Boolean turns(double from, double to) {
        double rpm = history.mean(from, to, m -> m.get(Channel.ENGINE_SPEED));
        return Double.isNaN(rpm) ? null : rpm > 100;
    }

    private void climbing(Moment now, double level) {
        if (level > high + Math.max(0.1, step() / 2)) {
            high = level;
            highTime = now.time;
            if (level - climb.get(climb.size() - 1).psi() >= 1) {
                climb.add(new Point(now.time, level));
            }
        } else if (high - level > noticed()) {
            end(now, false);
        } else if (now.time - highTime >= plateau()) {
            end(now, true);
        }
    }

    /** The slower the climb, the longer a new high may take. */
    private double plateau() {
        Point first = climb.get(Math.max(0, climb.size() - RECENT));
        double rate = (high - first.psi()) / Math.max(1, highTime - first.seconds());
        return Math.max(PLATEAU, (AWAITED + 2 * step()) / Math.max(rate, 0.01));
    }

    private void end(Moment now, boolean levelled) {
        rising = false;
        double climbed = high - climb.get(0).psi();
        if (climbed >= BUILD_UP) {
            found.accept(buildUp());
        }
        boolean runs = !Boolean.FALSE.equals(turns(highTime, now.time));
        if (levelled && runs && high >= LEAST_CUT_OUT && climbed > noticed()) {
            double value = history.mean(highTime, highTime + LOOK, Moment::higher);
            double doubt = Math.max(step() / Math.sqrt(12), 0.3);
            found.accept(
                    Recognised.of(
                            Kind.CUT_OUT, highTime, now.time, value, doubt, rpm(highTime, now)));
            cutOutSeen = true;
            knobsMoved = false;
        }
        low = now.lower();
        lowTime = now.time;
    }

    private double rpm(double from, Moment to) {
        return history.mean(from, to.time, m -> m.get(Channel.ENGINE_SPEED));
    }

    private Recognised buildUp() {
        Point first = climb.get(0);
        double rpm = history.mean(first.seconds(), highTime, m -> m.get(Channel.ENGINE_SPEED));
        return new Recognised(
                Kind.BUILD_UP, first.seconds(), highTime, 0, 0, climb, rpm, first.psi());
    }

    void finish() {
        if (rising && high - climb.get(0).psi() >= BUILD_UP && last > highTime - 1) {
            found.accept(buildUp());
        }
    }
}
