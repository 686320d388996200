package org.fandown.air;

import org.fandown.vehicle.WheelId;

/**
 * Where a fault is, to be filled into the names of volumes and ways.
 *
 * @param place a wheel such as {@code 2L}, a towed unit such as {@code unit3}, or empty text
 */
record FaultSite(String place) {
    private static final String UNIT = "unit";

    /** The unit counted from the front, the powered one being 1; the first towed one if none. */
    private int unit() {
        return place.startsWith(UNIT) ? Integer.parseInt(place.substring(UNIT.length())) : 2;
    }

    /** Returns whether a text names a towed unit. */
    static boolean isUnit(String text) {
        return text.length() == UNIT.length() + 1
                && text.startsWith(UNIT)
                && text.charAt(UNIT.length()) >= '2'
                && text.charAt(UNIT.length()) <= '9';
    }

    WheelId wheel() {
        return WheelId.parse(place);
    }

    /** Fills in {wheel}, {unit}, and {front}, the unit in front of it. */
    String name(String pattern) {
        return pattern.replace("{wheel}", place)
                .replace("{unit}", Integer.toString(unit()))
                .replace("{front}", Integer.toString(unit() - 1));
    }
}
