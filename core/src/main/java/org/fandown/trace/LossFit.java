package org.fandown.trace;

import org.fandown.units.Num;

/**
 * How much a pressure falls from one end of a window to the other, seen through an instrument that
 * shows whole steps, with what is known of it.
 *
 * <p>The pressure is taken as a level, a fall from end to end, the return of heat after something
 * was done, which has a known time and an unknown size, and two small bends. Each but the fall is
 * nothing at both ends or the same at both, so that the fall is what the needle would show between
 * them, whatever bends the curve. Where the noise is large the errors of the readings are
 * independent and least squares tell all; else the probability of just these readings is worked out
 * ({@link Cloud}), because errors of whole steps are not independent.
 *
 * <p><i>Valid for:</i> 3 readings or more, in time, with a step above 0.
 */
final class LossFit {
    private static final int BLOCKS = 64;

    /** Time in which the air of a reservoir takes on the temperature of its wall, s. */
    private static final double WARMING = 20;

    /** What cooling or warming air has before it when it begins, psi, standard deviation. */
    private static final double WARMTH = 2.5;

    /** Other bends of the curve, psi, and as a part of the fall, standard deviation. */
    private static final double BEND = 0.02;

    private static final double BEND_PART = 0.05;

    /**
     * What no such curve follows, psi, and as a part of the fall, standard deviation (from
     * simulated tests: a leak that comes and goes with a valve).
     */
    private static final double STRAY = 0.002;

    private static final double STRAY_PART = 0.004;

    /** Levels and falls beforehand, psi, so wide that they tell nothing. */
    private static final double ANY = 60;

    /** The same round what least squares have found, in steps and scatters. */
    private static final double ANY_NEAR = 6;

    /** Noise above this, in steps, makes the errors of the readings independent. */
    private static final double FREE = 0.6;

    /** Variance of a reading evenly spread over one step. */
    private static final double STEP_VARIANCE = 1.0 / 12;

    /** Precision of a block as if it held half a reading: to begin with. */
    private static final double VAGUE = 6;

    private static final double LEAST_NOISE = 0.1;
    private static final double NINETY_FIVE = 1.959964;

    private final Blocks blocks;
    private final double[][] shape;
    private final double[] deviations;

    private LossFit(Blocks blocks, double step, double seconds, double since) {
        this.blocks = blocks;
        shape = new double[blocks.size][];
        for (int b = 0; b < blocks.size; b++) {
            shape[b] = shape(blocks.time[b], seconds / WARMING);
        }
        double warmth = WARMTH * Num.exp(-since / WARMING);
        deviations = new double[] {ANY / step, ANY / step, warmth / step, BEND / step, BEND / step};
    }

    /**
     * Estimates the mean loss over a window.
     *
     * @param times in s, rising, within the window
     * @param readings as shown
     * @param count how many of both count
     * @param step the least difference the instrument shows
     * @param from begin of the window, s
     * @param to end of the window, s
     * @param since time from when something was done to the begin of the window, s
     */
    static Slope fit(
            double[] times,
            double[] readings,
            int count,
            double step,
            double from,
            double to,
            double since) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += readings[i];
        }
        double level = sum / count;
        double[] parts = new double[count];
        double[] shown = new double[count];
        for (int i = 0; i < count; i++) {
            parts[i] = (times[i] - from) / (to - from);
            shown[i] = (readings[i] - level) / step;
        }
        Blocks blocks = Blocks.of(parts, shown, count, BLOCKS);
        return new LossFit(blocks, step, to - from, since).fit(step, to - from);
    }

    /** What level, fall, heat and both bends add at a part of the window. */
    private static double[] shape(double u, double length) {
        double end = Num.exp(-length);
        double heat = Num.exp(-u * length) - (1 + (end - 1) * u);
        double bend = 4 * u * (1 - u);
        return new double[] {1, 0.5 - u, heat, bend, 5 * bend * (u - 0.5)};
    }

    private Slope fit(double step, double seconds) {
        Belief first = squares(STEP_VARIANCE);
        double bend = BEND + BEND_PART * Math.abs(first.mean[1] * step);
        deviations[3] = bend / step;
        deviations[4] = bend / step;
        Belief second = squares(STEP_VARIANCE);
        double fall = second.mean[1];
        blocks.above(second.mean[0], fall);
        double scatter = scatter(squares(STEP_VARIANCE));
        Slope more = scatter > FREE * FREE + STEP_VARIANCE ? free(scatter) : stepped(scatter);
        return strayed(fall, more, STRAY / step, step / seconds);
    }

    private static Slope strayed(double fall, Slope more, double stray, double perStep) {
        double loss = fall + more.loss();
        double beside = stray + STRAY_PART * Math.abs(loss);
        double around = NINETY_FIVE * beside;
        return new Slope(
                loss * perStep,
                together(more.uncertainty(), beside) * perStep,
                (loss - together(more.loss() - more.low(), around)) * perStep,
                (loss + together(more.high() - more.loss(), around)) * perStep);
    }

    private static double together(double a, double b) {
        return Math.sqrt(a * a + b * b);
    }

    /** Least squares, as if the errors of the readings were independent. */
    private Belief squares(double variance) {
        Belief belief = new Belief(deviations);
        for (int b = 0; b < blocks.size; b++) {
            belief.learn(shape[b], blocks.mean[b], blocks.readings[b] / variance);
        }
        return belief;
    }

    private double scatter(Belief belief) {
        double sum = 0;
        int all = 0;
        for (int b = 0; b < blocks.size; b++) {
            sum += blocks.squares(b, belief.mean(shape[b]));
            all += blocks.readings[b];
        }
        return sum / Math.max(1, all - 3);
    }

    private Slope free(double scatter) {
        Belief belief = squares(scatter);
        double fall = belief.mean[1];
        double deviation = Math.sqrt(belief.variance[1][1]);
        double half = NINETY_FIVE * deviation;
        return new Slope(fall, deviation, fall - half, fall + half);
    }

    private Slope stepped(double scatter) {
        double deviation = Math.sqrt(scatter);
        deviations[0] = ANY_NEAR * (deviation + 0.5);
        deviations[1] = deviations[0];
        Belief start = new Belief(deviations);
        for (int b = 0; b < blocks.size; b++) {
            start.learn(shape[b], blocks.mean[b], VAGUE);
        }
        double noise = Num.log(Math.max(LEAST_NOISE, deviation / 2));
        return new Cloud(blocks, shape, deviations, start, noise).search(1);
    }
}
