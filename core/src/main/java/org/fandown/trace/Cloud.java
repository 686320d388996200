package org.fandown.trace;

/**
 * What readings tell of a curve and of the noise on it, as a cloud of points with weights.
 *
 * <p>Points are drawn from a normal law and weighed by the probability of all readings. While few
 * points carry nearly all weight, the weights are flattened, a new normal law takes their mean and
 * spread, and points are drawn again (population Monte Carlo). The points drawn are the same each
 * time, so that the same readings give the same bits.
 *
 * <p>The last number of a point is the logarithm of the noise in steps, the others are those of the
 * curve.
 */
final class Cloud {
    private static final int POINTS = 384;
    private static final int ROUNDS = 14;

    /** Points that tell as much as so many of equal weight end the search. */
    private static final double ENOUGH = 130;

    /** What weights are flattened to. */
    private static final double FLATTENED = 70;

    /** Points that tell less than this tell no quantiles. */
    private static final double FEW = 40;

    /** Then so many standard deviations are taken for the ends of the interval. */
    private static final double WIDE = 2.5;

    private static final double WIDER = 1.2;

    /** Each round cuts the tails a little: the interval is widened by this part for each. */
    private static final double CUT_TAILS = 0.008;

    private static final double LEAST_VARIANCE = 1e-10;
    private static final double TAIL = 0.025;

    private final Blocks blocks;
    private final double[][] shape;
    private final double[] deviations;
    private final int size;
    private final double[] mean;
    private double[][] root;
    private final double[][] number;
    private Weights weights = new Weights(new double[POINTS]);

    /**
     * Begins.
     *
     * @param blocks the readings
     * @param shape what each number of the curve adds, by block
     * @param deviations how large each number of the curve is beforehand
     * @param start where the curve about is
     * @param noise logarithm of about the noise, in steps
     */
    Cloud(Blocks blocks, double[][] shape, double[] deviations, Belief start, double noise) {
        this.blocks = blocks;
        this.shape = shape;
        this.deviations = deviations;
        int last = deviations.length;
        size = last + 1;
        number = new double[size][POINTS];
        mean = new double[size];
        double[][] variance = new double[size][size];
        for (int i = 0; i < last; i++) {
            mean[i] = start.mean[i];
            System.arraycopy(start.variance[i], 0, variance[i], 0, last);
        }
        mean[last] = noise;
        variance[last][last] = 1;
        root = root(variance);
    }

    /** Searches, and says what is known of one number: mean, standard deviation, interval. */
    Slope search(int wanted) {
        double telling = draw(0);
        int round = 0;
        while (telling < ENOUGH && round < ROUNDS - 1) {
            round++;
            weights.flatten(FLATTENED);
            adapt();
            telling = draw(round);
        }
        double[] value = number[wanted];
        double center = weights.mean(value);
        double deviation = Math.sqrt(weights.covariance(value, center, value, center));
        boolean few = telling < FEW;
        double below = few ? WIDE * deviation : center - weights.quantile(value, TAIL);
        double above = few ? WIDE * deviation : weights.quantile(value, 1 - TAIL) - center;
        double wider = 1 + CUT_TAILS * round;
        return new Slope(center, deviation, center - wider * below, center + wider * above);
    }

    private double draw(int round) {
        double[] log = new double[POINTS];
        double[] x = new double[size];
        for (int k = 0; k < POINTS; k++) {
            double[] z = NormalPoints.point(round * POINTS + k);
            double sum = 0;
            for (int i = 0; i < size; i++) {
                x[i] = mean[i];
                for (int j = 0; j <= i; j++) {
                    x[i] += WIDER * root[i][j] * z[j];
                }
                sum += z[i] * z[i] / 2;
                number[i][k] = x[i];
            }
            log[k] = sum + prior(x) + readings(x);
        }
        weights = new Weights(log);
        return weights.telling();
    }

    private double prior(double[] x) {
        double sum = StepTable.prior(x[size - 1]);
        for (int i = 0; i < size - 1; i++) {
            sum -= x[i] * x[i] / (2 * deviations[i] * deviations[i]);
        }
        return sum;
    }

    private double readings(double[] x) {
        StepTable table = StepTable.near(x[size - 1]);
        double sum = 0;
        for (int b = 0; b < blocks.size; b++) {
            double[] adds = shape[b];
            double pressure = 0;
            for (int i = 0; i < adds.length; i++) {
                pressure += adds[i] * x[i];
            }
            sum += blocks.log(b, pressure, table);
        }
        return sum;
    }

    private void adapt() {
        for (int i = 0; i < size; i++) {
            mean[i] = weights.mean(number[i]);
        }
        double[][] variance = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                variance[i][j] = weights.covariance(number[i], mean[i], number[j], mean[j]);
            }
        }
        root = root(variance);
    }

    /** The lower triangle whose product with itself is a matrix (Cholesky). */
    private static double[][] root(double[][] variance) {
        int n = variance.length;
        double[][] root = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = variance[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                boolean corner = i == j;
                root[i][j] = corner ? Math.sqrt(Math.max(sum, LEAST_VARIANCE)) : sum / root[j][j];
            }
        }
        return root;
    }
}
