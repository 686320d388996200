package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;

/** Round figures along an axis. */
final class Ticks {
    /** Steps of a time axis, s: round in seconds, minutes and hours. */
    private static final List<Integer> SECONDS =
            List.of(1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 14400, 21600);

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

    static List<Double> upTo(double top, double step) {
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; i * step <= top + step * 1e-9; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }
}
