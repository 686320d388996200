package org.fandown.procedure;

import java.util.List;

/**
 * What a plan is asked for.
 *
 * @param startPsi pressure in the reservoirs at the start, psi
 * @param goal what counts
 * @param followed steps of a school's order that have to come in this order, empty for a free one
 * @param asPrinted whether the order that the place prints is kept too
 */
public record PlanRequest(int startPsi, Goal goal, List<Step> followed, boolean asPrinted) {
    /** What counts. */
    public enum Goal {
        /** The least time on the clock. */
        QUICKEST,
        /** The fewest starts of the engine, and then the least time. */
        FEWEST_STARTS
    }

    /** From empty reservoirs, the quickest. */
    public static final PlanRequest QUICKEST = new PlanRequest(0, Goal.QUICKEST, List.of());

    /** One that keeps no printed order. */
    public PlanRequest(int startPsi, Goal goal, List<Step> followed) {
        this(startPsi, goal, followed, false);
    }

    /** Copies the list; refuses a pressure no vehicle is found with. */
    public PlanRequest {
        followed = List.copyOf(followed);
        if (startPsi < 0 || startPsi > 150) {
            throw new IllegalArgumentException("The pressure at the start must be 0 to 150 psi.");
        }
    }
}
