package org.fandown.evidence;

import org.fandown.check.Check;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.units.Dimension;
import org.fandown.units.Quantities;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * The range in which a person can have read a figure. What lies beyond it is a slip of the unit or
 * of the pen, never a finding, so it is refused instead of judged. The ranges are assumptions of
 * this program, wide enough for every defect: a gauge that stands too high, a push rod that travels
 * to the end of its chamber, a needle watched overnight.
 *
 * @param least the least figure, in the unit
 * @param most the greatest figure, in the unit
 * @param unit the unit of both
 */
record Plausible(double least, double most, Unit unit) {
    /** Dash and workshop gauges; the proof pressure of a reservoir alone goes beyond. */
    static final Plausible GAUGE = new Plausible(0, 250, Unit.PSI);

    /** A needle is watched overnight at the longest. */
    static final Plausible WATCHED = new Plausible(0, 24, Unit.HOUR);

    /** Pressure builds up, and brakes apply and release, within an hour. */
    static final Plausible TIMED = new Plausible(0, 60, Unit.MINUTE);

    /** No brake chamber has a longer stroke. */
    static final Plausible STROKE = new Plausible(0, 6, Unit.INCH);

    /** From the face of the chamber to the pin. */
    static final Plausible ROD = new Plausible(0, 20, Unit.INCH);

    /** Linings and their movement. */
    static final Plausible LINING = new Plausible(0, 2, Unit.INCH);

    static final Plausible CAM = new Plausible(0, 180, Unit.DEGREE);
    static final Plausible ENGINE = new Plausible(0, 6000, Unit.RPM);
    static final Plausible ROAD = new Plausible(0, 250, Unit.KMH);

    private static final Plausible PROOF = new Plausible(0, 1500, Unit.PSI);
    private static final Plausible STOP = new Plausible(0, 1000, Unit.METRE);
    private static final Plausible BRAKING = new Plausible(0, 15, Unit.M_PER_S2);
    private static final Plausible SHARE = new Plausible(-100, 1000, Unit.PERCENT);
    private static final Plausible COUNT = new Plausible(0, 100, Unit.EACH);

    /** Relative slack for rounding in the conversion of units. */
    private static final double ROUNDING = 1e-9;

    /** The range of the single figure of a check. */
    static Plausible of(Check check) {
        if (check == Check.RESERVOIR_PROOF_PRESSURE) {
            return PROOF;
        }
        Dimension dimension = check.dimension().orElseThrow();
        return switch (dimension) {
            case GAUGE_PRESSURE -> GAUGE;
            case TIME -> TIMED;
            case LENGTH -> STOP;
            case ACCELERATION -> BRAKING;
            case RATIO -> SHARE;
            case COUNT -> COUNT;
            default -> throw new IllegalArgumentException("No range for " + dimension + ".");
        };
    }

    Dimension dimension() {
        return unit.dimension();
    }

    /** Reads a quantity in this range. */
    Quantity read(Fields fields, String key) {
        Quantity quantity = fields.quantity(key, dimension());
        require(fields.node(key), quantity);
        return quantity;
    }

    /** Reads a quantity in this range. */
    Quantity read(Node node) {
        Quantity quantity = Values.quantity(node, dimension());
        require(node, quantity);
        return quantity;
    }

    private void require(Node node, Quantity quantity) {
        double value = quantity.valueIn(unit);
        double slack = ROUNDING * Math.max(Math.abs(least), Math.abs(most));
        if (!(value >= least - slack && value <= most + slack)) {
            throw refusal(node, quantity);
        }
    }

    private DocumentException refusal(Node node, Quantity quantity) {
        boolean low = quantity.valueIn(unit) < least;
        return Values.refuse(
                node,
                low ? "this is less than can be read here" : "this is more than can be read here",
                print(least, quantity.unit()) + " to " + print(most, quantity.unit()),
                "check the figure and its unit");
    }

    private String print(double bound, Unit target) {
        return Quantities.print(unit.convert(bound, target), target);
    }
}
