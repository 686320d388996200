package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.practice.Run;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Precedence;
import org.fandown.procedure.Step;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.VehicleDurations;

/** Holds the order of the checks and the time they took against what the place binds to. */
final class Course {
    private final Run run;
    private final StepSet set;
    private final Attempts attempts;
    private final Sheet sheet;

    Course(Run run, StepSet set, Attempts attempts, Sheet sheet) {
        this.run = run;
        this.set = set;
        this.attempts = attempts;
        this.sheet = sheet;
    }

    List<Feedback> mistakes(double planSeconds) {
        List<Feedback> found = new ArrayList<>();
        for (Precedence each : precedences()) {
            order(each).ifPresent(found::add);
        }
        double allowed = planSeconds * Referee.share(sheet, Item.TIME);
        if (planSeconds > 0 && run.seconds() > allowed) {
            found.add(
                    new Feedback(
                            Item.TIME,
                            run.seconds(),
                            "The work took "
                                    + Words.clock(run.seconds())
                                    + " min; the quickest order takes "
                                    + Words.clock(planSeconds)
                                    + " min.",
                            "Up to " + Words.clock(allowed) + " min are allowed.",
                            "See the quickest order with 'fandown plan'."));
        }
        return found;
    }

    /** Those that hold for an order of one's own, not those that only keep a search short. */
    private List<Precedence> precedences() {
        if (set.checks().isEmpty()) {
            return List.of();
        }
        List<Step> own = List.of(set.checks().get(0));
        PlanRequest request = new PlanRequest(0, PlanRequest.Goal.QUICKEST, own);
        return new Planner(set, VehicleDurations.of(set.rules().vehicle()))
                .problem(request)
                .precedences();
    }

    private Optional<Feedback> order(Precedence each) {
        Optional<Attempt> first = attempts.of(each.first());
        Optional<Attempt> second = attempts.of(each.second());
        boolean wrong =
                first.isPresent()
                        && second.isPresent()
                        && second.get().window().to() < first.get().window().to();
        if (!wrong) {
            return Optional.empty();
        }
        String by = each.rule().map(ruling -> " (" + ruling.rule().id() + ")").orElse("");
        return Optional.of(
                new Feedback(
                        Item.ORDER,
                        second.get().seconds(),
                        each.second().title()
                                + " was made at "
                                + Words.clock(second.get().seconds())
                                + ", before "
                                + Words.inside(each.first().title())
                                + ".",
                        Words.sentence(each.why() + by),
                        "Make " + Words.inside(each.first().title()) + " first."));
    }
}
