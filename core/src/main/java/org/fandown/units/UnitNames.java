package org.fandown.units;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The spellings under which people write units. */
final class UnitNames {
    /** Spellings whose letter case matters, because another case means another thing. */
    private static final Map<String, Unit> STRICT = new LinkedHashMap<>();

    /** All other spellings, in lower case. */
    private static final Map<String, Unit> LOOSE = new LinkedHashMap<>();

    static {
        strict(Unit.METRE, "m");
        strict(Unit.TONNE, "t");
        strict(Unit.KELVIN, "K");
        strict(Unit.KILONEWTON, "kN", "KN");
        loose(Unit.PSI, "psi", "psig", "psi gauge", "psi g", "lb/in2", "lbf/in2");
        loose(Unit.KPA, "kpa", "kpag", "kpa gauge", "kpa g");
        loose(Unit.BAR, "bar", "bars", "barg", "bar gauge", "bar g");
        loose(Unit.PSI_ABS, "psia", "psi abs", "psi absolute", "psi(abs)", "psi a");
        loose(Unit.KPA_ABS, "kpaa", "kpa abs", "kpa absolute", "kpa(abs)", "kpa a");
        loose(Unit.BAR_ABS, "bara", "bar abs", "bar absolute", "bar(abs)", "bar a");
        loose(Unit.INCH, "in", "inch", "inches", "\"");
        loose(Unit.MM, "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        loose(Unit.CM, "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        loose(Unit.METRE, "metre", "metres", "meter", "meters");
        loose(Unit.KILOMETRE, "km", "kilometre", "kilometres", "kilometer", "kilometers");
        loose(Unit.FOOT, "ft", "foot", "feet");
        loose(Unit.CUBIC_INCH, "in3", "cu in", "cubic in", "cubic inch", "cubic inches");
        loose(Unit.LITRE, "l", "litre", "litres", "liter", "liters");
        loose(Unit.CUBIC_CM, "cm3", "cc", "cu cm", "cubic cm", "cubic centimetres");
        loose(Unit.LBF, "lbf", "pound-force", "pounds-force", "pounds force");
        loose(Unit.NEWTON, "n", "newton", "newtons");
        loose(Unit.KILONEWTON, "kilonewton", "kilonewtons");
        loose(Unit.SECOND, "s", "sec", "secs", "second", "seconds");
        loose(Unit.MINUTE, "min", "mins", "minute", "minutes");
        loose(Unit.HOUR, "h", "hr", "hrs", "hour", "hours");
        loose(Unit.DAY, "d", "day", "days");
        loose(Unit.RPM, "rpm", "r/min", "rev/min");
        loose(Unit.CELSIUS, "c", "\u00b0c", "deg c", "celsius", "degrees c");
        loose(Unit.FAHRENHEIT, "f", "\u00b0f", "deg f", "fahrenheit", "degrees f");
        loose(Unit.KELVIN, "kelvin");
        loose(Unit.MPH, "mph", "mi/h");
        loose(Unit.KMH, "km/h", "kmh", "kph");
        loose(Unit.MPS, "m/s");
        loose(Unit.POUND, "lb", "lbs", "pound", "pounds");
        loose(Unit.KILOGRAM, "kg", "kilogram", "kilograms");
        loose(Unit.TONNE, "tonne", "tonnes");
        loose(Unit.FT_PER_S2, "ft/s2", "ft/s/s");
        loose(Unit.M_PER_S2, "m/s2", "m/s/s");
        loose(Unit.DEGREE, "deg", "degree", "degrees", "\u00b0");
        loose(Unit.PERCENT, "%", "percent", "per cent");
        loose(Unit.EACH, "each");
    }

    private UnitNames() {}

    /**
     * Finds the unit of a spelling; dots, doubled spaces and the sign for a power are ignored, and
     * so is letter case where it cannot mislead.
     */
    static Optional<Unit> find(String spelling) {
        String name = tidy(spelling);
        Unit strict = STRICT.get(name);
        if (strict != null) {
            return Optional.of(strict);
        }
        return Optional.ofNullable(LOOSE.get(lower(name)));
    }

    private static String tidy(String spelling) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            boolean doubled = c == ' ' && (name.isEmpty() || name.charAt(name.length() - 1) == ' ');
            if (c == '\u00b2') {
                name.append('2');
            } else if (c == '\u00b3') {
                name.append('3');
            } else if (c != '.' && c != '^' && !doubled) {
                name.append(c);
            }
        }
        return name.toString().strip();
    }

    /** Lowers ASCII letters only, so that no language setting can matter. */
    private static String lower(String name) {
        StringBuilder low = new StringBuilder(name);
        for (int i = 0; i < low.length(); i++) {
            char c = low.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                low.setCharAt(i, (char) (c + ('a' - 'A')));
            }
        }
        return low.toString();
    }

    private static void strict(Unit unit, String... names) {
        for (String name : names) {
            STRICT.put(name, unit);
        }
    }

    private static void loose(Unit unit, String... names) {
        for (String name : names) {
            LOOSE.put(name, unit);
        }
    }
}
