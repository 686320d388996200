package org.fandown.judgement;

import java.util.List;
import org.fandown.evidence.Sample;
import org.fandown.units.Unit;

/**
 * A straight line through the readings of a needle by least squares, and how far its slope may be
 * off.
 *
 * <p>Rounding to the steps of a gauge is not chance: while the needle moves only a few steps the
 * errors of successive readings go together and do not average out. The slope is therefore taken to
 * be uncertain by the greatest of four figures, all for a coverage of at least 95 %:
 *
 * <ol>
 *   <li>twice the standard error from the scatter about the line (JCGM 100:2008, 4.2);
 *   <li>twice the standard error of independent rounding errors, q / sqrt(12 sxx), with q the step
 *       and sxx the sum of squared distances from the mean time (JCGM 100:2008, 4.3.7);
 *   <li>with fewer than 1.5 steps moved, the bound q / 2 x sum of |distance| / sxx that no
 *       arrangement of rounding errors exceeds (1.5 q / T for many even readings over a time T);
 *       with n steps moved, 0.567 / n of that bound: twice the rms error enumerated over all
 *       sub-step phases of a noise-free needle (0.425 q / T at one step, 0.212 at two, 0.105 at
 *       four, 61 readings);
 *   <li>the farthest slope of any line that passes within half a step of every reading. It holds
 *       for few readings, uneven times, and needles that move nearly a whole number of steps from
 *       reading to reading. Where no line does, the needle scatters more than it is rounded, and
 *       figure 1 speaks.
 * </ol>
 *
 * <p>The fourth alone covers every phase of a noise-free needle. A wider step never makes the slope
 * less uncertain.
 */
final class StraightLine {
    private static final double COVERAGE = 2;
    private static final double ROOT_12 = Math.sqrt(12);
    private static final double FEW_STEPS = 1.5;
    private static final double SHARE_BY_STEPS = 0.567;

    private final double[] times;
    private final double[] pressures;
    private double meanTime;
    private double meanPressure;
    private double sxx;
    private double slope;

    private StraightLine(List<Sample> samples, Unit clock) {
        times = new double[samples.size()];
        pressures = new double[samples.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = samples.get(i).time().valueIn(clock);
            pressures[i] = samples.get(i).pressure().value();
        }
        fit();
    }

    /**
     * The line through samples.
     *
     * @param samples at least three, in rising time, pressures in one unit
     * @param clock the unit of time to reckon in
     */
    static StraightLine through(List<Sample> samples, Unit clock) {
        return new StraightLine(samples, clock);
    }

    private void fit() {
        for (int i = 0; i < times.length; i++) {
            meanTime += times[i];
            meanPressure += pressures[i];
        }
        meanTime /= times.length;
        meanPressure /= times.length;
        double sxy = 0;
        for (int i = 0; i < times.length; i++) {
            double dt = times[i] - meanTime;
            sxx += dt * dt;
            sxy += dt * (pressures[i] - meanPressure);
        }
        slope = sxy / sxx;
    }

    /** Pressure gained in one unit of time. */
    double slope() {
        return slope;
    }

    /** Time from the first sample to the last. */
    double time() {
        return times[times.length - 1] - times[0];
    }

    /**
     * Expanded uncertainty of the slope.
     *
     * @param step the step to which the pressure was read, zero if exactly
     */
    double uncertainty(double step) {
        double chance = COVERAGE * Math.max(scatter(), step / ROOT_12 / Math.sqrt(sxx));
        return Math.max(chance, Math.max(staircase(step), farthest(step)));
    }

    private double scatter() {
        double residual = 0;
        for (int i = 0; i < times.length; i++) {
            double off = pressures[i] - meanPressure - slope * (times[i] - meanTime);
            residual += off * off;
        }
        return Math.sqrt(residual / (times.length - 2) / sxx);
    }

    private double staircase(double step) {
        if (step == 0) {
            return 0;
        }
        double distances = 0;
        for (double time : times) {
            distances += Math.abs(time - meanTime);
        }
        double bound = step / 2 * distances / sxx;
        double steps = Math.abs(slope) * time() / step;
        return steps < FEW_STEPS ? bound : bound * SHARE_BY_STEPS / steps;
    }

    private double farthest(double step) {
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (int i = 0; i < times.length; i++) {
            for (int j = i + 1; j < times.length; j++) {
                double rise = pressures[j] - pressures[i];
                double time = times[j] - times[i];
                least = Math.max(least, (rise - step) / time);
                most = Math.min(most, (rise + step) / time);
            }
        }
        return least > most ? 0 : Math.max(slope - least, most - slope);
    }
}
