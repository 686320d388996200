package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;

/** Round figures along an axis. */
final class Ticks {
    /** Steps of a time axis, s: round in seconds, minutes and hours. */
    private static final List<Integer> SECONDS =
            List.of(1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 14400, 21600);

    private static final double LEAST_STEP = 0.1;
    private static final double LEAST_PSI = 60;
    private static final double PSI = 20;

    private Ticks() {}

    /** Returns the upper end of an axis that shows a pressure. */
    static double top(double psi) {
        return Math.max(LEAST_PSI, PSI * Math.ceil(psi / PSI - 1e-9));
    }

    /** Returns the pressures named on an axis. */
    static List<Double> psi(double top) {
        return upTo(top, PSI);
    }

    /** Returns the times named on an axis, at most so many besides 0. */
    static List<Double> seconds(double end, int most) {
        for (int step : SECONDS) {
            if (end / step <= most) {
                return upTo(end, step);
            }
        }
        return upTo(end, SECONDS.get(SECONDS.size() - 1));
    }

    /** Returns the step of an axis of time of which at most so many fit. */
    static double timeStep(double length, int most) {
        for (int step : SECONDS) {
            if (length / step <= most) {
                return step;
            }
        }
        int last = SECONDS.get(SECONDS.size() - 1);
        return last * Math.ceil(length / last / most);
    }

    /** Returns a round step (1, 2 or 5 times a power of ten) of which at most so many fit. */
    static double step(double length, int most) {
        double step = LEAST_STEP;
        while (length / step > most) {
            if (length / (2 * step) <= most) {
                return 2 * step;
            }
            if (length / (5 * step) <= most) {
                return 5 * step;
            }
            step *= 10;
        }
        return step;
    }

    /** Returns the multiples of a step between two ends. */
    static List<Double> between(double from, double to, double step) {
        List<Double> ticks = new ArrayList<>();
        double slack = step * 1e-9;
        for (double n = Math.ceil((from - slack) / step); n * step <= to + slack; n++) {
            ticks.add(n * step);
        }
        return ticks;
    }

    static List<Double> upTo(double top, double step) {
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; i * step <= top + step * 1e-9; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }
}
