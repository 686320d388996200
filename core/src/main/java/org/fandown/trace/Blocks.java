package org.fandown.trace;

import org.fandown.units.Num;

/** Readings gathered into short blocks of time: in each, which readings there were how often. */
final class Blocks {
    final int readings;
    private final double[] time;
    private final double[] value;
    private final int[] times;
    private final int size;
    private final double mid;
    private final double span;
    private final double mean;
    private final double slope;
    private final double scatter;

    private Blocks(double[] time, double[] value, int[] times, int size, int readings) {
        this.time = time;
        this.value = value;
        this.times = times;
        this.size = size;
        this.readings = readings;
        double t = 0;
        double y = 0;
        for (int i = 0; i < size; i++) {
            t += times[i] * time[i];
            y += times[i] * value[i];
        }
        mid = t / readings;
        mean = y / readings;
        double tt = 0;
        double ty = 0;
        for (int i = 0; i < size; i++) {
            tt += times[i] * (time[i] - mid) * (time[i] - mid);
            ty += times[i] * (time[i] - mid) * (value[i] - mean);
        }
        slope = ty / tt;
        span = time[size - 1] - time[0];
        double off = 0;
        for (int i = 0; i < size; i++) {
            double residual = value[i] - mean - slope * (time[i] - mid);
            off += times[i] * residual * residual;
        }
        scatter = Math.sqrt(off / readings);
    }

    static Blocks of(double[] times, double[] readings, int count, int most) {
        double[] time = new double[count];
        double[] value = new double[count];
        int[] many = new int[count];
        int size = 0;
        double length = (times[count - 1] - times[0]) / most;
        int from = 0;
        while (from < count) {
            int to = from + 1;
            while (to < count && times[to] - times[from] < length) {
                to++;
            }
            size = gather(times, readings, from, to, time, value, many, size);
            from = to;
        }
        return new Blocks(time, value, many, size, count);
    }

    /** Each value of a block once, at the mean time of the block. */
    private static int gather(
            double[] times,
            double[] readings,
            int from,
            int to,
            double[] time,
            double[] value,
            int[] many,
            int begun) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += times[i];
        }
        int size = begun;
        for (int i = from; i < to; i++) {
            int k = begun;
            while (k < size && value[k] != readings[i]) {
                k++;
            }
            if (k == size) {
                size++;
                value[k] = readings[i];
                time[k] = sum / (to - from);
            }
            many[k]++;
        }
        return size;
    }

    double slope() {
        return slope;
    }

    double mean() {
        return mean;
    }

    double span() {
        return span;
    }

    double scatter() {
        return scatter;
    }

    /** Logarithm of the probability of just these readings. */
    double logLikelihood(double slope, double level, double step, double sigma, double slip) {
        double sum = 0;
        double product = 1;
        double half = step / 2;
        for (int i = 0; i < size; i++) {
            double off = value[i] - level - slope * (time[i] - mid);
            double p =
                    NormalTable.below((off + half) / sigma)
                            - NormalTable.below((off - half) / sigma);
            double kept = slip + (1 - slip) * Math.max(0, p);
            if (times[i] == 1) {
                product *= kept;
                if (product < 1e-200) {
                    sum += Num.log(product);
                    product = 1;
                }
            } else {
                sum += times[i] * Num.log(kept);
            }
        }
        return sum + Num.log(product);
    }
}
