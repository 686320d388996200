package org.fandown.trace;

/** The latest samples of one channel, as they came; the oldest go when it is full. */
final class RawWindow {
    private static final int MOST = 1 << 16;

    private double[] times = new double[1024];
    private double[] values = new double[1024];
    private int first;
    private int size;
    private double step = Double.POSITIVE_INFINITY;
    private double before = Double.NaN;

    void add(double seconds, double value) {
        if (size == times.length && size < MOST) {
            grow();
        }
        int at = (first + size) & (times.length - 1);
        if (size == times.length) {
            first = (first + 1) & (times.length - 1);
        } else {
            size++;
        }
        times[at] = seconds;
        values[at] = value;
        double difference = Math.abs(value - before);
        if (difference > 1e-9 && difference < step) {
            step = difference;
        }
        before = value;
    }

    private void grow() {
        double[] moreTimes = new double[2 * times.length];
        double[] moreValues = new double[2 * times.length];
        for (int i = 0; i < size; i++) {
            int at = (first + i) & (times.length - 1);
            moreTimes[i] = times[at];
            moreValues[i] = values[at];
        }
        times = moreTimes;
        values = moreValues;
        first = 0;
    }

    /** The least difference between two samples that followed each other so far, 0 if none did. */
    double step() {
        return step < Double.POSITIVE_INFINITY ? step : 0;
    }

    /** Copies the samples of a stretch of time; returns how many. */
    int copy(double from, double to, double[] intoTimes, double[] intoValues) {
        int count = 0;
        for (int i = 0; i < size && count < intoTimes.length; i++) {
            int at = (first + i) & (times.length - 1);
            if (times[at] >= from && times[at] <= to) {
                intoTimes[count] = times[at];
                intoValues[count] = values[at];
                count++;
            }
        }
        return count;
    }

    int size() {
        return size;
    }
}
