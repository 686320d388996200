package org.fandown.trace;

import java.util.List;
import java.util.function.Consumer;
import org.fandown.trace.Recognised.Kind;

/** Finds the test of the one-way check valves: the supply reservoir empties, the circuits hold. */
final class Drains {
    private static final double FULL = 50;
    private static final double EMPTY = 10;
    private static final double DOUBT = 0.5;

    /** A reservoir that takes longer leaks, s; nobody opened its drain. */
    private static final double LONGEST = 120;

    /** A fall as slow as this is a leak, psi a second: what comes after it counts. */
    private static final double LEAK = 0.2;

    private final BrakeState brakes = new BrakeState();
    private final Consumer<Recognised> found;
    private double fullTime = Double.NaN;
    private double circuits = Double.NaN;
    private double lastHigh = Double.NaN;

    Drains(Consumer<Recognised> found) {
        this.found = found;
    }

    void moment(Moment now) {
        brakes.changed(now);
        if (Boolean.TRUE.equals(brakes.applied())) {
            finish();
        }
        if (!now.has(Channel.SUPPLY) || Double.isNaN(now.lower())) {
            return;
        }
        double supply = now.get(Channel.SUPPLY);
        if (supply >= FULL) {
            double slow = 1 + LEAK * (now.time - fullTime);
            if (!(supply < lastHigh - slow)) {
                fullTime = now.time;
                circuits = now.lower();
                lastHigh = supply;
            }
        } else if (now.time - fullTime > LONGEST) {
            finish();
        } else if (supply <= EMPTY && !Double.isNaN(fullTime)) {
            double lost = circuits - now.lower();
            found.accept(
                    new Recognised(
                            Kind.SUPPLY_DRAINED,
                            fullTime,
                            now.time,
                            lost,
                            DOUBT,
                            List.of(),
                            now.get(Channel.ENGINE_SPEED),
                            circuits));
            finish();
        }
    }

    /** Nothing is open from here on: a reservoir that was not emptied shows nothing. */
    void finish() {
        fullTime = Double.NaN;
        lastHigh = Double.NaN;
    }
}
