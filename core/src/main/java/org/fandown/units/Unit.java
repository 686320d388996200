package org.fandown.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A unit of measurement that people in a yard write down.
 *
 * <p>Each unit is held as an exact ratio of two whole numbers to the base unit of its dimension,
 * and temperatures have an exact zero point, so a conversion rounds at most twice.
 *
 * <p><i>Source:</i> definitions of the international inch (25.4 mm), the avoirdupois pound
 * (0.45359237 kg) and standard gravity (9.80665 m/s2); psi and lbf follow from them: 1 psi = 8 896
 * 443 230 521 / 1 290 320 000 Pa = 6.894 757 293 kPa, 1 lbf = 4.448 221 615 260 5 N.
 */
public enum Unit {
    /** Pound-force per square inch, gauge. */
    PSI("psi", Dimension.GAUGE_PRESSURE, Ratios.PSI_NUM, Ratios.PSI_DEN, 1),
    /** Kilopascal, gauge. */
    KPA("kPa", Dimension.GAUGE_PRESSURE, 1000, 1, 1),
    /** Bar, gauge. */
    BAR("bar", Dimension.GAUGE_PRESSURE, 100_000, 1, 2),
    /** Pound-force per square inch above vacuum. */
    PSI_ABS("psi abs", Dimension.ABSOLUTE_PRESSURE, Ratios.PSI_NUM, Ratios.PSI_DEN, 1),
    /** Kilopascal above vacuum. */
    KPA_ABS("kPa abs", Dimension.ABSOLUTE_PRESSURE, 1000, 1, 1),
    /** Bar above vacuum. */
    BAR_ABS("bar abs", Dimension.ABSOLUTE_PRESSURE, 100_000, 1, 2),

    /** Inch; printed as a mixed fraction when it is a whole number of sixteenths. */
    INCH("in", Dimension.LENGTH, 254, 10_000, 3),
    /** Millimetre. */
    MM("mm", Dimension.LENGTH, 1, 1000, 1),
    /** Centimetre. */
    CM("cm", Dimension.LENGTH, 1, 100, 2),
    /** Metre. */
    METRE("m", Dimension.LENGTH, 1, 1, 3),
    /** Kilometre. */
    KILOMETRE("km", Dimension.LENGTH, 1000, 1, 2),
    /** Foot. */
    FOOT("ft", Dimension.LENGTH, 3048, 10_000, 2),

    /** Cubic inch. */
    CUBIC_INCH("in3", Dimension.VOLUME, 16_387_064, 1e12, 1),
    /** Litre. */
    LITRE("L", Dimension.VOLUME, 1, 1000, 2),
    /** Cubic centimetre. */
    CUBIC_CM("cm3", Dimension.VOLUME, 1, 1e6, 1),

    /** Pound-force. */
    LBF("lbf", Dimension.FORCE, 44_482_216_152_605.0, 1e13, 0),
    /** Newton. */
    NEWTON("N", Dimension.FORCE, 1, 1, 0),
    /** Kilonewton. */
    KILONEWTON("kN", Dimension.FORCE, 1000, 1, 2),

    /** Second. */
    SECOND("s", Dimension.TIME, 1, 1, 1),
    /** Minute; printed as minutes and seconds. */
    MINUTE("min", Dimension.TIME, 60, 1, 2),
    /** Hour. */
    HOUR("h", Dimension.TIME, 3600, 1, 2),
    /** Day of 24 hours. */
    DAY("d", Dimension.TIME, 86_400, 1, 2),

    /** Revolution per minute. */
    RPM("rpm", Dimension.ROTATION, 1, 60, 0),

    /** Degree Celsius. */
    CELSIUS("C", Dimension.TEMPERATURE, 1, 1, 27_315, 1),
    /** Degree Fahrenheit. */
    FAHRENHEIT("F", Dimension.TEMPERATURE, 5, 9, 45_967, 1),
    /** Kelvin. */
    KELVIN("K", Dimension.TEMPERATURE, 1, 1, 2),

    /** Mile per hour. */
    MPH("mph", Dimension.SPEED, 44_704, 100_000, 1),
    /** Kilometre per hour. */
    KMH("km/h", Dimension.SPEED, 10, 36, 1),
    /** Metre per second. */
    MPS("m/s", Dimension.SPEED, 1, 1, 2),

