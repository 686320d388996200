package org.fandown.procedure;

import java.util.List;

/**
 * Work between checks.
 *
 * @param work what is done
 * @param amount how far (psi) or how long (s); 0 where the work has no measure
 * @param needs what has to hold before
 */
public record WorkStep(Work work, int amount, List<Need> needs) implements Step {
    /** Copies the list. */
    public WorkStep {
        needs = List.copyOf(needs);
    }

    @Override
    public String text() {
        return switch (work.amount()) {
            case NONE -> work.id();
            case PRESSURE -> work.id() + ": " + amount + " psi";
            case TIME -> work.id() + ": " + amount + " s";
        };
    }

    @Override
    public String action() {
        return switch (work.amount()) {
            case NONE -> work.title();
            case PRESSURE -> work.title() + " to " + amount + " psi";
            case TIME -> work.title() + " for " + amount + " s";
        };
    }

    @Override
    public String caution() {
        return work.caution();
    }
}
