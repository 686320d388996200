package org.fandown.vehicle;

/** Where the air goes first after the compressor of a powered unit. */
public enum SupplyKind {
    /** A supply (wet) reservoir stands before the primary and secondary reservoirs. */
    SUPPLY_RESERVOIR,
    /** A dryer with built-in protection valves feeds the circuits; there is no supply reservoir. */
    INTEGRATED_DRYER_UNIT
}
