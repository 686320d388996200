package org.fandown.braking;

import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.Volume;

/**
 * The air a chamber holds as its push rod travels.
 *
 * <p><b>Source.</b> Volume = space before the stroke + area x stroke; the stroke follows {@link
 * StrokeModel}. Pressure x volume grows with pressure, so the amount of air has one pressure, the
 * root of a quadratic in each phase of the stroke: no iteration.
 *
 * <p><b>Assumes.</b> The air keeps its temperature. Immutable.
 */
public final class ChamberAir {
    private final StrokeModel strokes;
    private final double area;
    private final double before;

    private ChamberAir(StrokeModel strokes, double areaSquareInches, double beforeCubicInches) {
        this.strokes = strokes;
        this.area = areaSquareInches;
        this.before = beforeCubicInches;
    }

    /**
     * Makes the model.
     *
     * @param strokes the stroke by pressure
     * @param areaSquareInches the chamber's effective area (square inches), positive
     * @param before the volume before the push rod moves
     */
    public static ChamberAir of(StrokeModel strokes, double areaSquareInches, Volume before) {
        return new ChamberAir(strokes, areaSquareInches, before.inCubicInches());
    }

    /** Returns the volume at a chamber pressure. */
    public Volume volumeAt(GaugePressure pressure) {
        return Volume.ofCubicInches(volume(pressure.inPsi()));
    }

    /**
     * Returns the pressure at which the chamber holds an amount of air.
     *
     * @param amount absolute pressure (psi) x volume (cubic inches) of the air, not negative
     * @param ambient pressure outside
     */
    public GaugePressure pressureOf(double amount, AbsolutePressure ambient) {
        double outside = ambient.inPsi();
        double from = -outside;
        for (double corner : strokes.corners()) {
            if (amount <= (corner + outside) * volume(corner)) {
                return GaugePressure.ofPsi(within(amount, outside, from, corner));
            }
            from = corner;
        }
        return GaugePressure.ofPsi(amount / volume(from) - outside);
    }

    /**
     * Solves (p + outside)(b + slope p) = amount on a phase where the volume is a straight line.
     */
    private double within(double amount, double outside, double from, double to) {
        double slope = (volume(to) - volume(from)) / (to - from);
        double atOutside = volume(to) - slope * (to + outside);
        if (!(slope > 0)) {
            return amount / atOutside - outside;
        }
        double root = Math.sqrt(atOutside * atOutside + 4 * slope * amount);
        return (root - atOutside) / (2 * slope) - outside;
    }

    private double volume(double psi) {
        return before + area * strokes.strokeAt(psi);
    }
}
