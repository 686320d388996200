package org.fandown.plot;

import java.util.List;

/** A line of a given slope, laid through the middle of what was recorded. */
public final class SlopeLine {
    private SlopeLine() {}

    /**
     * Lays a line through the curve that falls fastest.
     *
     * @param curves the curves, in psi over seconds
     * @param from where the line begins, s
     * @param to where it ends, s
     * @param fall how much it falls, psi in a second
     * @return the two ends of the line; empty if nothing was recorded meanwhile
     */
    public static Curve of(List<Curve> curves, double from, double to, double fall) {
        Curve line = new Curve("measured");
        double fastest = Double.NEGATIVE_INFINITY;
        double time = 0;
        double psi = 0;
        for (Curve curve : curves) {
            Sums sums = new Sums((from + to) / 2);
            for (int i = 0; i < curve.size(); i++) {
                if (curve.time(i) >= from && curve.time(i) <= to) {
                    sums.add(curve.time(i), curve.value(i));
                }
            }
            if (sums.count > 0 && sums.fall() > fastest) {
                fastest = sums.fall();
                time = sums.time();
                psi = sums.psi();
            }
        }
        if (fastest > Double.NEGATIVE_INFINITY) {
            line.add(from, psi - fall * (from - time));
            line.add(to, psi - fall * (to - time));
        }
        return line;
    }

    /** Sums for a straight line through points, times counted from a time near them. */
    private static final class Sums {
        private final double origin;
        private int count;
        private double t;
        private double p;
        private double tt;
        private double tp;

        Sums(double origin) {
            this.origin = origin;
        }

        void add(double seconds, double psi) {
            double at = seconds - origin;
            count++;
            t += at;
            p += psi;
            tt += at * at;
            tp += at * psi;
        }

        double time() {
            return origin + t / count;
        }

        double psi() {
            return p / count;
        }

        double fall() {
            double spread = tt - t * t / count;
            return spread > 0 ? (t * p / count - tp) / spread : 0;
        }
    }
}
