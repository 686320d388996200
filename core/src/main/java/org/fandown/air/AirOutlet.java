package org.fandown.air;

/**
 * A way by which air leaves to the outside: a hole, an exhaust, an open drain, a parted line.
 *
 * <p>{@link AirSystem#outlets} lists those of a vehicle; where it hisses and how loud follows from
 * {@link #kilogramsPerSecond}. A hole of 1 mm at 100 psi passes about 0.9 g/s.
 */
public final class AirOutlet {
    private final Spec spec;
    private final AirState state;

    AirOutlet(Spec spec, AirState state) {
        this.spec = spec;
        this.state = state;
    }

    /** What sort of way it is. */
    public enum Kind {
        /** A hole that should not be there. */
        LEAK,
        /** What even sound fittings lose; too little to be heard. */
        SEEP,
        /** The exhaust of a valve. */
        EXHAUST,
        /** The purge valve of the dryer. */
        PURGE,
        /** The drain valve of a reservoir. */
        DRAIN,
        /** An open end of a line that is not coupled. */
        COUPLING,
        /** The safety valve. */
        SAFETY_VALVE
    }

    /** A way out as laid out: of a lapping valve the air takes the exhaust, not the inlet. */
    record Spec(Kind kind, String name, AirNode from, AirLink link, boolean lapping) {}

    /**
     * Returns its name, which is always the same: {@code leak-primary}, {@code relay-rear-exhaust}.
     */
    public String name() {
        return spec.name();
    }

    /** Returns the name of the volume the air comes from. */
    public String volume() {
        return spec.from().name();
    }

    /** Returns what sort of way it is. */
    public Kind kind() {
        return spec.kind();
    }

    /** Returns the air that leaves now (mean of the last step), kg/s, 0 or more. */
    public double kilogramsPerSecond() {
        AirLink link = spec.link();
        return Math.max(0, spec.lapping() ? state.exhaust(link) : state.flow(link));
    }
}
