package org.fandown.app.property;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Course;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Need;
import org.fandown.procedure.Precedence;
import org.fandown.procedure.Problem;
import org.fandown.procedure.Situation;
import org.fandown.procedure.Spot;
import org.fandown.procedure.Step;

/**
 * The quickest order of few checks, found by trying all work and all checks in every situation that
 * can be reached, without any bound. Shares with the planner only what a step does.
 */
final class ExhaustiveOrders {
    private final Problem problem;
    private final Map<Long, Integer> reached = new HashMap<>();
    private final PriorityQueue<long[]> open =
            new PriorityQueue<>((a, b) -> Long.compare(a[1], b[1]));

    private ExhaustiveOrders(Problem problem) {
        this.problem = problem;
    }

    /** The time after the opening, tenths of a second; empty if no order makes all checks. */
    static OptionalInt quickest(Problem problem) {
        return new ExhaustiveOrders(problem).search();
    }

    private OptionalInt search() {
        int least = Integer.MAX_VALUE;
        reach(problem.opened(), 0, 0);
        while (!open.isEmpty()) {
            long[] next = open.remove();
            int cost = (int) next[1];
            if (cost > reached.get(next[0]) || cost >= least) {
                continue;
            }
            Situation now = new Situation((int) (next[0] & 0xFFFFFFFFL));
            int done = (int) (next[0] >>> 32);
            if (done == (1 << problem.checks().size()) - 1 && met(problem.finish(), now)) {
                int walk = problem.course().durations().walk(now.spot(), Spot.CAB);
                least = Math.min(least, cost + walk);
            }
            goOn(now, done, cost);
        }
        return least == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(least);
    }

    private void goOn(Situation now, int done, int cost) {
        for (int i = 0; i < problem.checks().size(); i++) {
            boolean open = (done >> i & 1) == 0 && allowed(problem.checks().get(i), done);
            if (open) {
                take(now, problem.checks().get(i), done | 1 << i, cost);
            }
        }
        problem.works().forEach(work -> take(now, work, done, cost));
    }

    private void take(Situation now, Step step, int done, int cost) {
        if (met(step.needs(), now)) {
            Course.Outcome outcome = problem.course().take(now, step);
            if (outcome.all() < Durations.NEVER) {
                reach(outcome.after(), done, cost + problem.cost(step, outcome));
            }
        }
    }

    private void reach(Situation now, int done, int cost) {
        long key = (long) done << 32 | now.code();
        if (reached.getOrDefault(key, Integer.MAX_VALUE) > cost) {
            reached.put(key, cost);
            open.add(new long[] {key, cost});
        }
    }

    private static boolean met(Iterable<Need> needs, Situation now) {
        for (Need need : needs) {
            if (!need.isMetBy(now)) {
                return false;
            }
        }
        return true;
    }

    private boolean allowed(CheckStep step, int done) {
        for (Precedence order : problem.precedences()) {
            for (int j = 0; j < problem.checks().size(); j++) {
                boolean waits =
                        order.second() == step.check()
                                && order.first() == problem.checks().get(j).check()
                                && (done >> j & 1) == 0;
                if (waits) {
                    return false;
                }
            }
        }
        return true;
    }
}
