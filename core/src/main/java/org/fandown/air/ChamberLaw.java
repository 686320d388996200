package org.fandown.air;

import java.util.List;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Unit;
import org.fandown.units.Volume;

/**
 * How the volume of a brake chamber grows with its pressure.
 *
 * <p>Volume = volume at rest + area x stroke, and the stroke is a line with corners over gauge
 * pressure, constant before the first corner and after the last. Pressure x volume then grows with
 * pressure, so an amount of air has one pressure: the root of a quadratic between two corners.
 *
 * <p><b>Assumes.</b> The push rod has no inertia: it weighs little against its force, and its own
 * motion is over long before the pressure has changed.
 *
 * @param rest volume before the push rod moves, more than 0
 * @param areaSquareInches area of the diaphragm, in2, more than 0 and at most 100: the number of
 *     the chamber type
 * @param corners two or three corners, the first at no stroke, pressures rising and strokes not
 *     falling
 */
public record ChamberLaw(Volume rest, double areaSquareInches, List<Corner> corners) {
    /** Straight parts of the line of stroke over pressure, at most. */
    static final int PHASES = 4;

    /**
     * A corner of the line of stroke over pressure.
     *
     * @param pressure pressure in the chamber, 0 or more
     * @param stroke stroke at that pressure
     */
    public record Corner(GaugePressure pressure, Length stroke) {}

    /**
     * Copies the list and checks the shape.
     *
     * @throws IllegalArgumentException if a value is out of range or the corners are out of order
     */
    public ChamberLaw {
        corners = List.copyOf(corners);
        if (!(rest.cubicMetres() > 0) || !(areaSquareInches > 0 && areaSquareInches <= 100)) {
            throw new IllegalArgumentException(
                    "A chamber needs a volume above 0 and an area of more than 0 to 100 in2.");
        }
        if (corners.size() < 2 || corners.size() >= PHASES) {
            throw new IllegalArgumentException("A chamber needs two or three corners.");
        }
        if (!(corners.get(0).pressure().pascals() >= 0) || corners.get(0).stroke().metres() != 0) {
            throw new IllegalArgumentException(
                    "The first corner of a chamber needs a pressure of 0 or more and no stroke.");
        }
        for (int i = 1; i < corners.size(); i++) {
            Corner last = corners.get(i - 1);
            Corner next = corners.get(i);
            if (next.pressure().compareTo(last.pressure()) <= 0
                    || next.stroke().compareTo(last.stroke()) < 0) {
                throw new IllegalArgumentException(
                        "The corners of a chamber need rising pressures and strokes that do not"
                                + " fall.");
            }
        }
    }

    /**
     * Makes that of a service chamber.
     *
     * @param rest volume before the push rod moves
     * @param areaSquareInches area of the diaphragm, in2
     * @param stroke the stroke of its push rod
     * @return the law
     * @throws IllegalArgumentException if a value is out of range
     */
    public static ChamberLaw service(Volume rest, double areaSquareInches, PushRodStroke stroke) {
        return new ChamberLaw(rest, areaSquareInches, stroke.corners());
    }

    /**
     * Makes that of a spring brake's hold-off chamber.
     *
     * @param rest volume while the spring is fully out
     * @param areaSquareInches area of the diaphragm, in2
     * @param start pressure at which the spring begins to give way
     * @param holdOff pressure at which it is fully held off
     * @param stroke its travel between them
     * @return the law
     * @throws IllegalArgumentException if a value is out of range
     */
    public static ChamberLaw spring(
            Volume rest,
            double areaSquareInches,
            GaugePressure start,
            GaugePressure holdOff,
            Length stroke) {
        List<Corner> corners =
                List.of(new Corner(start, new Length(0)), new Corner(holdOff, stroke));
        return new ChamberLaw(rest, areaSquareInches, corners);
    }

    /** Returns the stroke at a pressure. */
    public Length strokeAt(GaugePressure pressure) {
        return new Length(stroke(pressure.pascals()));
    }

    /** Returns the volume at a pressure. */
    public Volume volumeAt(GaugePressure pressure) {
        return new Volume(volume(pressure.pascals()));
    }

    /**
     * Returns the pressure at which the chamber holds an amount of air.
     *
     * @param joules absolute pressure (Pa) x volume (m3) of the air, 0 or more
     * @param ambient pressure of the surrounding air
     * @return the pressure
     */
    public GaugePressure pressureOf(double joules, AbsolutePressure ambient) {
        ChamberTable table = new ChamberTable(List.of(this), ambient.pascals());
        return new AbsolutePressure(table.pressure(0, joules)).toGauge(ambient);
    }

    /** Stroke in metres at a gauge pressure in pascals. */
    double stroke(double gauge) {
        Corner last = corners.get(0);
        for (Corner next : corners) {
            if (gauge <= next.pressure().pascals()) {
                double whole = next.pressure().pascals() - last.pressure().pascals();
                double part = whole > 0 ? (gauge - last.pressure().pascals()) / whole : 0;
                double rise = next.stroke().metres() - last.stroke().metres();
                return last.stroke().metres() + part * rise;
            }
            last = next;
        }
        return last.stroke().metres();
    }

    /** Volume in cubic metres at a gauge pressure in pascals. */
    double volume(double gauge) {
        return rest.cubicMetres() + area() * stroke(gauge);
    }

    /** Area in square metres. */
    double area() {
        double inch = Unit.INCH.toBase(1);
        return areaSquareInches * inch * inch;
    }
}
