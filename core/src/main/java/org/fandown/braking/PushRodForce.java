package org.fandown.braking;

import org.fandown.units.Force;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;

/**
 * The force a brake chamber puts on its push rod, by pressure and stroke.
 *
 * <p><b>Source.</b> Force = pressure x area, and no force once the diaphragm rests on the housing:
 * published. The fall between the knee and the end of the stroke is our own curve; no measured one
 * was found. See {@link Assumption#FORCE_KNEE}, {@link Assumption#FORCE_LOSS}, {@link
 * Assumption#PUSH_OUT_PRESSURE}.
 *
 * <p><b>Assumes.</b> With x = stroke / full stroke: factor 1 up to x = 0.7, then 1 - 0.5 ((x - 0.7)
 * / 0.3)^2, and 0 from x = 1. One curve serves all chamber types.
 *
 * <p><b>Valid for.</b> Pressures of 0 to 200 psi. Immutable.
 */
public final class PushRodForce {
    private static final double KNEE = Assumption.FORCE_KNEE.number();
    private static final double LOSS = Assumption.FORCE_LOSS.number();

    /** Where the stroke counts as used up: a stroke of just that length may come out rounded. */
    private static final double END = 1 - 1e-9;

    private final double area;
    private final double fullStroke;

    private PushRodForce(double areaSquareInches, double fullStrokeInches) {
        this.area = areaSquareInches;
        this.fullStroke = fullStrokeInches;
    }

    /**
     * Makes the force curve of a chamber.
     *
     * @param areaSquareInches its effective area (square inches), positive
     * @param fullStroke its full stroke, positive
     */
    public static PushRodForce of(double areaSquareInches, Length fullStroke) {
        if (!(areaSquareInches > 0) || !(fullStroke.metres() > 0)) {
            throw new IllegalArgumentException("Area and full stroke must be positive.");
        }
        return new PushRodForce(areaSquareInches, fullStroke.inInches());
    }

    /**
     * Returns pressure x area x the factor for the stroke, the return spring left out.
     *
     * @param pressure gauge pressure in the chamber; below zero counts as zero
     * @param stroke stroke of the push rod
     */
    public Force gross(GaugePressure pressure, Length stroke) {
        return Force.ofPoundsForce(gross(pressure.inPsi(), stroke.inInches()));
    }

    /**
     * Returns what is left for the brake when the return spring has taken its part.
     *
     * @param pressure gauge pressure in the chamber
     * @param stroke stroke of the push rod
     * @return never negative
     */
    public Force net(GaugePressure pressure, Length stroke) {
        return Force.ofPoundsForce(net(pressure.inPsi(), stroke.inInches()));
    }

    /**
     * Returns the average thrust: the mean gross force from one third to two thirds of the full
     * stroke. All of that lies below the knee, so the mean is pressure x area.
     *
     * @param pressure gauge pressure in the chamber
     */
    public Force averageThrust(GaugePressure pressure) {
        return Force.ofPoundsForce(Math.max(0, pressure.inPsi()) * area);
    }

    /** Returns the effective stroke: where the gross force has fallen to 90 % of the average. */
    public Length effectiveStroke() {
        double beyond = Math.sqrt(0.1 / LOSS);
        return Length.ofInches(fullStroke * (KNEE + (1 - KNEE) * beyond));
    }

    double gross(double psi, double inches) {
        return Math.max(0, psi) * area * factor(inches);
    }

    double net(double psi, double inches) {
        return Math.max(0, gross(psi, inches) - returnSpring());
    }

    double returnSpring() {
        return Assumption.PUSH_OUT_PRESSURE.number() * area;
    }

    boolean isBottomed(double inches) {
        return inches / fullStroke >= END;
    }

    double area() {
        return area;
    }

    double fullStroke() {
        return fullStroke;
    }

    private double factor(double inches) {
        double x = inches / fullStroke;
        if (x <= KNEE) {
            return 1;
        }
        double y = (x - KNEE) / (1 - KNEE);
        return x < END ? 1 - LOSS * y * y : 0;
    }
}
