package org.fandown.trace;

import org.fandown.units.Num;

/**
 * How likely an instrument of whole steps shows a reading, by how far the pressure is from it, for
 * one size of noise. Logarithms, in a table that is interpolated. Far off the logarithm runs
 * straight on, so that one slip of a reading does not rule all out.
 */
final class StepTable {
    /** Farther beyond the edge of a step than this, in noises, the logarithm runs straight on. */
    private static final double REACH = 3.5;

    private static final int PER_NOISE = 8;

    /** Least noise there is a table for, in steps; each further is 1.12 times the one before. */
    private static final double LEAST = 0.004;

    private static final double RATIO = 1.12;
    private static final int TABLES = 50;

    /** Beyond the tables a noise loses likelihood by the square of how many tables are missing. */
    private static final double BEYOND = 8;

    private static final double LOG_LEAST = Num.log(LEAST);
    private static final double LOG_RATIO = Num.log(RATIO);
    private static final StepTable[] ALL = all();

    private final double perStep;
    private final double[] log;

    private StepTable(double noise) {
        perStep = PER_NOISE / noise;
        log = new double[(int) ((0.5 + REACH * noise) * perStep) + 1];
        for (int i = 0; i < log.length; i++) {
            double off = i / perStep;
            double p =
                    NormalTable.below((0.5 - off) / noise)
                            - NormalTable.below((-0.5 - off) / noise);
            log[i] = Num.log(p);
        }
    }

    private static StepTable[] all() {
        StepTable[] all = new StepTable[TABLES];
        double noise = LEAST;
        for (int i = 0; i < TABLES; i++) {
            all[i] = new StepTable(noise);
            noise *= RATIO;
        }
        return all;
    }

    /** Returns the table made for nearly a noise in steps, given by its logarithm. */
    static StepTable near(double logNoise) {
        int i = (int) Math.floor((logNoise - LOG_LEAST) / LOG_RATIO + 0.5);
        return ALL[Math.max(0, Math.min(TABLES - 1, i))];
    }

    /** Logarithm of the probability of a noise beforehand: even, but for those without a table. */
    static double prior(double logNoise) {
        double at = (logNoise - LOG_LEAST) / LOG_RATIO;
        double out = Math.max(0, Math.max(-at, at - TABLES + 1));
        return -out * out / BEYOND;
    }

    /** Logarithm of the probability of a reading at a pressure that is off by some steps. */
    double log(double off) {
        double at = Math.abs(off) * perStep;
        int i = Math.min((int) at, log.length - 2);
        return log[i] + (at - i) * (log[i + 1] - log[i]);
    }
}
