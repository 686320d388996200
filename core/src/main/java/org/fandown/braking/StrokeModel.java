package org.fandown.braking;

import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;

/**
 * The stroke of a push rod at any chamber pressure, from one measured stroke.
 *
 * <p><b>Assumes.</b> Up to 5 psi the return spring holds; from 5 to 8 psi the rod takes up the free
 * stroke; above 8 psi the stroke grows evenly as the brake yields; at the full stroke it ends. The
 * yield is 0.0105 in/psi for 30 square inches, fitted to a published split of the stroke, and in
 * proportion to the area. If the measured stroke is too short for that, the free stroke is zero and
 * the yield is what was measured.
 *
 * <p><b>Source.</b> See {@link Assumption#POWER_STROKE} and {@link Assumption#DRUM_GROWTH}.
 *
 * <p><b>Valid for.</b> Pressures of 0 to 200 psi. Immutable.
 */
public final class StrokeModel {
    private static final double PUSH_OUT = Assumption.PUSH_OUT_PRESSURE.number();
    private static final double CONTACT = Assumption.CONTACT_PRESSURE.number();
    private static final double REFERENCE_AREA = 30;

    private final double free;
    private final double yield;
    private final double fullStroke;

    private StrokeModel(double freeInches, double yieldInchesPerPsi, double fullStrokeInches) {
        this.free = freeInches;
        this.yield = yieldInchesPerPsi;
        this.fullStroke = fullStrokeInches;
    }

    /**
     * Makes the model of a brake from its free stroke.
     *
     * @param areaSquareInches the chamber's effective area (square inches)
     * @param fullStroke the chamber's full stroke
     * @param freeStroke the stroke until the linings touch
     */
    public static StrokeModel ofFreeStroke(
            double areaSquareInches, Length fullStroke, Length freeStroke) {
        return new StrokeModel(
                freeStroke.inInches(), yieldOf(areaSquareInches), fullStroke.inInches());
    }

    /**
     * Makes the model of a brake from a measured applied stroke.
     *
     * @param areaSquareInches the chamber's effective area (square inches)
     * @param fullStroke the chamber's full stroke
     * @param applied the measured stroke
     * @param at the chamber pressure at which it was measured, more than 8 psi
     */
    public static StrokeModel ofAppliedStroke(
            double areaSquareInches, Length fullStroke, Length applied, GaugePressure at) {
        double above = at.inPsi() - CONTACT;
        if (!(above > 0)) {
            throw new IllegalArgumentException(
                    "A stroke measured at "
                            + at
                            + " says nothing of the brake: the linings touch"
                            + " above 8 psi.");
        }
        double yield = Math.min(yieldOf(areaSquareInches), applied.inInches() / above);
        double free = Math.max(0, applied.inInches() - yield * above);
        return new StrokeModel(free, yield, fullStroke.inInches());
    }

    private static double yieldOf(double area) {
        return Assumption.POWER_STROKE.number() * area / REFERENCE_AREA;
    }

    /** Whether a stroke is too short for a brake that moves, by what the brake should yield. */
    static boolean isSuspiciouslyShort(double area, Length applied, GaugePressure at) {
        double expected = yieldOf(area) * (at.inPsi() - CONTACT);
        return applied.inInches() < Assumption.SHORT_STROKE.number() * expected;
    }

    /** Returns the stroke at a chamber pressure, at most the full stroke. */
    public Length strokeAt(GaugePressure pressure) {
        return Length.ofInches(strokeAt(pressure.inPsi()));
    }

    /** Returns the stroke until the linings touch. */
    public Length freeStroke() {
        return Length.ofInches(free);
    }

    /** Returns the same brake with a stroke that is longer by some amount at every pressure. */
    public StrokeModel longerBy(Length more) {
        return longerBy(more.inInches());
    }

    /**
     * Returns how much longer the stroke of a drum brake is when its drum is hot.
     *
     * @param drum temperature of the drum; at or below 70 F nothing is gained
     */
    public static Length drumGrowth(Temperature drum) {
        double above = drum.inFahrenheit() - Assumption.COLD_DRUM.number();
        return Length.ofInches(Assumption.DRUM_GROWTH.number() * Math.max(0, above));
    }

    /**
     * Returns how much longer the stroke is while the wheel turns.
     *
     * @param stop the time the stop takes
     */
    public static Length rollingGrowth(TimeSpan stop) {
        return Length.ofInches(
                Assumption.ROLLING_STROKE.number()
                        + Assumption.ROLLING_STROKE_RATE.number() * stop.seconds());
    }

    StrokeModel longerBy(double inches) {
        return new StrokeModel(free + inches, yield, fullStroke);
    }

    double strokeAt(double psi) {
        return Math.min(fullStroke, demandAt(psi));
    }

    /** The pressures (psi) between which the stroke is a straight line, ascending. */
    double[] corners() {
        if (free > fullStroke) {
            double end = PUSH_OUT + (CONTACT - PUSH_OUT) * fullStroke / free;
            return new double[] {PUSH_OUT, end};
        }
        double end = yield > 0 ? CONTACT + (fullStroke - free) / yield : CONTACT;
        return new double[] {PUSH_OUT, CONTACT, end};
    }

    /** The stroke the brake would need, were the chamber long enough. */
    double demandAt(double psi) {
        if (psi <= PUSH_OUT) {
            return 0;
        }
        return psi <= CONTACT
                ? free * (psi - PUSH_OUT) / (CONTACT - PUSH_OUT)
                : free + yield * (psi - CONTACT);
    }

    /**
     * The stroke the brake would need where a spring that gives force - rate x stroke holds it:
     * spring and brake are both straight lines, so the crossing is closed.
     */
    double demandUnderSpring(double force, double rate, double area) {
        double crossing = (free + yield * (force / area - CONTACT)) / (1 + yield * rate / area);
        return Math.max(crossing, 0);
    }
}
