package org.fandown.trace;

/**
 * What is believed of a few numbers: their means and how they vary together (normal law). Learns
 * from what is said of a weighted sum of them, without solving anything anew.
 */
final class Belief {
    private final int size;
    final double[] mean;
    final double[][] variance;
    private final double[] spread;

    /** Begins with independent numbers of mean 0 and given standard deviations. */
    Belief(double[] deviations) {
        size = deviations.length;
        mean = new double[size];
        variance = new double[size][size];
        spread = new double[size];
        for (int i = 0; i < size; i++) {
            variance[i][i] = deviations[i] * deviations[i];
        }
    }

    /** The mean of a weighted sum. */
    double mean(double[] weights) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += weights[i] * mean[i];
        }
        return sum;
    }

    /**
     * Learns what a weighted sum was said to be.
     *
     * @param value what was said
     * @param precision inverse of the variance of what was said
     */
    void learn(double[] weights, double value, double precision) {
        double before = 0;
        for (int i = 0; i < size; i++) {
            double row = 0;
            for (int j = 0; j < size; j++) {
                row += variance[i][j] * weights[j];
            }
            spread[i] = row;
            before += weights[i] * row;
        }
        double factor = precision / (1 + precision * before);
        double off = value - mean(weights);
        for (int i = 0; i < size; i++) {
            mean[i] += spread[i] * factor * off;
            for (int j = 0; j < size; j++) {
                variance[i][j] -= spread[i] * spread[j] * factor;
            }
        }
    }
}
