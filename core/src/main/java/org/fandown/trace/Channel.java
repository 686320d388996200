package org.fandown.trace;

import java.util.Optional;
import org.fandown.units.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Something a trace can tell over time. Pressures are gauge pressures in psi; switches are 1 or 0.
 */
public enum Channel {
    /** Pressure of the primary circuit. */
    PRIMARY("primary", Unit.PSI),
    /** Pressure of the secondary circuit. */
    SECONDARY("secondary", Unit.PSI),
    /** Pressure of the supply reservoir. */
    SUPPLY("supply", Unit.PSI),
    /** Pressure of the parking circuit. */
    PARKING("parking", Unit.PSI),
    /** Pressure the service brakes are applied with. */
    APPLICATION("application", Unit.PSI),
    /** Speed of the engine. */
    ENGINE_SPEED("engine", Unit.RPM),
    /** Speed over the road. */
    SPEED("speed", Unit.KMH),
    /** Travel of the brake pedal. */
    PEDAL("pedal", Unit.PERCENT),
    /** Whether the brake pedal is down. */
    BRAKE_SWITCH("brake switch", null),
    /** Whether the parking brake is set. */
    PARKING_SWITCH("parking switch", null),
    /** Whether the low-air warning is on. */
    WARNING("low-air warning", null),
    /** Whether the trailer supply valve is shut. */
    TRAILER_SHUT("trailer valve shut", null);

    private final String title;
    private final Optional<Unit> unit;
    private final int index;

    Channel(String title, @Nullable Unit unit) {
        this.title = title;
        this.unit = Optional.ofNullable(unit);
        this.index = Numbering.next();
    }

    /** Its place in a row of all channels. */
    int index() {
        return index;
    }

    /** Counts the channels as they are made. */
    private static final class Numbering {
        private static int made;

        private static int next() {
            return made++;
        }
    }

    /** Returns what it is called. */
    public String title() {
        return title;
    }

    /** Returns the unit of its values, empty for a switch. */
    public Optional<Unit> unit() {
        return unit;
    }
}
