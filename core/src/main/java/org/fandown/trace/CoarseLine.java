package org.fandown.trace;

import java.util.Arrays;
import org.fandown.units.Num;

/**
 * The slope of a straight line seen through an instrument that shows whole steps.
 *
 * <p>Errors of such readings are not independent: a pressure that falls by two steps in a minute
 * tells little more than when it passed from one step to the next. So the probability of just these
 * readings is worked out for many lines, and for several sizes of noise, and the slope is what
 * these probabilities say (Bayes with an even prior on level and slope, slopes from a least one,
 * and on the logarithm of the noise).
 *
 * <p><i>Valid for:</i> 3 readings or more, in time, with a step above 0. Readings are gathered into
 * at most {@value #BLOCKS} blocks of time, within which the line is taken as level.
 */
final class CoarseLine {
    private static final int BLOCKS = 64;
    private static final int SLOPES = 41;
    private static final int LEVELS = 25;

    /** Sizes of noise that are tried, in steps of the instrument: each 1.5 times the one before. */
    private static final double[] NOISES = noises();

    /** How much less likely than the likeliest a noise may be to count, logarithm. */
    private static final double LIKELY = 8;

    /** Probability below which a reading is taken as a slip, so that one does not rule all out. */
    private static final double SLIP = 1e-6;

    /** Logarithm of a probability that no longer counts. */
    private static final double NOTHING = -40;

    private static final double TAIL = 0.025;
    private static final int REFINEMENTS = 3;

    private final Blocks blocks;
    private final double step;
    private final double leastLoss;
    private double[] noises = NOISES;

    private CoarseLine(Blocks blocks, double step, double leastLoss) {
        this.blocks = blocks;
        this.step = step;
        this.leastLoss = leastLoss;
    }

    /**
     * Estimates the loss.
     *
     * @param times in s, rising
     * @param readings as shown
     * @param count how many of both count
     * @param step the least difference the instrument shows
     * @param leastLoss the least loss that can be, per second; below 0 if the pressure may rise
     */
    static Slope fit(double[] times, double[] readings, int count, double step, double leastLoss) {
        Blocks blocks = Blocks.of(times, readings, count, BLOCKS);
        return new CoarseLine(blocks, step, leastLoss).fit();
    }

    private static double[] noises() {
        double[] noises = new double[16];
        double noise = 0.03;
        for (int i = 0; i < noises.length; i++) {
            noises[i] = noise;
            noise *= 1.5;
        }
        return noises;
    }

    private Slope fit() {
        double levelReach = 1.3 * step + blocks.scatter();
        Posterior posterior =
                search(new Grid(blocks.slope(), slopeReach(), blocks.mean(), levelReach));
        for (int i = 0; i < REFINEMENTS; i++) {
            posterior = search(posterior.around());
        }
        Slope slope = posterior.slope();
        double low = Math.max(leastLoss, slope.low());
        return new Slope(slope.loss(), slope.uncertainty(), low, slope.high());
    }

    private double slopeReach() {
        return (3 * step + 6 * blocks.scatter() / Math.sqrt(blocks.readings)) / blocks.span();
    }

    private record Grid(double slope, double slopeReach, double level, double levelReach) {
        double slopeAt(int i) {
            return slope + slopeReach * (2.0 * i / (SLOPES - 1) - 1);
        }

        double levelAt(int i) {
            return level + levelReach * (2.0 * i / (LEVELS - 1) - 1);
        }
    }

    private Posterior search(Grid grid) {
        double[][][] log = new double[noises.length][][];
        double[] most = new double[noises.length];
        double best = Double.NEGATIVE_INFINITY;
        for (int n = 0; n < noises.length; n++) {
            log[n] = likelihoods(grid, noises[n] * step);
            most[n] = greatest(log[n]);
            best = Math.max(best, most[n]);
        }
        keepLikely(most, best);
        return new Posterior(grid, weights(log, best));
    }

