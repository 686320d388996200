package org.fandown.vehicle;

/** The kind of one unit of a combination. */
public enum UnitKind {
    /** A powered unit that carries its own load. */
    TRUCK(true),
    /** A powered unit made to pull a semi-trailer. */
    TRACTOR(true),
    /** A powered unit made to carry passengers. */
    BUS(true),
    /** A towed unit that carries a load. */
    TRAILER(false),
    /** A towed axle set that makes a full trailer of a semi-trailer. */
    DOLLY(false);

    private final boolean powered;

    UnitKind(boolean powered) {
        this.powered = powered;
    }

    /** Returns whether the unit has an engine and a driver, and so must stand first. */
    public boolean isPowered() {
        return powered;
    }
}
