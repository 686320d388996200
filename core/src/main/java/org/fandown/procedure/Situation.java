package org.fandown.procedure;

/**
 * How the vehicle stands between two steps, as far as the order of work depends on it. Immutable
 * and small: one number holds it all.
 *
 * @param code all of it; two situations are alike if it is
 */
public record Situation(int code) {
    private static final int PRESSURE_SHIFT = 11;
    private static final int PRESSURE_MASK = 0xFF;
    private static final int SPOT_SHIFT = 19;
    private static final int SPOT_MASK = 7;
    private static final int CODE_MASK = (1 << (SPOT_SHIFT + 3)) - 1;

    /**
     * A vehicle as it is found: parked, key off, nobody in it, not chocked, trailer supply closed
     * and the trailer empty, everything at rest.
     *
     * @param psi pressure in the reservoirs, 0 to 200 psi
     */
    public static Situation found(int psi) {
        return new Situation(0)
                .with(Aspect.COMPRESSOR, 1)
                .with(Aspect.REST, 1)
                .with(Aspect.SUPPLY_RESERVOIR, 1)
                .with(Aspect.PRESSURE, psi)
                .at(Spot.GROUND);
    }

    /** The value of an aspect. */
    public int value(Aspect aspect) {
        return switch (aspect) {
            case LINES -> (code >> 4) & 3;
            case PRESSURE -> (code >> PRESSURE_SHIFT) & PRESSURE_MASK;
            case SECURED -> has(Aspect.CHOCKS) || !has(Aspect.PARKING) ? 1 : 0;
            default -> (code >> shift(aspect)) & 1;
        };
    }

    /** Whether a state of two is the one that is 1. */
    public boolean has(Aspect aspect) {
        return value(aspect) == 1;
    }

    /** Pressure in primary and secondary reservoirs, psi. */
    public int psi() {
        return value(Aspect.PRESSURE);
    }

    /** Where the person stands. */
    public Spot spot() {
        return Spot.of((code >> SPOT_SHIFT) & SPOT_MASK);
    }

    /** The same with another value of one aspect. */
    public Situation with(Aspect aspect, int value) {
        int mask = mask(aspect);
        return new Situation((code & ~mask) | ((value << shift(aspect)) & mask));
    }

    /** The same with the person elsewhere. */
    public Situation at(Spot spot) {
        int mask = SPOT_MASK << SPOT_SHIFT;
        return new Situation((code & ~mask & CODE_MASK) | (spot.code() << SPOT_SHIFT));
    }

    private static int mask(Aspect aspect) {
        return switch (aspect) {
            case LINES -> 3 << shift(aspect);
            case PRESSURE -> PRESSURE_MASK << PRESSURE_SHIFT;
            default -> 1 << shift(aspect);
        };
    }

    private static int shift(Aspect aspect) {
        return switch (aspect) {
            case KEY -> 0;
            case ENGINE -> 1;
            case PARKING -> 2;
            case TRAILER_SUPPLY -> 3;
            case LINES -> 4;
            case CHOCKS -> 6;
            case TRAILER_AIR -> 7;
            case COMPRESSOR -> 8;
            case REST -> 9;
            case SUPPLY_RESERVOIR -> 10;
            case PRESSURE -> PRESSURE_SHIFT;
            case SECURED ->
                    throw new IllegalArgumentException(
                            "Whether the vehicle is secured follows from chocks and brakes.");
        };
    }
}
