package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.vehicle.Vehicle;

/**
 * Finds the smallest change that mends a violation: first one step put in, moved or left out; then
 * two or three steps of work put in before the step that is spoiled. Of changes of one size the one
 * that leaves the fewest violations is taken, and of those the one that costs the least time.
 */
final class Mender {
    private static final int MOST_INSERTED = 5;

    private final OrderExaminer examiner;
    private final WorkNeeds works;
    private final Durations durations;

    Mender(OrderExaminer examiner, Problem problem, Vehicle vehicle) {
        this.examiner = examiner;
        durations = problem.course().durations();
        works = new WorkNeeds(new Rig(vehicle, durations));
    }

    /** One change that was tried. */
    private record Trial(String text, List<Step> steps) {}

    Optional<Mend> mend(Order order, List<PlannedStep> steps, Violation violation, int before) {
        List<Trial> single = new ArrayList<>();
        insertions(order, violation, single);
        moves(order, violation, single);
        removals(order, violation, single);
        Optional<Mend> best = best(order, violation, single, before);
        return best.isPresent() ? best : several(order, steps, violation, before);
    }

    private Optional<Mend> best(Order order, Violation violation, List<Trial> trials, int before) {
        Mend best = null;
        int time = 0;
        boolean end = violation.number() > order.steps().size();
        for (Trial trial : trials) {
            if (trial.steps().isEmpty()) {
                continue;
            }
            Order changed = order.with(trial.steps());
            List<PlannedStep> clock = examiner.onTheClock(changed);
            List<Violation> left = examiner.violations(clock);
            int finish = clock.get(clock.size() - 1).end();
            int most = end ? before : steps(order, examiner.violations(examiner.onTheClock(order)));
            boolean mends =
                    (end ? left.size() : steps(changed, left)) < most
                            && !holds(left, order, changed, violation)
                            && !adds(left, order, changed, end);
            boolean better =
                    best == null
                            || left.size() < best.left()
                            || (left.size() == best.left() && finish < time);
            if (mends && better) {
                best = new Mend(trial.text(), changed, left.size());
                time = finish;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Whether the same step still lacks the same. */
    private static boolean holds(
            List<Violation> left, Order before, Order after, Violation violation) {
        if (violation.number() > before.steps().size()) {
            return left.stream().anyMatch(v -> v.number() > after.steps().size());
        }
        Step step = before.steps().get(violation.number() - 1);
        for (Violation other : left) {
            boolean inside = other.number() <= after.steps().size();
            boolean same = inside && after.steps().get(other.number() - 1).equals(step);
            if (same && alike(other, violation)) {
                return true;
            }
        }
        return false;
    }

    private static boolean alike(Violation one, Violation other) {
        return one.need().equals(other.need()) && one.order().equals(other.order());
    }

    /** How many violations are at steps, not at the end. */
    private static int steps(Order order, List<Violation> violations) {
        int count = 0;
        for (Violation violation : violations) {
            count += violation.number() <= order.steps().size() ? 1 : 0;
        }
        return count;
    }

    /** Whether something is wrong that was not before; what is left at the end does not count. */
    private boolean adds(List<Violation> left, Order before, Order after, boolean end) {
        List<Violation> old = examiner.violations(examiner.onTheClock(before));
        for (Violation violation : left) {
            boolean known = !end && violation.number() > after.steps().size();
            for (Violation other : old) {
                known |=
                        alike(other, violation)
                                && step(before, other).equals(step(after, violation));
            }
            if (!known) {
                return true;
            }
        }
        return false;
    }

    /** The step a violation is about, empty at the end. */
    private static Optional<Step> step(Order order, Violation violation) {
        return violation.number() > order.steps().size()
                ? Optional.empty()
                : Optional.of(order.steps().get(violation.number() - 1));
    }

    private void insertions(Order order, Violation violation, List<Trial> trials) {
        int last = violation.number() - 1;
        for (int at = last; at >= violation.culprit(); at--) {
            for (WorkStep work : candidates(violation.need())) {
                List<Step> steps = new ArrayList<>(order.steps());
                steps.add(at, work);
                trials.add(new Trial(insert(order, List.of(work), at), steps));
            }
        }
    }

    private static String insert(Order order, List<WorkStep> works, int at) {
        StringBuilder text = new StringBuilder("Put in ");
        for (int i = 0; i < works.size(); i++) {
            text.append(i == 0 ? "" : ", ").append('\'').append(works.get(i).text()).append('\'');
        }
        return at >= order.steps().size()
                ? text.append(" at the end.").toString()
                : text.append(" before step " + (at + 1) + ", " + order.steps().get(at).text())
                        .append('.')
                        .toString();
    }

    private List<WorkStep> candidates(Need need) {
        List<WorkStep> list = new ArrayList<>();
        for (Work work : Work.values()) {
            if (work.amount() == Work.Amount.NONE) {
                list.add(works.step(work, 0));
            }
        }
        list.add(works.step(Work.WAIT, durations.settling() / 10));
        if (need.aspect() == Aspect.PRESSURE) {
            if (need.least() > 0) {
                list.add(works.step(Work.PUMP_UP, Levels.up(need)));
            }
            if (need.most() < Need.NO_LIMIT) {
                list.add(works.step(Work.FAN_DOWN, need.most()));
            }
        }
        list.add(works.step(Work.PUMP_UP, durations.cutOut()));
        list.add(works.step(Work.FAN_DOWN, durations.cutIn()));
        return list;
    }

    private static void moves(Order order, Violation violation, List<Trial> trials) {
        move(order, violation.number() - 1, trials);
        if (violation.culprit() > 0) {
            move(order, violation.culprit() - 1, trials);
        }
    }

    private static void move(Order order, int from, List<Trial> trials) {
        if (from >= order.steps().size()) {
            return;
        }
        for (int to = 0; to <= order.steps().size(); to++) {
            if (to != from && to != from + 1) {
                List<Step> steps = new ArrayList<>(order.steps());
                Step moved = steps.remove(from);
                steps.add(to > from ? to - 1 : to, moved);
                String where =
                        to == order.steps().size()
                                ? "to the end."
                                : "before step "
                                        + (to + 1)
                                        + ", "
                                        + order.steps().get(to).text()
                                        + ".";
                String text = "Move step " + (from + 1) + ", " + moved.text() + ", " + where;
                trials.add(new Trial(text, steps));
            }
        }
    }

    private static void removals(Order order, Violation violation, List<Trial> trials) {
        int number = violation.culprit();
        boolean there = number > 0 && number <= order.steps().size();
        if (there && order.steps().get(number - 1) instanceof WorkStep work) {
            List<Step> steps = new ArrayList<>(order.steps());
            steps.remove(number - 1);
            trials.add(new Trial("Leave out step " + number + ", " + work.text() + ".", steps));
        }
    }

    /** The fewest works, put in before the step, after which it has all it needs. */
    private Optional<Mend> several(
            Order order, List<PlannedStep> steps, Violation violation, int before) {
        int at = violation.number() - 1;
        boolean end = at >= order.steps().size();
        Situation from = steps.get(Math.min(at, steps.size() - 1)).before();
        from = end ? steps.get(steps.size() - 1).after() : from;
        List<Need> needs = end ? List.of(violation.need()) : order.steps().get(at).needs();
        List<WorkStep> found =
                new ShortestWork(examiner.course(), candidates(needs))
                        .to(from, needs, MOST_INSERTED);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        List<Step> changed = new ArrayList<>(order.steps());
        changed.addAll(at, found);
        Trial trial = new Trial(insert(order, found, at), changed);
        return best(order, violation, List.of(trial), before);
    }

    private List<WorkStep> candidates(List<Need> needs) {
        List<WorkStep> list = new ArrayList<>();
        for (Need need : needs) {
            for (WorkStep work : candidates(need)) {
                if (!list.contains(work)) {
                    list.add(work);
                }
            }
        }
        for (int psi : new int[] {works.chargeFrom(), works.releaseFrom()}) {
            WorkStep pump = works.step(Work.PUMP_UP, psi);
            if (psi > 0 && !list.contains(pump)) {
                list.add(pump);
            }
        }
        return list;
    }
}
