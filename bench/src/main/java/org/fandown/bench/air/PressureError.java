package org.fandown.bench.air;

import java.util.Arrays;

/**
 * How far pressures, sampled once a second, are from those that are right, psi.
 *
 * @param largest the largest error of any sample
 * @param mostly what 99 of a hundred samples stay within
 * @param atEnd the largest error of the last samples
 */
record PressureError(double largest, double mostly, double atEnd) {
    private static final double MOSTLY = 0.99;

    static PressureError of(double[][] found, double[][] right) {
        double[] errors = new double[right.length * right[0].length];
        double end = 0;
        int next = 0;
        for (int second = 0; second < right.length; second++) {
            for (int k = 0; k < right[second].length; k++) {
                double error = Math.abs(found[second][k] - right[second][k]);
                errors[next++] = error;
                end = second == right.length - 1 ? Math.max(end, error) : 0;
            }
        }
        Arrays.sort(errors);
        return new PressureError(
                errors[errors.length - 1], errors[(int) (MOSTLY * (errors.length - 1))], end);
    }
}
