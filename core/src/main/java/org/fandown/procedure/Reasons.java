package org.fandown.procedure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Explains an order by the constraints that force it: a step comes after the one that brought about
 * what it needs, and before the one that would take it away.
 */
final class Reasons {
    private final Problem problem;
    private final List<PlannedStep> steps;

    private Reasons(Problem problem, List<PlannedStep> steps) {
        this.problem = problem;
        this.steps = steps;
    }

    static List<PlannedStep> add(Problem problem, List<PlannedStep> steps) {
        Reasons reasons = new Reasons(problem, steps);
        List<PlannedStep> explained = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            explained.add(steps.get(i).with(reasons.of(i)));
        }
        return explained;
    }

    private List<Reason> of(int i) {
        List<Reason> reasons = new ArrayList<>();
        if (steps.get(i).step() instanceof WorkStep) {
            purpose(i, reasons);
        } else {
            orders(i, true, reasons);
            steps.get(i).step().needs().forEach(need -> sides(i, need, reasons));
            orders(i, false, reasons);
        }
        return reasons;
    }

    /** The first later step that needs what this work brought about. */
    private void purpose(int i, List<Reason> reasons) {
        for (int j = i + 1; j < steps.size(); j++) {
            for (Need need : steps.get(j).step().needs()) {
                boolean brought =
                        !need.isMetBy(steps.get(i).before()) && need.isMetBy(steps.get(i).after());
                if (brought) {
                    reasons.add(Reason.of(Reason.Sense.FOR, j + 1, said(need)));
                    return;
                }
            }
        }
        for (Need need : problem.finish()) {
            boolean brought =
                    !need.isMetBy(steps.get(i).before()) && need.isMetBy(steps.get(i).after());
            if (brought) {
                reasons.add(Reason.of(Reason.Sense.FOR, 0, need.why()));
                return;
            }
        }
    }

    private static String said(Need need) {
        return need.asked() + ", because " + need.why();
    }

    private void sides(int i, Need need, List<Reason> reasons) {
        int maker = lastChange(i, need);
        if (maker >= 0 && steps.get(maker).step() instanceof CheckStep) {
            reasons.add(Reason.of(Reason.Sense.AFTER, maker + 1, said(need)));
        }
        for (int j = i + 1; j < steps.size(); j++) {
            if (!need.isMetBy(steps.get(j).after())) {
                boolean check = steps.get(j).step() instanceof CheckStep;
                if (check && need.weight() != Weight.POSSIBLE) {
                    reasons.add(Reason.of(Reason.Sense.BEFORE, j + 1, said(need)));
                }
                return;
            }
        }
    }

    /** The last step before that turned the need from unmet to met, -1 if there is none. */
    private int lastChange(int i, Need need) {
        for (int j = i - 1; j >= 0; j--) {
            if (!need.isMetBy(steps.get(j).before())) {
                return j;
            }
        }
        return -1;
    }

    /**
     * What the place asks for comes first, our own order last. Of several steps that come after for
     * one cause the next is named.
     */
    private void orders(int i, boolean ofPlace, List<Reason> reasons) {
        CheckStep step = (CheckStep) steps.get(i).step();
        List<Precedence> own =
                problem.precedences().stream()
                        .filter(o -> o.first() == step.check() && o.rule().isPresent() == ofPlace)
                        .toList();
        Set<String> said = new LinkedHashSet<>();
        for (PlannedStep later : steps.subList(i + 1, steps.size())) {
            for (Precedence order : own) {
                boolean is = later.step() instanceof CheckStep c && c.check() == order.second();
                String cause = order.rule().map(r -> r.rule().id()).orElse("") + order.why();
                if (is && said.add(cause)) {
                    Reason.Sense before = Reason.Sense.BEFORE;
                    reasons.add(new Reason(before, later.number(), order.why(), order.rule()));
                }
            }
        }
    }
}
