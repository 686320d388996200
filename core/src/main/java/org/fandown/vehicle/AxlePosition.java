package org.fandown.vehicle;

/** The part an axle plays in its unit. */
public enum AxlePosition {
    /** A steering axle of a powered unit. */
    STEER,
    /** A driven axle. */
    DRIVE,
    /** An axle of a powered unit that neither steers nor drives. */
    TAG,
    /** An axle of a trailer or dolly. */
    TRAILER,
    /** Any axle the other words do not describe. */
    OTHER;

    boolean fits(UnitKind kind) {
        return switch (this) {
            case STEER, DRIVE, TAG -> kind.isPowered();
            case TRAILER -> !kind.isPowered();
            case OTHER -> true;
        };
    }
}
