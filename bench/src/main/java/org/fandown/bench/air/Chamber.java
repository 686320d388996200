package org.fandown.bench.air;

import java.util.List;
import org.fandown.air.ChamberLaw;

/** A brake chamber as its corners: volume over absolute pressure, straight between them. */
final class Chamber {
    /** Stands for a vessel that is none. */
    static final Chamber NONE = new Chamber(List.of());

    private static final double OUTSIDE_PASCALS = 101_325;
    private static final double INCH = 0.0254;

    private final double[] pascals;
    private final double[] cubicMetres;

    Chamber(ChamberLaw law) {
        this(law.corners());
        double area = law.areaSquareInches() * INCH * INCH;
        for (int i = 0; i < pascals.length; i++) {
            pascals[i] = OUTSIDE_PASCALS + law.corners().get(i).pressure().pascals();
            cubicMetres[i] =
                    law.rest().cubicMetres() + area * law.corners().get(i).stroke().metres();
        }
    }

    private Chamber(List<ChamberLaw.Corner> corners) {
        pascals = new double[corners.size()];
        cubicMetres = new double[corners.size()];
    }

    double volume(double p) {
        int last = pascals.length - 1;
        if (p <= pascals[0]) {
            return cubicMetres[0];
        }
        for (int i = 1; i <= last; i++) {
            if (p <= pascals[i]) {
                return cubicMetres[i - 1] + slope(i) * (p - pascals[i - 1]);
            }
        }
        return cubicMetres[last];
    }

    /** Returns the pressure at which pressure times volume has a value, J. */
    double pressure(double joules) {
        int last = pascals.length - 1;
        if (joules <= pascals[0] * cubicMetres[0]) {
            return joules / cubicMetres[0];
        }
        for (int i = 1; i <= last; i++) {
            if (joules <= pascals[i] * cubicMetres[i]) {
                double rise = slope(i);
                double base = cubicMetres[i - 1] - rise * pascals[i - 1];
                return rise == 0
                        ? joules / base
                        : (Math.sqrt(base * base + 4 * rise * joules) - base) / (2 * rise);
            }
        }
        return joules / cubicMetres[last];
    }

    private double slope(int corner) {
        return (cubicMetres[corner] - cubicMetres[corner - 1])
                / (pascals[corner] - pascals[corner - 1]);
    }
}
