package org.fandown.air;

/**
 * How large a fault can be.
 *
 * @param least smallest size that makes sense
 * @param usual size where none is given
 * @param most largest size
 * @param unit unit, empty text for a part or where the fault has no size
 */
public record FaultSize(double least, double usual, double most, String unit) {
    /** A fault that is there or not. */
    public static final FaultSize NONE = new FaultSize(1, 1, 1, "");

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the sizes are out of order
     */
    public FaultSize {
        if (!(least <= usual && usual <= most)) {
            throw new IllegalArgumentException("The sizes of a fault must not fall.");
        }
    }

    static FaultSize of(double least, double usual, double most, String unit) {
        return new FaultSize(least, usual, most, unit);
    }

    /** A round hole by its diameter. */
    static FaultSize hole(double least, double usual, double most) {
        return of(least, usual, most, "mm");
    }
}
