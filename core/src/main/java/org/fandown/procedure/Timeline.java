package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;

/** Puts steps on the clock. */
final class Timeline {
    private Timeline() {}

    static List<PlannedStep> of(Problem problem, List<Step> steps) {
        return Reasons.add(problem, plain(problem.course(), problem.start(), steps));
    }

    /** The steps on the clock, without reasons. */
    static List<PlannedStep> plain(Course course, Situation start, List<Step> steps) {
        List<PlannedStep> planned = new ArrayList<>();
        Situation now = start;
        int clock = 0;
        for (Step step : steps) {
            Course.Outcome outcome = course.take(now, step);
            planned.add(
                    new PlannedStep(
                            planned.size() + 1,
                            step,
                            now,
                            outcome.after(),
                            clock,
                            outcome.walk(),
                            outcome.tenths(),
                            List.of()));
            clock += outcome.all();
            now = outcome.after();
        }
        return planned;
    }
}
