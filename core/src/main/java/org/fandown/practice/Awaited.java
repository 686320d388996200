package org.fandown.practice;

import java.util.Optional;

/**
 * A sign that a script can wait for. Text form: lower case with hyphens.
 *
 * <p>Where a sign has a pressure it is that of the lower needle for {@link #NEEDLES_AT_LEAST} and
 * of the higher one for {@link #NEEDLES_AT_MOST}.
 */
public enum Awaited {
    /** The dryer purges: the governor has cut out. */
    PURGE("purge", false),
    /** The compressor pumps again: the governor has cut in. */
    PUMPING("pumping", false),
    /** The low-air lamp or buzzer is on. */
    WARNING_ON("warning-on", false),
    /** Neither low-air lamp nor buzzer is on. */
    WARNING_OFF("warning-off", false),
    /** The parking knob is out. */
    PARKING_KNOB_OUT("parking-knob-out", false),
    /** The trailer supply knob is out. */
    TRAILER_KNOB_OUT("trailer-knob-out", false),
    /** Both needles show at least a pressure. */
    NEEDLES_AT_LEAST("needles-at-least", true),
    /** Both needles show at most a pressure. */
    NEEDLES_AT_MOST("needles-at-most", true);

    private final String id;
    private final boolean hasPressure;

    Awaited(String id, boolean hasPressure) {
        this.id = id;
        this.hasPressure = hasPressure;
    }

    /** Returns the text form. */
    public String id() {
        return id;
    }

    /** Returns whether a pressure belongs to it. */
    public boolean hasPressure() {
        return hasPressure;
    }

    /** Returns the sign with a text form, empty if there is none. */
    public static Optional<Awaited> byId(String id) {
        for (Awaited sign : values()) {
            if (sign.id.equals(id)) {
                return Optional.of(sign);
            }
        }
        return Optional.empty();
    }
}
