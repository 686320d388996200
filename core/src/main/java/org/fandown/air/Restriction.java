package org.fandown.air;

import org.fandown.units.Length;

/**
 * How easily air passes a hole, a hose or a valve, in the terms of ISO 6358.
 *
 * <p>The choked mass flow is conductance x reference density x pressure upstream; above the
 * critical ratio of the pressures the flow falls along an ellipse. {@link Flow} computes it.
 *
 * @param conductance sonic conductance C, m3/(s Pa), more than 0 and at most 1e-3
 * @param criticalRatio critical pressure ratio b, 0 to 0.95; 0.2 to 0.5 for valves and fittings
 */
public record Restriction(double conductance, double criticalRatio) {
    private static final double LARGEST = 1e-3;
    private static final double LARGEST_RATIO = 0.95;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public Restriction {
        if (!(conductance > 0 && conductance <= LARGEST)) {
            throw new IllegalArgumentException(
                    "A sonic conductance must be more than 0 and at most 1e-3 m3/(s Pa); use a gate"
                            + " for a way that can be shut.");
        }
        if (!(criticalRatio >= 0 && criticalRatio <= LARGEST_RATIO)) {
            throw new IllegalArgumentException("A critical pressure ratio must be in 0 to 0.95.");
        }
    }

    /**
     * Makes that of a round hole, taken as an ideal nozzle of a smaller area.
     *
     * @param diameter diameter of the hole
     * @param discharge discharge coefficient: the part of the area that counts, about 0.65 for a
     *     sharp edge and 0.97 for a rounded one
     * @return the restriction, critical ratio 0.528
     * @throws IllegalArgumentException if the conductance is out of range
     */
    public static Restriction ofHole(Length diameter, double discharge) {
        double area = Math.PI / 4 * diameter.metres() * diameter.metres();
        return ofNozzle(discharge * area, Gas.NOZZLE_CRITICAL_RATIO);
    }

    /**
     * Makes that of an ideal nozzle.
     *
     * @param squareMetres discharge coefficient x area
     * @param criticalRatio critical pressure ratio
     * @return the restriction
     * @throws IllegalArgumentException if the conductance is out of range
     */
    public static Restriction ofNozzle(double squareMetres, double criticalRatio) {
        double perArea =
                Gas.NOZZLE / (Gas.REFERENCE_DENSITY * Math.sqrt(Gas.R * Gas.REFERENCE_TEMPERATURE));
        return new Restriction(squareMetres * perArea, criticalRatio);
    }

    /** Mass flow when choked, for one pascal upstream and air of one kelvin. */
    double coefficient() {
        return conductance * Gas.REFERENCE_DENSITY * Math.sqrt(Gas.REFERENCE_TEMPERATURE);
    }
}
