package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;

/**
 * What a planner solves: which checks on which vehicle, what may be done in between, from where,
 * and when it is done. Immutable.
 *
 * @param course what steps do
 * @param checks the checks, at most {@value #MOST_CHECKS}
 * @param works what may be done in between
 * @param precedences orders that hold whatever the needs
 * @param followed steps that have to come in this order, empty for a free order
 * @param start how the vehicle is found
 * @param opening work that comes before anything else
 * @param finish what has to hold at the end
 * @param startPenalty what a start of the engine counts beside its time (tenths of a second)
 */
public record Problem(
        Course course,
        List<CheckStep> checks,
        List<WorkStep> works,
        List<Precedence> precedences,
        List<Step> followed,
        Situation start,
        List<WorkStep> opening,
        List<Need> finish,
        int startPenalty) {
    /** The most checks of one order. */
    public static final int MOST_CHECKS = 34;

    /** The most steps of an order that is followed. */
    public static final int MOST_FOLLOWED = 60;

    /** The most checks and work of an order that is followed, together. */
    public static final int MOST_ITEMS = 42;

    /** Copies the lists; refuses more checks and work than can be planned. */
    public Problem {
        checks = List.copyOf(checks);
        works = List.copyOf(works);
        precedences = List.copyOf(precedences);
        followed = List.copyOf(followed);
        opening = List.copyOf(opening);
        finish = List.copyOf(finish);
        if (checks.size() > MOST_CHECKS || followed.size() > MOST_FOLLOWED) {
            throw new IllegalArgumentException(
                    "At most "
                            + MOST_CHECKS
                            + " checks can be planned, following at most "
                            + MOST_FOLLOWED
                            + " steps.");
        }
        long work = followed.stream().filter(WorkStep.class::isInstance).count();
        if (checks.size() + work > MOST_ITEMS) {
            throw new IllegalArgumentException(
                    checks.size()
                            + " checks and "
                            + work
                            + " pieces of work of an order that is followed are too many; at most "
                            + MOST_ITEMS
                            + " together can be planned. Leave work out of the order.");
        }
    }

    /** All steps that have to be done: the checks, and then the work of an order followed. */
    public List<Step> items() {
        List<Step> items = new ArrayList<>(checks);
        for (Step step : followed) {
            if (step instanceof WorkStep) {
                items.add(step);
            }
        }
        return items;
    }

    /** How the vehicle stands after the opening. */
    public Situation opened() {
        Situation now = start;
        for (WorkStep work : opening) {
            now = course.take(now, work).after();
        }
        return now;
    }

    /** What a step costs in this problem, tenths of a second. */
    public int cost(Step step, Course.Outcome outcome) {
        boolean starts = step instanceof WorkStep work && work.work() == Work.START_ENGINE;
        return outcome.all() + (starts ? startPenalty : 0);
    }
}
