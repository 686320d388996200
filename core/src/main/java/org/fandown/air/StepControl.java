package org.fandown.air;

import org.fandown.units.GaugePressure;
import org.fandown.units.TimeSpan;

/**
 * How long the steps through time are.
 *
 * <p>After each step the next length is the last one times tolerance over what counts of the
 * changes of the pressures, but no less than 0.3 and no more than 2 times the last one. Of a
 * reservoir all of its change counts, of another volume how far it is from where it would be had it
 * gone on as in the step before, or a tenth of its change. A step with more than four tolerances is
 * taken back and done with a shorter one, unless it is the shortest.
 *
 * @param shortest shortest step, more than 0
 * @param longest longest step
 * @param tolerance change of pressure that should count in one step, more than 0
 * @param refined whether the flow in a step is the mean of those at its start and its end, where
 *     that can be; else the conductances of its start hold
 */
public record StepControl(
        TimeSpan shortest, TimeSpan longest, GaugePressure tolerance, boolean refined) {
    /** Even steps of 5 ms, for a system that is watched while it runs. */
    public static final StepControl LIVE =
            new StepControl(
                    TimeSpan.ofSeconds(0.005), TimeSpan.ofSeconds(0.005), GaugePressure.ofPsi(1));

    private static final double LEAST_FACTOR = 0.3;
    private static final double MOST_FACTOR = 2;
    private static final double REFUSED_FROM = 4;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public StepControl {
        if (!(shortest.seconds() > 0)
                || longest.compareTo(shortest) < 0
                || !(tolerance.pascals() > 0)) {
            throw new IllegalArgumentException(
                    "Step control needs a shortest step above 0, a longest one that is not shorter,"
                            + " and a tolerance above 0.");
        }
    }

    /**
     * Makes one with refined steps.
     *
     * @throws IllegalArgumentException if a value is out of range
     */
    public StepControl(TimeSpan shortest, TimeSpan longest, GaugePressure tolerance) {
        this(shortest, longest, tolerance, true);
    }

    /** Makes one in which all steps have the same length and none is refined. */
    public static StepControl fixed(TimeSpan step) {
        return new StepControl(step, step, GaugePressure.ofPsi(1), false);
    }

    /** The first step, where a state suggests none. */
    double clamp(double step) {
        return Math.max(shortest.seconds(), Math.min(longest.seconds(), step));
    }

    boolean refuses(double step, double change) {
        return change > REFUSED_FROM * tolerance.pascals() && !isShortest(step);
    }

    /** Whether no shorter step can be tried. */
    boolean isShortest(double step) {
        return step <= shortest.seconds();
    }

    /** The length to try instead of a refused step. */
    double shorter(double step) {
        return Math.max(shortest.seconds(), LEAST_FACTOR * step);
    }

    /**
     * The length to try instead of a step that passed by a moment at which something switches: so
     * long that it ends just after that moment.
     *
     * @param step the length of the step
     * @param since how long before its end the moment was
     */
    double before(double step, double since) {
        double least = shortest.seconds();
        return since > least ? Math.max(least, step - since + 0.5 * least) : step;
    }

    /**
     * The length after a step.
     *
     * @param step the length just used, perhaps cut short
     * @param suggested the length that was suggested for it
     * @param change the largest change of a pressure, Pa
     */
    double next(double step, double suggested, double change) {
        double ideal = step * (tolerance.pascals() / Math.max(change, Double.MIN_NORMAL));
        return clamp(Math.max(LEAST_FACTOR * step, Math.min(MOST_FACTOR * suggested, ideal)));
    }
}
