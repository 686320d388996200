package org.fandown.procedure;

/** Values of {@link Aspect#LINES}. */
public final class Lines {
    /** Both lines are coupled. */
    public static final int COUPLED = 0;

    /** The service line is parted. */
    public static final int SERVICE_PARTED = 1;

    /** The supply line is parted. */
    public static final int SUPPLY_PARTED = 2;

    /** Both lines are parted. */
    public static final int BOTH_PARTED = 3;

    private Lines() {}

    static boolean supplyIsOpen(int lines) {
        return lines == SUPPLY_PARTED || lines == BOTH_PARTED;
    }
}
