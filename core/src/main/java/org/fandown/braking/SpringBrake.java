package org.fandown.braking;

import org.fandown.units.Force;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;

/**
 * The force of the spring in a spring brake.
 *
 * <p><b>Assumes.</b> Force = 1950 lbf - 200 lbf/in x stroke for a chamber of 30 square inches, and
 * in proportion to the area for others.
 *
 * <p><b>Source.</b> A provincial driver manual gives 1500 to 2000 lbf; the line within that is our
 * choice. See {@link Assumption#SPRING_FORCE}. Immutable.
 */
public final class SpringBrake {
    private static final double REFERENCE_AREA = 30;

    private final double area;

    private SpringBrake(double areaSquareInches) {
        this.area = areaSquareInches;
    }

    /**
     * Makes the spring of a chamber.
     *
     * @param areaSquareInches the effective area of the spring chamber (square inches), positive
     */
    public static SpringBrake of(double areaSquareInches) {
        if (!(areaSquareInches > 0)) {
            throw new IllegalArgumentException("Area must be positive.");
        }
        return new SpringBrake(areaSquareInches);
    }

    /** Returns the spring's force at a stroke, never negative. */
    public Force force(Length stroke) {
        return Force.ofPoundsForce(force(stroke.inInches()));
    }

    /** Returns the gauge pressure that holds the spring fully back. */
    public GaugePressure holdOff() {
        return GaugePressure.ofPsi(forceAtRest() / area);
    }

    double force(double inches) {
        return Math.max(0, forceAtRest() - rate() * inches);
    }

    double forceAtRest() {
        return Assumption.SPRING_FORCE.number() * area / REFERENCE_AREA;
    }

    double rate() {
        return Assumption.SPRING_RATE.number() * area / REFERENCE_AREA;
    }
}
