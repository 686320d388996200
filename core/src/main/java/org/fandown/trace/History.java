package org.fandown.trace;

import java.util.function.ToDoubleFunction;

/** The latest moments, the oldest going when it is full. */
final class History {
    private static final int MOST = 128;

    private final Moment[] moments = new Moment[MOST];
    private int next;

    History() {
        for (int i = 0; i < MOST; i++) {
            moments[i] = new Moment();
        }
    }

    /** Keeps a copy of a moment. */
    void add(Moment moment) {
        moments[next % MOST].copy(moment);
        next++;
    }

    boolean isEmpty() {
        return next == 0;
    }

    /** The mean of a number over a stretch of time, NaN if no moment in it has one. */
    double mean(double from, double to, ToDoubleFunction<Moment> number) {
        double sum = 0;
        int count = 0;
        for (int i = Math.max(0, next - MOST); i < next; i++) {
            Moment moment = moments[i % MOST];
            double value = number.applyAsDouble(moment);
            if (moment.time >= from && moment.time <= to && !Double.isNaN(value)) {
                sum += value;
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** A number at a time, on the straight line between the moments around it; NaN if unknown. */
    double at(double time, ToDoubleFunction<Moment> number) {
        double laterTime = Double.NaN;
        double later = Double.NaN;
        for (int i = next - 1; i >= Math.max(0, next - MOST); i--) {
            Moment moment = moments[i % MOST];
            double value = number.applyAsDouble(moment);
            if (Double.isNaN(value)) {
                continue;
            }
            if (moment.time <= time) {
                double share = (time - moment.time) / (laterTime - moment.time);
                return Double.isNaN(later) ? value : value + share * (later - value);
            }
            laterTime = moment.time;
            later = value;
        }
        return later;
    }

    /** The time of the last moment before a time whose number is at most a bound; NaN if none. */
    double lastAtMost(double before, double bound, ToDoubleFunction<Moment> number) {
        for (int i = next - 1; i >= Math.max(0, next - MOST); i--) {
            Moment moment = moments[i % MOST];
            if (moment.time < before && number.applyAsDouble(moment) <= bound) {
                return moment.time;
            }
        }
        return Double.NaN;
    }
}
