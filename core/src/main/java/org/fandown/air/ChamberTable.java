package org.fandown.air;

import java.util.Arrays;
import java.util.List;

/**
 * The chambers of a network as flat tables, for the inner loop.
 *
 * <p>In each phase the volume is base + slope x absolute pressure.
 */
final class ChamberTable {
    private static final int PHASES = ChamberLaw.PHASES;

    /** Absolute pressure at which each phase begins, Pa; infinite for a phase that is not there. */
    private final double[] begins;

    /** Pressure x volume at which each phase begins, J. */
    private final double[] beginsHolding;

    private final double[] base;
    private final double[] slope;

    ChamberTable(List<ChamberLaw> laws, double ambient) {
        int size = laws.size() * PHASES;
        begins = new double[size];
        beginsHolding = new double[size];
        base = new double[size];
        slope = new double[size];
        Arrays.fill(begins, Double.POSITIVE_INFINITY);
        Arrays.fill(beginsHolding, Double.POSITIVE_INFINITY);
        for (int c = 0; c < laws.size(); c++) {
            fill(c * PHASES, laws.get(c), ambient);
        }
    }

    private void fill(int first, ChamberLaw law, double ambient) {
        begins[first] = 0;
        beginsHolding[first] = 0;
        base[first] = law.rest().cubicMetres();
        int count = law.corners().size();
        for (int i = 0; i < count; i++) {
            double gauge = law.corners().get(i).pressure().pascals();
            double volume = law.volume(gauge);
            double pressure = gauge + ambient;
            int phase = first + i + 1;
            begins[phase] = pressure;
            beginsHolding[phase] = pressure * volume;
            if (i + 1 < count) {
                double next = law.corners().get(i + 1).pressure().pascals();
                slope[phase] = (law.volume(next) - volume) / (next - gauge);
            }
            base[phase] = volume - slope[phase] * pressure;
        }
    }

    /** Returns the volume at an absolute pressure, m3. */
    double volume(int chamber, double pressure) {
        int phase = phaseAt(chamber, pressure);
        return base[phase] + slope[phase] * pressure;
    }

    /** Returns how fast pressure x volume grows with pressure, m3. */
    double growth(int chamber, double pressure) {
        int phase = phaseAt(chamber, pressure);
        return base[phase] + 2 * slope[phase] * pressure;
    }

    /** Returns the absolute pressure at which pressure x volume has a value, Pa. */
    double pressure(int chamber, double holding) {
        int phase = (chamber + 1) * PHASES - 1;
        while (holding < beginsHolding[phase]) {
            phase--;
        }
        double b = base[phase];
        double root = Math.sqrt(b * b + 4 * slope[phase] * holding);
        return b > 0 ? 2 * holding / (b + root) : (root - b) / (2 * slope[phase]);
    }

    /**
     * Returns whether pressure x volume is a straight line between two pressures, but for so little
     * of the second.
     */
    boolean straight(int chamber, double from, double to, double pascals) {
        int phase = phaseAt(chamber, from);
        double change = to - from;
        double growth = base[phase] + 2 * slope[phase] * from;
        return to >= begins[phase]
                && (phase == (chamber + 1) * PHASES - 1 || to <= begins[phase + 1])
                && slope[phase] * change * change <= pascals * growth;
    }

    private int phaseAt(int chamber, double pressure) {
        int phase = (chamber + 1) * PHASES - 1;
        while (pressure < begins[phase]) {
            phase--;
        }
        return phase;
    }
}
