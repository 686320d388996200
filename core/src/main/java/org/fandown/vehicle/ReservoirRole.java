package org.fandown.vehicle;

/** What a reservoir is for. */
public enum ReservoirRole {
    /** First behind the compressor; also called the wet reservoir. */
    SUPPLY,
    /** Feeds the primary (as a rule rear) service circuit. */
    PRIMARY,
    /** Feeds the secondary (as a rule front) service circuit. */
    SECONDARY,
    /** Feeds the service brakes of a towed unit. */
    TRAILER,
    /** Feeds the parking brakes. */
    PARKING,
    /** Feeds the dryer's purge. */
    PURGE;

    boolean fits(UnitKind kind) {
        return switch (this) {
            case SUPPLY, PRIMARY, SECONDARY, PURGE -> kind.isPowered();
            case TRAILER -> !kind.isPowered();
            case PARKING -> true;
        };
    }
}
