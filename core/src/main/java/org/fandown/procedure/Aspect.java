package org.fandown.procedure;

import java.util.List;

/**
 * One side of a {@link Situation} that a step may need. Each has a whole number; where two states
 * are possible they are 0 and 1.
 */
public enum Aspect {
    /** The key: 1 on. */
    KEY("the key", "off", "on"),
    /** The engine: 1 running. */
    ENGINE("the engine", "off", "running"),
    /** The parking brakes: 1 released. */
    PARKING("the parking brakes", "set", "released"),
    /** The trailer supply valve: 1 open, its knob pushed in. */
    TRAILER_SUPPLY("the trailer supply valve", "closed", "open"),
    /** The lines to the towed unit, see {@link Lines}. */
    LINES("the trailer lines", "coupled", "service parted", "supply parted", "both parted"),
    /** The chocks: 1 in place. */
    CHOCKS("the wheels", "not chocked", "chocked"),
    /** The reservoirs of towed units: 1 charged. */
    TRAILER_AIR("the trailer", "empty", "charged"),
    /** The compressor while the engine turns it: 1 pumps, 0 rests until cut-in. */
    COMPRESSOR("the compressor", "resting", "pumping"),
    /** The air in the reservoirs: 1 has settled, 0 is still warm or cold from a quick change. */
    REST("the air", "unsettled", "settled"),
    /** The supply reservoir: 1 holds air, 0 is drained. */
    SUPPLY_RESERVOIR("the supply reservoir", "drained", "filled"),
    /** Whether the vehicle cannot roll: 1 if wheels are chocked or parking brakes set. */
    SECURED("the vehicle", "free to roll", "secured"),
    /** Pressure in primary and secondary reservoirs, psi. */
    PRESSURE("the pressure");

    private final String title;

    @SuppressWarnings("ImmutableEnumChecker") // always List.of
    private final List<String> states;

    Aspect(String title, String... states) {
        this.title = title;
        this.states = List.of(states);
    }

    /** What a person calls it, with an article. */
    public String title() {
        return title;
    }

    /** A value in words. */
    public String say(int value) {
        return this == PRESSURE ? value + " psi" : states.get(value);
    }
}
