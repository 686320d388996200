package org.fandown.trace;

import java.util.Arrays;
import org.fandown.units.Num;

/** Weights of points, from logarithms of their probabilities. */
final class Weights {
    /** A weight below this part of the greatest counts as none, logarithm. */
    private static final double NONE = -60;

    private static final int HALVINGS = 12;

    /** Logarithm of the least power that weights are flattened by. */
    private static final double FLATTEST = -14;

    final double[] each;
    private final double[] log;
    private double all;

    Weights(double[] log) {
        this.log = log;
        each = new double[log.length];
        power(1);
    }

    /** Takes the probabilities to a power; returns how many equal weights would tell as much. */
    private double power(double power) {
        double most = Double.NEGATIVE_INFINITY;
        for (double value : log) {
            most = Math.max(most, value);
        }
        all = 0;
        double squares = 0;
        for (int k = 0; k < each.length; k++) {
            double below = power * (log[k] - most);
            each[k] = below > NONE ? Num.exp(below) : 0;
            all += each[k];
            squares += each[k] * each[k];
        }
        return all * all / squares;
    }

    /** How many equal weights would tell as much. */
    double telling() {
        return power(1);
    }

    /** Flattens the weights until they tell as much as some equal ones. */
    void flatten(double wanted) {
        double low = FLATTEST;
        double high = 0;
        for (int i = 0; i < HALVINGS; i++) {
            double mid = (low + high) / 2;
            if (power(Num.exp(mid)) > wanted) {
                low = mid;
            } else {
                high = mid;
            }
        }
        power(Num.exp(low));
    }

    /** The part of all weight that a point carries. */
    double part(int k) {
        return each[k] / all;
    }

    double mean(double[] values) {
        double sum = 0;
        for (int k = 0; k < each.length; k++) {
            sum += part(k) * values[k];
        }
        return sum;
    }

    double covariance(double[] a, double meanA, double[] b, double meanB) {
        double sum = 0;
        for (int k = 0; k < each.length; k++) {
            sum += part(k) * (a[k] - meanA) * (b[k] - meanB);
        }
        return sum;
    }

    /** Below this value lies a part of the weight. */
    double quantile(double[] values, double part) {
        Integer[] order = new Integer[each.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
        double sum = 0;
        double before = values[order[0]];
        double sumBefore = 0;
        for (int k : order) {
            double middle = sum + each[k] / 2;
            if (middle >= part * all) {
                double width = middle - sumBefore;
                double within = width > 0 ? (part * all - sumBefore) / width : 1;
                return before + within * (values[k] - before);
            }
            if (each[k] > 0) {
                before = values[k];
                sumBefore = middle;
            }
            sum += each[k];
        }
        return before;
    }
}