    /** Avoirdupois pound of mass; a force is written {@code lbf}. */
    POUND("lb", Dimension.MASS, 45_359_237, 1e8, 0),
    /** Kilogram. */
    KILOGRAM("kg", Dimension.MASS, 1, 1, 0),
    /** Metric tonne of 1000 kg. */
    TONNE("t", Dimension.MASS, 1000, 1, 2),

    /** Foot per second squared. */
    FT_PER_S2("ft/s2", Dimension.ACCELERATION, 3048, 10_000, 1),
    /** Metre per second squared. */
    M_PER_S2("m/s2", Dimension.ACCELERATION, 1, 1, 2),

    /** Degree of plane angle. */
    DEGREE("deg", Dimension.ANGLE, 1, 1, 1),
    /** Percent. */
    PERCENT("%", Dimension.RATIO, 1, 100, 1),
    /** One thing. */
    EACH("each", Dimension.COUNT, 1, 1, 0);

    private final String symbol;
    private final Dimension dimension;
    private final double numerator;
    private final double denominator;
    private final double zeroHundredths;
    private final int decimals;

    Unit(String symbol, Dimension dimension, double numerator, double denominator, int decimals) {
        this(symbol, dimension, numerator, denominator, 0, decimals);
    }

    Unit(
            String symbol,
            Dimension dimension,
            double numerator,
            double denominator,
            double zeroHundredths,
            int decimals) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.numerator = numerator;
        this.denominator = denominator;
        this.zeroHundredths = zeroHundredths;
        this.decimals = decimals;
    }

    /** Returns the symbol as printed, such as {@code psi} or {@code km/h}. */
    public String symbol() {
        return symbol;
    }

    /** Returns what this unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Returns the greatest number of decimals that are printed in this unit. */
    public int decimals() {
        return decimals;
    }

    /**
     * Converts a bare number in this unit to the base unit of the dimension (see {@link
     * Dimension}).
     *
     * @param value a number in this unit
     * @return the same amount in the base unit
     */
    public double toBase(double value) {
        if (zeroHundredths == 0) {
            return value * numerator / denominator;
        }
        return (100 * value + zeroHundredths) * numerator / (100 * denominator);
    }

    /**
     * Converts a bare number in the base unit of the dimension to this unit.
     *
     * @param base a number in the base unit
     * @return the same amount in this unit
     */
    public double fromBase(double base) {
        if (zeroHundredths == 0) {
            return base * denominator / numerator;
        }
        return (100 * base * denominator - zeroHundredths * numerator) / (100 * numerator);
    }

    /**
     * Converts a bare number in this unit to another unit of the same dimension.
     *
     * @param value a number in this unit
     * @param target the unit wanted
     * @return the same amount in the unit wanted
     * @throws IllegalArgumentException if the two units differ in dimension
     */
    public double convert(double value, Unit target) {
        Objects.requireNonNull(target, "target");
        if (target.dimension != dimension) {
            throw new IllegalArgumentException(
                    "Cannot convert "
                            + symbol
                            + " to "
                            + target.symbol
                            + ": "
                            + dimension.phrase()
                            + " is not "
                            + target.dimension.phrase()
                            + ".");
        }
        if (target == this) {
            return value;
        }
        double up = numerator * target.denominator;
        double down = denominator * target.numerator;
        if (zeroHundredths == 0 && target.zeroHundredths == 0) {
            return value * up / down;
        }
        double shift = zeroHundredths * up - target.zeroHundredths * down;
        return (100 * value * up + shift) / (100 * down);
    }

    /**
     * Returns the units of one dimension in the order in which they are declared.
     *
     * @param dimension the dimension
     * @return its units, never empty
     */
    public static List<Unit> of(Dimension dimension) {
        List<Unit> units = new ArrayList<>();
        for (Unit unit : values()) {
            if (unit.dimension == dimension) {
                units.add(unit);
            }
        }
        return List.copyOf(units);
    }

    /** Returns the symbol. */
    @Override
    public String toString() {
        return symbol;
    }

    /** Whole numbers too long for one line, named once. */
    private static final class Ratios {
        /** Numerator of 1 psi in pascals. */
        static final double PSI_NUM = 8_896_443_230_521.0;

        /** Denominator of 1 psi in pascals. */
        static final double PSI_DEN = 1_290_320_000.0;

        private Ratios() {}
    }
}
