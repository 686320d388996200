package org.fandown.trace;

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

    /** The governor of no vehicle cuts in below this, psi. */
    private static final double LEAST_CUT_IN = 65;

    /**
     * What an application takes the circuits take from the supply reservoir a moment later, and the
     * governor feels that: so much of the fall is still to come when it cuts in (assumption, from
     * simulated tests of vehicles drawn by lot).
     */
    private static final double CUT_IN_PART = 0.12;

    /** Standard uncertainty of that part. */
    private static final double CUT_IN_DOUBT = 0.17;

    /** At this or more a safety valve holds the pressure, not a governor, psi. */
    private static final double MOST_CUT_OUT = 145;

    /** Below this a cut-out must show that nothing holds the pressure any more, psi. */
    private static final double USUAL_CUT_OUT = 105;

    /** So far it must have sunk then, psi. */
    private static final double SUNK = 0.6;

    /** What is read just after or before an event is the mean of this time, s. */
    private static final double LOOK = 3;

    /** A fall by more than this just before hides where the governor cut in, psi. */
    private static final double PLUNGE = 12;

    /** Just before, s. */
    private static final double PLUNGED = 8;

    /**
     * No governor lets the pressure sink by less than this before it calls for air again, psi: what
     * does is a valve that blows off and shuts.
     */
    private static final double LEAST_SWING = 5;

    /** So often in a row it must be seen to be believed. */
    private static final int SWINGS = 2;

    /** A vehicle faster than this is being driven, km/h. */
    private static final double DRIVEN = 3;

    private final Consumer<Recognised> found;
    private final RawWindow primary;
    private final RawWindow secondary;
    private final History history = new History();
    private final Climb climb = new Climb();
    private boolean rising;
    private boolean driven;
    private boolean cutOutSeen;
    private boolean knobsMoved;
    private int smallSwings;
    private double parking = Double.NaN;
    private double trailer = Double.NaN;
    private double low = Double.POSITIVE_INFINITY;
    private double lowTime;
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

    /** The governor cut in near the end of the last fall. */
    private void begin(Moment now, double level) {
        rising = true;
        double climbed = climb.high();
        double climbedTime = climb.highTime();
        climb.begin(new Point(lowTime, low), now, level);
        if (cutOutSeen) {
            boolean small = climbed - low < LEAST_SWING + step();
            smallSwings = small && lowTime - climbedTime < PLUNGED ? smallSwings + 1 : 0;
        }
        double fallen = history.mean(lowTime - PLUNGED, lowTime - PLUNGED + 2, Moment::lower) - low;
        if (cutOutSeen
                && smallSwings < SWINGS
                && !(fallen > PLUNGE)
                && !knobsMoved
                && low >= LEAST_CUT_IN) {
            double before = history.mean(lowTime - LOOK, lowTime - LOOK / 2, Moment::higher);
            double after = history.mean(lowTime - 0.1, lowTime + 0.1, Moment::higher);
            double fell = Double.isNaN(before) ? 0 : Math.max(0, before - after);
            double value = after + fell * CUT_IN_PART;
            double fine = Math.max(step() / Math.sqrt(12), 0.3);
            double wide = fell * CUT_IN_DOUBT;
            double doubt = Math.sqrt(fine * fine + wide * wide);
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

    /** Air that is no longer pumped cools and sinks; a valve that blows off or a leak holds it. */
    private boolean hasSunk(Moment now) {
        double late = history.mean(now.time - LOOK, now.time, Moment::higher);
        return late < climb.topMean() - Math.max(SUNK, 0.7 * step());
    }

    private void climbing(Moment now, double level) {
        climb.add(now, level, step());
        if (climb.high() - level > noticed()) {
            end(now, climb.sinksGently(step()));
        } else if (climb.levelled(now.time, step())
                && (climb.high() >= USUAL_CUT_OUT || hasSunk(now))) {
            end(now, true);
        }
    }

    private void end(Moment now, boolean levelled) {
        rising = false;
        if (climb.height() >= BUILD_UP) {
            found.accept(buildUp());
        }
        double from = climb.highTime();
        boolean runs = !Boolean.FALSE.equals(turns(from, now.time));
        if (levelled && runs && isGoverned()) {
            double doubt = Math.max(step() / Math.sqrt(12), 0.3);
            double value = climb.topMean();
            if (smallSwings < SWINGS) {
                found.accept(
                        Recognised.of(Kind.CUT_OUT, from, now.time, value, doubt, rpm(from, now)));
            }
            cutOutSeen = true;
            knobsMoved = false;
        }
        low = now.lower();
        lowTime = now.time;
    }

    private boolean isGoverned() {
        return climb.high() >= LEAST_CUT_OUT
                && climb.high() < MOST_CUT_OUT
                && climb.height() > noticed()
                && climb.isAbrupt(step());
    }

    private double rpm(double from, Moment to) {
        return history.mean(from, to.time, m -> m.get(Channel.ENGINE_SPEED));
    }

    private Recognised buildUp() {
        Point first = climb.foot();
        double to = climb.highTime();
        double rpm = history.mean(first.seconds(), to, m -> m.get(Channel.ENGINE_SPEED));
        return new Recognised(
                Kind.BUILD_UP,
                first.seconds(),
                to,
                0,
                0,
                List.copyOf(climb.points()),
                rpm,
                first.psi());
    }

    void finish() {
        if (rising && climb.height() >= BUILD_UP && last > climb.highTime() - 1) {
            found.accept(buildUp());
        }
    }
}
