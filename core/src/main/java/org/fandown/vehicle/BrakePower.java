package org.fandown.vehicle;

/** What works the service brakes of one unit. */
public enum BrakePower {
    /** Compressed air, up to a chamber at each braked wheel. */
    AIR,
    /** Compressed air at the pedal, hydraulic pressure at the wheels: there are no push rods. */
    AIR_OVER_HYDRAULIC,
    /** No air brakes: a towed unit with other brakes or with none. */
    NONE
}
