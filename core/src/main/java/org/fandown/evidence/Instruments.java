package org.fandown.evidence;

import java.util.EnumMap;
import java.util.Map;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * How finely each instrument was read. A reading is taken to lie within half a step either side,
 * equally likely anywhere in it.
 *
 * <p>Source: JCGM 100:2008 (GUM) 4.3.7 for the rectangular distribution, variance = step^2 / 12.
 *
 * @param steps smallest step read, by dimension; a dimension without an entry is taken as exact
 */
public record Instruments(Map<Dimension, Quantity> steps) {
    /** Every figure is taken as exact. */
    public static final Instruments EXACT = new Instruments(Map.of());

    /**
     * What is assumed where the file says nothing: gauge read to 1 psi, clock to 1 s, rule to 1/16
     * in, tachometer to 50 rpm, angle to 5 degrees, shares to 1 %.
     */
    public static final Instruments USUAL = usual();

    private static final double ROOT_12 = Math.sqrt(12);

    /** Copies the map. */
    public Instruments {
        Map<Dimension, Quantity> copy = new EnumMap<>(Dimension.class);
        copy.putAll(steps);
        steps = java.util.Collections.unmodifiableMap(copy);
    }

    private static Instruments usual() {
        Map<Dimension, Quantity> steps = new EnumMap<>(Dimension.class);
        steps.put(Dimension.GAUGE_PRESSURE, Quantity.of(1, Unit.PSI));
        steps.put(Dimension.TIME, Quantity.of(1, Unit.SECOND));
        steps.put(Dimension.LENGTH, Quantity.parse("1/16 in"));
        steps.put(Dimension.ROTATION, Quantity.of(50, Unit.RPM));
        steps.put(Dimension.ANGLE, Quantity.of(5, Unit.DEGREE));
        steps.put(Dimension.RATIO, Quantity.of(1, Unit.PERCENT));
        return new Instruments(steps);
    }

    /** The step in the given unit; zero if exact. */
    public double step(Unit unit) {
        Quantity step = steps.get(unit.dimension());
        return step == null ? 0 : step.valueIn(unit);
    }

    /** The standard uncertainty of one reading, in the given unit. */
    public double standardUncertainty(Unit unit) {
        return step(unit) / ROOT_12;
    }
}
