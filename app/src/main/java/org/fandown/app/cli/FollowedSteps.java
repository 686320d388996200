package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Step;
import org.fandown.procedure.StepSet;

/** The steps of a school's order that a plan has to keep: its checks, as the plan makes them. */
final class FollowedSteps {
    private FollowedSteps() {}

    /** The checks of an order in its turn; work between them is the planner's to fill in. */
    static List<Step> of(StepSet set, List<Step> order) {
        List<Step> followed = new ArrayList<>();
        for (Step step : order) {
            if (step instanceof CheckStep check) {
                set.find(check.text())
                        .filter(own -> !followed.contains(own))
                        .ifPresent(followed::add);
            }
        }
        return followed;
    }
}