    /** Noises that the readings rule out are not tried again. */
    private void keepLikely(double[] most, double best) {
        double[] kept = new double[noises.length];
        int count = 0;
        for (int n = 0; n < noises.length; n++) {
            if (most[n] >= best - LIKELY) {
                kept[count] = noises[n];
                count++;
            }
        }
        noises = Arrays.copyOf(kept, count);
    }

    private static double greatest(double[][] table) {
        double most = Double.NEGATIVE_INFINITY;
        for (double[] row : table) {
            for (double value : row) {
                most = Math.max(most, value);
            }
        }
        return most;
    }

    private static double[][] weights(double[][][] log, double best) {
        double[][] sum = new double[SLOPES][LEVELS];
        for (double[][] each : log) {
            for (int i = 0; i < SLOPES; i++) {
                for (int j = 0; j < LEVELS; j++) {
                    double below = each[i][j] - best;
                    sum[i][j] += below > NOTHING ? Num.exp(below) : 0;
                }
            }
        }
        return sum;
    }

    private double[][] likelihoods(Grid grid, double sigma) {
        double[][] log = new double[SLOPES][LEVELS];
        for (int i = 0; i < SLOPES; i++) {
            double slope = grid.slopeAt(i);
            if (-slope < leastLoss) {
                Arrays.fill(log[i], Double.NEGATIVE_INFINITY);
                continue;
            }
            for (int j = 0; j < LEVELS; j++) {
                log[i][j] = blocks.logLikelihood(slope, grid.levelAt(j), step, sigma, SLIP);
            }
        }
        return log;
    }

    /** Probabilities on a grid. */
    private static final class Posterior {
        private final Grid grid;
        private final double[] bySlope = new double[SLOPES];
        private final double[] byLevel = new double[LEVELS];
        private double all;

        Posterior(Grid grid, double[][] weights) {
            this.grid = grid;
            for (int i = 0; i < SLOPES; i++) {
                for (int j = 0; j < LEVELS; j++) {
                    bySlope[i] += weights[i][j];
                    byLevel[j] += weights[i][j];
                    all += weights[i][j];
                }
            }
        }

        /** Returns the grid that just holds what is likely. */
        Grid around() {
            int[] s = bounds(bySlope);
            int[] l = bounds(byLevel);
            double slopeCell = 2 * grid.slopeReach() / (SLOPES - 1);
            double levelCell = 2 * grid.levelReach() / (LEVELS - 1);
            return new Grid(
                    (grid.slopeAt(s[0]) + grid.slopeAt(s[1])) / 2,
                    ((s[1] - s[0]) / 2.0 + 1.5) * slopeCell,
                    (grid.levelAt(l[0]) + grid.levelAt(l[1])) / 2,
                    ((l[1] - l[0]) / 2.0 + 1.5) * levelCell);
        }

        private int[] bounds(double[] weights) {
            int first = 0;
            while (first < weights.length - 1 && weights[first] < 1e-4 * all) {
                first++;
            }
            int last = weights.length - 1;
            while (last > first && weights[last] < 1e-4 * all) {
                last--;
            }
            return new int[] {first, last};
        }

        Slope slope() {
            double mean = 0;
            for (int i = 0; i < SLOPES; i++) {
                mean += bySlope[i] / all * grid.slopeAt(i);
            }
            double variance = 0;
            for (int i = 0; i < SLOPES; i++) {
                double off = grid.slopeAt(i) - mean;
                variance += bySlope[i] / all * off * off;
            }
            return new Slope(-mean, Math.sqrt(variance), -quantile(1 - TAIL), -quantile(TAIL));
        }

        private double quantile(double part) {
            double sum = 0;
            double cell = 2 * grid.slopeReach() / (SLOPES - 1);
            for (int i = 0; i < SLOPES; i++) {
                double next = sum + bySlope[i] / all;
                if (next >= part) {
                    double within = bySlope[i] > 0 ? (part - sum) / (next - sum) : 0;
                    return grid.slopeAt(i) + (within - 0.5) * cell;
                }
                sum = next;
            }
            return grid.slopeAt(SLOPES - 1);
        }
    }
}
