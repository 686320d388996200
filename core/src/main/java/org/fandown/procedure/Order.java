package org.fandown.procedure;

import java.util.List;

/**
 * An order of work that somebody wrote.
 *
 * @param title what it is, in words; empty text if not said
 * @param startPsi pressure in the reservoirs at the start, psi
 * @param steps its steps
 */
public record Order(String title, int startPsi, List<Step> steps) {
    /** Copies the list. */
    public Order {
        steps = List.copyOf(steps);
    }

    /** The same with other steps. */
    Order with(List<Step> others) {
        return new Order(title, startPsi, others);
    }
}
