package org.fandown.trace;

import java.util.List;
import java.util.function.Consumer;
import org.fandown.trace.Recognised.Kind;

/** Finds the test of the one-way check valves: the supply reservoir empties, the circuits hold. */
final class Drains {
    private static final double FULL = 50;
    private static final double EMPTY = 10;
    private static final double DOUBT = 0.5;

    private final Consumer<Recognised> found;
    private double fullTime = Double.NaN;
    private double circuits = Double.NaN;
    private double lastHigh = Double.NaN;

    Drains(Consumer<Recognised> found) {
        this.found = found;
    }

    void moment(Moment now) {
        if (!now.has(Channel.SUPPLY) || Double.isNaN(now.lower())) {
            return;
        }
        double supply = now.get(Channel.SUPPLY);
        if (supply >= FULL) {
            if (!(supply < lastHigh - 1) || Double.isNaN(fullTime)) {
                fullTime = now.time;
                circuits = now.lower();
                lastHigh = supply;
            }
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
            fullTime = Double.NaN;
            lastHigh = Double.NaN;
        }
    }

    /** Nothing is open at the end: a reservoir that was not emptied shows nothing. */
    void finish() {
        fullTime = Double.NaN;
    }
}
