package org.fandown.procedure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.rulebook.Ruling;

/**
 * Says what is wrong with an order of work: for each step what it needs and does not find, which
 * step before took it away, and the smallest change that mends it.
 */
public final class OrderExaminer {
    private final StepSet asked;
    private final Course course;
    private final Problem problem;

    /** An examiner for the checks asked of one vehicle. */
    public OrderExaminer(StepSet asked, Durations durations) {
        this.asked = asked;
        this.course = new Course(durations);
        this.problem = new Planner(asked, durations).problem(PlanRequest.QUICKEST);
    }

    /** Examines an order. */
    public Examination examine(Order order) {
        List<PlannedStep> steps = onTheClock(order);
        List<Violation> mended = new ArrayList<>();
        List<Violation> found = violations(steps);
        Mender mender = new Mender(this, problem, asked.rules().vehicle());
        for (Violation violation : found) {
            mended.add(violation.with(mender.mend(order, steps, violation, found.size())));
        }
        return new Examination(order, steps, mended, unproven(steps, found));
    }

    Course course() {
        return course;
    }

    List<PlannedStep> onTheClock(Order order) {
        Situation found = Situation.found(order.startPsi());
        boolean full = order.startPsi() > course.durations().cutIn();
        Situation start = found.with(Aspect.COMPRESSOR, full ? 0 : 1);
        return Timeline.plain(course, start, order.steps());
    }

    /** Everything wrong in an order on the clock. */
    List<Violation> violations(List<PlannedStep> steps) {
        List<Violation> violations = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            int before = violations.size();
            for (Need need : steps.get(i).step().needs()) {
                if (!need.isMetBy(steps.get(i).before())) {
                    violations.add(violation(steps, i, need));
                }
            }
            orders(steps, i, violations);
            if (violations.size() == before && steps.get(i).tenths() >= Durations.NEVER) {
                violations.add(violation(steps, i, TOO_WEAK));
            }
        }
        end(steps, violations);
        return violations;
    }

    private static final Need TOO_WEAK =
            Need.is(
                    Aspect.ENGINE,
                    0,
                    Weight.POSSIBLE,
                    "the compressor builds up faster than the pedal takes it off");

    private Violation violation(List<PlannedStep> steps, int i, Need need) {
        int culprit = culprit(steps, i, need);
        String name = (i + 1) + ", " + steps.get(i).step().text();
        String by =
                culprit == 0
                        ? ", and nothing before brings it about: "
                        : ", and step "
                                + culprit
                                + ", "
                                + steps.get(culprit - 1).step().text()
                                + ", took it away: ";
        String text =
                "Step "
                        + name
                        + ", is "
                        + need.weight().title()
                        + ": it needs "
                        + need.asked()
                        + by
                        + need.why()
                        + ".";
        return Violation.of(i + 1, need, culprit, text);
    }

    /** The last step that turned a need from met to unmet, 0 if it never was met. */
    private static int culprit(List<PlannedStep> steps, int i, Need need) {
        for (int j = i - 1; j >= 0; j--) {
            if (need.isMetBy(steps.get(j).before())) {
                return j + 1;
            }
        }
        return 0;
    }

    private static String sentence(String clause) {
        char first = clause.charAt(0);
        boolean small = first >= 'a' && first <= 'z';
        String head = small ? String.valueOf((char) (first - 'a' + 'A')) : clause.substring(0, 1);
        return head + clause.substring(1) + ".";
    }

    /** Orders of two checks of which the second is made at this step and the first only later. */
    private void orders(List<PlannedStep> steps, int i, List<Violation> violations) {
        if (!(steps.get(i).step() instanceof CheckStep check)) {
            return;
        }
        for (Precedence order : precedences(steps)) {
            int made = place(steps, order.first());
            if (order.second() == check.check() && made > i) {
                violations.add(tooEarly(steps, i, made, order));
            }
        }
    }

    /** Orders between the checks asked for, and those the place sets between the checks made. */
    private Set<Precedence> precedences(List<PlannedStep> steps) {
        List<CheckStep> made = new ArrayList<>();
        for (PlannedStep planned : steps) {
            if (planned.step() instanceof CheckStep check) {
                made.add(check);
            }
        }
        Set<Precedence> all = new LinkedHashSet<>(PrintedOrders.precedences(asked, true));
        all.addAll(PlaceOrders.binding(asked.rules(), made));
        return all;
    }

    /** Where a check is made first, -1 if it is not made. */
    private static int place(List<PlannedStep> steps, Check check) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).step() instanceof CheckStep made && made.check() == check) {
                return i;
            }
        }
        return -1;
    }

    private static Violation tooEarly(
            List<PlannedStep> steps, int early, int late, Precedence order) {
        Weight weight = order.rule().isEmpty() ? Weight.SAFETY : Weight.RULE;
        Need need = Need.is(Aspect.SECURED, 1, weight, order.why());
        String text =
                "Step "
                        + (early + 1)
                        + ", "
                        + steps.get(early).step().text()
                        + ", is "
                        + weight.title()
                        + ": it comes before step "
                        + (late + 1)
                        + ", "
                        + steps.get(late).step().text()
                        + ". "
                        + order.rule().map(OrderExaminer::asks).orElse(sentence(order.why()));
        return new Violation(early + 1, need, late + 1, text, Optional.of(order), Optional.empty());
    }

    /** Which rule asks for an order, where it is printed and how well it is known. */
    private static String asks(Ruling ruling) {
        return "The rule "
                + ruling.rule().id()
                + " asks for the other order ("
                + ruling.value().source()
                + "; "
                + ruling.rule().provenance().title()
                + ").";
    }

    /** What must not be left as it is at the end. */
    private void end(List<PlannedStep> steps, List<Violation> violations) {
        Situation last = steps.get(steps.size() - 1).after();
        for (Need need : problem.finish()) {
            boolean left = need.aspect() == Aspect.CHOCKS || need.aspect() == Aspect.LINES;
            if (left && !need.isMetBy(last)) {
                int culprit = culprit(steps, steps.size(), need);
                String what = need.aspect() == Aspect.CHOCKS ? "chocks" : "parted lines";
                String text = "At the end the vehicle is left with " + what + ".";
                violations.add(Violation.of(steps.size() + 1, need, culprit, text));
            }
        }
    }

    private List<Check> unproven(List<PlannedStep> steps, List<Violation> violations) {
        Set<Check> proven = new LinkedHashSet<>();
        for (PlannedStep planned : steps) {
            boolean sound = violations.stream().noneMatch(v -> v.number() == planned.number());
            if (planned.step() instanceof CheckStep check && sound) {
                proven.addAll(check.checks());
            }
        }
        List<Check> unproven = new ArrayList<>();
        for (CheckStep step : asked.checks()) {
            if (!proven.contains(step.check()) && !unproven.contains(step.check())) {
                unproven.add(step.check());
            }
        }
        return unproven;
    }
}
