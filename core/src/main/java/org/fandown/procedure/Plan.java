package org.fandown.procedure;

import java.util.List;

/**
 * An order of work.
 *
 * @param set the checks and the rules behind them
 * @param request what was asked for
 * @param problem the problem it solves
 * @param steps its steps
 */
public record Plan(StepSet set, PlanRequest request, Problem problem, List<PlannedStep> steps) {
    /** Copies the list. */
    public Plan {
        steps = List.copyOf(steps);
    }

    /** Time on the clock with the walk back to the cab, tenths of a second. */
    public int tenths() {
        if (steps.isEmpty()) {
            return 0;
        }
        PlannedStep last = steps.get(steps.size() - 1);
        return last.end() + problem.course().durations().walk(last.after().spot(), Spot.CAB);
    }

    /** How often the engine is started. */
    public int engineStarts() {
        int starts = 0;
        for (PlannedStep planned : steps) {
            boolean start =
                    planned.step() instanceof WorkStep work && work.work() == Work.START_ENGINE;
            starts += start ? 1 : 0;
        }
        return starts;
    }
}
