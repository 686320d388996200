package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.Recognised.Point;

/** Finds what switches tell while pressure falls: warning, knobs that pop out, applications. */
final class Switches {
    /** Above this nobody expects a warning or a knob to act by itself, psi. */
    private static final double MOST = 95;

    /** Clear fall of the parking circuit when its valve closes, psi. */
    private static final double VENTED = 25;

    /** A channel must have been off for this long before, s. */
    private static final double OFF = 2;

    /** Applications that are counted together; no test needs so many, and memory is not to grow. */
    private static final int MOST_TOGETHER = 100;

    private static final double BEFORE = 3;
    private static final double DOUBT = 0.5;

    /**
     * A switch that closed in a moment did so between the mean of the moment before and the end of
     * this one, half a moment past its mean: in the middle as a rule.
     */
    private static final double SWITCHED_AT = 0.75;

    /** Variance of a place drawn evenly from one and a half times the fall: 1.5^2 / 12. */
    private static final double SWITCHED_DOUBT = 0.1875;

    private final Consumer<Recognised> found;
    private final History history = new History();
    private final BrakeState brakes = new BrakeState();
    private final List<Point> applications = new ArrayList<>();
    private final double[] offSince = {Double.NaN, Double.NaN, Double.NaN};
    private final double[] offLevel = {Double.NaN, Double.NaN, Double.NaN};
    private double parkingBefore = Double.NaN;
    private double parkingTime = Double.NaN;
    private double firstTime;
    private double lastTime;
    private int count;
    private boolean engineKnown;

    Switches(Consumer<Recognised> found) {
        this.found = found;
    }

    void moment(Moment now) {
        history.add(now);
        lastTime = now.time;
        edge(0, now, Channel.WARNING, Kind.WARNING);
        edge(1, now, Channel.PARKING_SWITCH, Kind.PARKING_CLOSED);
        edge(2, now, Channel.TRAILER_SHUT, Kind.TRAILER_CLOSED);
        vent(now);
        apply(now);
    }

    private double levelBefore(double time) {
        return history.mean(time - 1.1, time + 0.1, Moment::lower);
    }

    private void edge(int i, Moment now, Channel channel, Kind kind) {
        if (!now.has(channel)) {
            return;
        }
        if (now.get(channel) < 0.5) {
            if (Double.isNaN(offSince[i])) {
                offSince[i] = now.time;
            }
            offLevel[i] = Double.isNaN(now.lower()) ? offLevel[i] : now.lower();
            return;
        }
        double fell = Double.isNaN(now.lower()) ? 0 : Math.max(0, offLevel[i] - now.lower());
        double level = offLevel[i] - fell * SWITCHED_AT;
        boolean wasOff = !Double.isNaN(offSince[i]) && now.time - offSince[i] >= OFF;
        offSince[i] = Double.NaN;
        if (wasOff && level <= MOST && falls(now.time)) {
            double doubt = Math.sqrt(DOUBT * DOUBT + fell * fell * SWITCHED_DOUBT);
            found.accept(Recognised.of(kind, now.time - 1, now.time, level, doubt, engine(now)));
        }
    }

    private static double engine(Moment now) {
        return now.get(Channel.ENGINE_SPEED);
    }

    /** Whether pressure was higher some seconds ago. */
    private boolean falls(double time) {
        double earlier = history.mean(time - 10, time - 6, Moment::lower);
        return !Double.isNaN(earlier) && earlier > levelBefore(time) + 0.5;
    }

    /** Without a switch the parking circuit itself tells when its valve closes. */
    private void vent(Moment now) {
        if (now.has(Channel.PARKING_SWITCH) || !now.has(Channel.PARKING)) {
            return;
        }
        double parking = now.get(Channel.PARKING);
        boolean vented =
                parkingBefore - parking > VENTED
                        && now.time - parkingTime < BEFORE
                        && parking < VENTED;
        if (vented && levelBefore(now.time) <= MOST && falls(now.time)) {
            double level = levelBefore(parkingTime);
            found.accept(
                    Recognised.of(
                            Kind.PARKING_CLOSED,
                            parkingTime,
                            now.time,
                            level,
                            2 * DOUBT,
                            engine(now)));
            parkingBefore = parking;
        }
        if (!(parking < parkingBefore - 1) || now.time - parkingTime >= BEFORE) {
            parkingBefore = parking;
            parkingTime = now.time;
        }
    }

    private void apply(Moment now) {
        Boolean turns = now.engineTurns();
        engineKnown |= turns != null;
        if (Boolean.TRUE.equals(turns)) {
            closeApplications(now.time);
            return;
        }
        boolean was = Boolean.TRUE.equals(brakes.applied());
        brakes.changed(now);
        boolean is = Boolean.TRUE.equals(brakes.applied());
        if (is && !was) {
            if (count == 0) {
                firstTime = now.time;
                applications.add(new Point(now.time, levelBefore(now.time - 0.6)));
            }
            count++;
        } else if (was && !is) {
            applications.add(new Point(now.time, levelBefore(now.time)));
            if (count == MOST_TOGETHER) {
                closeApplications(now.time);
            }
        }
    }

    private void closeApplications(double time) {
        if (count >= 2) {
            double before = applications.get(0).psi();
            found.accept(
                    new Recognised(
                            Kind.APPLICATIONS,
                            firstTime,
                            time,
                            count,
                            0,
                            applications,
                            engineKnown ? 0 : Double.NaN,
                            before));
        }
        count = 0;
        applications.clear();
    }

    void finish() {
        closeApplications(lastTime);
    }
}
