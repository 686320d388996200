package org.fandown.units;

/**
 * What kind of thing a quantity measures. Two quantities can be compared or converted only within
 * one dimension.
 *
 * <p>Gauge and absolute pressure are two dimensions on purpose: {@code 0 psi} on a gauge is not
 * {@code 0 psi} of pressure, and only {@link GaugePressure#toAbsolute} may cross between them.
 */
public enum Dimension {
    /** Pressure above the surrounding air; base unit pascal. */
    GAUGE_PRESSURE("a pressure", "92 psi"),
    /** Pressure above vacuum; base unit pascal. */
    ABSOLUTE_PRESSURE("an absolute pressure", "14.7 psi abs"),
    /** Length; base unit metre. */
    LENGTH("a length", "1 3/8 in"),
    /** Volume; base unit cubic metre. */
    VOLUME("a volume", "30 L"),
    /** Force; base unit newton. */
    FORCE("a force", "1750 lbf"),
    /** A span of time; base unit second. */
    TIME("a time", "74 s"),
    /** Speed of rotation; base unit revolution per second. */
    ROTATION("a speed of rotation", "1100 rpm"),
    /** Temperature; base unit kelvin. */
    TEMPERATURE("a temperature", "20 C"),
    /** Speed; base unit metre per second. */
    SPEED("a speed", "20 mph"),
    /** Mass; base unit kilogram. */
    MASS("a mass", "80000 lb"),
    /** Acceleration; base unit metre per second squared. */
    ACCELERATION("an acceleration", "14 ft/s2"),
    /** Plane angle; base unit degree. */
    ANGLE("an angle", "90 deg"),
    /** A share of a whole; base unit one, so that 20 % is 0.2. */
    RATIO("a share", "20 %"),
    /** A number of things; base unit one. */
    COUNT("a count", "2 each");

    private final String phrase;
    private final String example;

    Dimension(String phrase, String example) {
        this.phrase = phrase;
        this.example = example;
    }

    /** Returns the dimension in words with its article, such as {@code a pressure}. */
    public String phrase() {
        return phrase;
    }

    /** Returns one well-formed quantity of this dimension, for advice to people. */
    public String example() {
        return example;
    }
}
