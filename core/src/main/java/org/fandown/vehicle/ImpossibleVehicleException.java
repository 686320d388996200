package org.fandown.vehicle;

/**
 * A vehicle that cannot exist, or that contradicts itself.
 *
 * <p>Thrown by the records of this package. {@link VehicleReader} turns it into the documented
 * exception of the file, with line and column.
 */
public final class ImpossibleVehicleException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String key;
    private final String problem;
    private final String allowed;
    private final String nextStep;

    /**
     * Makes the exception.
     *
     * @param key the key of the vehicle file that is wrong, for example {@code spring-brake}
     * @param problem what is wrong, with the value
     * @param allowed what would be accepted
     * @param nextStep what to do
     */
    public ImpossibleVehicleException(String key, String problem, String allowed, String nextStep) {
        super(key + ": " + problem + ". Allowed: " + allowed + ". Next: " + nextStep + ".");
        this.key = key;
        this.problem = problem;
        this.allowed = allowed;
        this.nextStep = nextStep;
    }

    /** Returns the key of the vehicle file that is wrong. */
    public String key() {
        return key;
    }

    /** Returns what is wrong. */
    public String problem() {
        return problem;
    }

    /** Returns what would be accepted. */
    public String allowed() {
        return allowed;
    }

    /** Returns what to do. */
    public String nextStep() {
        return nextStep;
    }
}
