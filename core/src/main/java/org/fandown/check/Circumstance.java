package org.fandown.check;

import java.util.List;
import java.util.Optional;
import org.fandown.units.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * Something that holds while a reading is taken: the state of a control, or a quantity such as
 * engine speed. Rules demand circumstances; readings note them. Text form: lower case with hyphens.
 */
public enum Circumstance {
    ENGINE("engine", List.of("off", "running", "idle", "fast-idle")),
    ENGINE_SPEED("engine speed", Dimension.ROTATION),
    KEY("key", List.of("on", "off")),
    SERVICE_BRAKE("service brake", List.of("applied", "released")),
    PARKING_BRAKE("parking brake", List.of("set", "released")),
    TRAILER_SUPPLY("trailer supply valve", List.of("open", "closed")),
    TRAILER_LINES(
            "trailer lines",
            List.of("connected", "disconnected", "service-disconnected", "supply-disconnected")),
    START_PRESSURE("pressure at the start", Dimension.GAUGE_PRESSURE),
    RESERVOIR_PRESSURE("reservoir pressure", Dimension.GAUGE_PRESSURE),
    HELD_FOR("time held", Dimension.TIME),
    AFTER_INITIAL_DROP("counted after the first drop", List.of("yes", "no")),
    WHEELS("wheels", List.of("chocked", "free")),
    GROUND("ground", List.of("level", "sloping")),
    TANKS("reservoirs", List.of("drained", "not-drained")),
    TRAILER("trailer air", List.of("charged", "empty")),
    GEAR("gear", List.of("neutral", "low", "highest-starting", "drive")),
    FULLY_APPLIED("brake fully applied", List.of("yes", "no")),
    APPLICATIONS("number of applications", Dimension.COUNT),
    SPEED("road speed", Dimension.SPEED);

    private final String title;
    private final String id;

    @SuppressWarnings("ImmutableEnumChecker") // always List.of
    private final List<String> states;

    private final @Nullable Dimension dimension;

    Circumstance(String title, List<String> states) {
        this.title = title;
        this.id = Names.kebab(this);
        this.states = states;
        this.dimension = null;
    }

    Circumstance(String title, Dimension dimension) {
        this.title = title;
        this.id = Names.kebab(this);
        this.states = List.of();
        this.dimension = dimension;
    }

    /** What a person calls it, without a capital. */
    public String title() {
        return title;
    }

    /** The states that can be noted, empty for a quantity. */
    public List<String> states() {
        return states;
    }

    /** The dimension of the quantity, empty for a state. */
    public Optional<Dimension> dimension() {
        return Optional.ofNullable(dimension);
    }

    /** The text form, lower case with hyphens. */
    public String id() {
        return id;
    }

    /** Whether a noted state satisfies a demanded one: an idling engine is a running engine. */
    public boolean satisfies(String noted, String demanded) {
        return noted.equals(demanded)
                || (this == ENGINE
                        && demanded.equals("running")
                        && (noted.equals("idle") || noted.equals("fast-idle")));
    }
}
