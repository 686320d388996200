package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the quickest order of many checks: one {@link Relaxation} after the other, each with one
 * check more than the one before and searched from the other end. The time up to which all of them
 * look rises until the quickest order of the last one makes every check exactly once. No order is
 * quicker, because it would be one of that relaxation too.
 */
final class Relaxations {
    /** By how much the time rises, tenths of a second. */
    private static final int RISE = 100;

    /** So few different sets of checks made are looked at all together. */
    private static final int FEW_SETS = 4000;

    /** Checks that are counted one by one before that. */
    private static final int SINGLY = 4;

    private final Problem problem;
    private final Reachable ways;
    private final long[] needed;
    private final boolean few;
    private final List<Relaxation> levels = new ArrayList<>();
    private int[] first = {};

    Relaxations(Problem problem) {
        this.problem = problem;
        needed = Turns.needed(problem);
        ways = new Reachable(problem);
        few = Turns.sets(needed, FEW_SETS) < FEW_SETS;
    }

    /** How many situations with checks made were looked at, in all relaxations. */
    int looked() {
        int sum = 0;
        for (Relaxation level : levels) {
            sum += level.looked();
        }
        return sum;
    }

    /** The quickest order, empty if there is none. */
    Optional<List<Step>> quickest() {
        if (!begin()) {
            return Optional.empty();
        }
        int time = last().time();
        // An order makes each check somewhere, so it is not quicker than any of these.
        for (int with : first) {
            time = with == Integer.MAX_VALUE ? time : Math.max(time, with);
        }
        while (time < Integer.MAX_VALUE) {
            int next = Integer.MAX_VALUE;
            for (int k = 1; k < levels.size(); k++) {
                Relaxation level = levels.get(k);
                level.raise(time, level.counted() == all());
                next = Math.min(next, level.next());
                if (level == last() && level.isDone() && level.time() <= time) {
                    int more = more(level);
                    if (more < 0) {
                        return Optional.of(steps(level));
                    }
                    add(isNearlyAll(level) ? all() : level.counted() | 1L << more);
                }
            }
            time = next == Integer.MAX_VALUE ? next : Math.max(time + RISE, next);
        }
        return Optional.empty();
    }

    /** The first two are searched to their end, one from each end of the order. */
    private boolean begin() {
        for (int i = 0; i < needed.length; i++) {
            if (ways.least(i) >= Durations.NEVER) {
                return false;
            }
        }
        long counted = longest();
        levels.add(new Relaxation(ways, needed, counted, false, null));
        levels.get(0).raise(Integer.MAX_VALUE - 1, false);
        add(counted);
        last().raise(Integer.MAX_VALUE - 1, false);
        first = last().through();
        return last().isDone();
    }

    /** Whether the next counts all; from the end there would be too much that never begins. */
    private boolean isNearlyAll(Relaxation level) {
        return few && !level.isForward() && Long.bitCount(level.counted()) >= SINGLY;
    }

    private void add(long counted) {
        levels.add(new Relaxation(ways, needed, counted, !last().isForward(), last()));
    }

    private Relaxation last() {
        return levels.get(levels.size() - 1);
    }

    private long all() {
        return (1L << needed.length) - 1;
    }

    /** The longest check in which a running engine builds up; uncounted it would be free air. */
    private long longest() {
        int longest = Course.COUNTS;
        long bit = 0;
        for (int i = 0; i < problem.checks().size(); i++) {
            CheckStep check = problem.checks().get(i);
            boolean still = !asks(check, Aspect.ENGINE) && !asks(check, Aspect.CHOCKS);
            boolean pumps =
                    check.change().kind() == Change.Kind.RISE
                            || check.change().kind() == Change.Kind.FALL
                            || check.change().kind() == Change.Kind.ESCAPE;
            if (still && !pumps && check.manner().tenths() >= longest) {
                longest = check.manner().tenths() + 1;
                bit = 1L << i;
            }
        }
        return bit;
    }

    private static boolean asks(CheckStep check, Aspect aspect) {
        for (Need need : check.needs()) {
            if (need.aspect() == aspect && need.most() == 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * The check to count next, -1 if the order makes each once and in turn: the one that is likely
     * to take the most time more, because it is made over and over or not at all.
     */
    private int more(Relaxation level) {
        int[] times = new int[needed.length];
        boolean inTurn = true;
        long made = 0;
        for (int choice : level.order()) {
            if (choice < times.length) {
                times[choice]++;
                inTurn &= (needed[choice] & ~made) == 0;
                made |= 1L << choice;
            }
        }
        int[] through = level.through();
        int more = -1;
        int most = -1;
        for (int i = 0; i < times.length; i++) {
            boolean asked = (level.counted() >> i & 1) == 0 && (times[i] != 1 || !inTurn);
            int known =
                    through[i] == Integer.MAX_VALUE
                            ? first[i] - levels.get(0).time()
                            : through[i] - level.time();
            int gain = times[i] > 1 ? (times[i] - 1) * ways.least(i) : Math.max(known, 0);
            if (asked && gain > most) {
                more = i;
                most = gain;
            }
        }
        return more;
    }

    private List<Step> steps(Relaxation level) {
        List<Step> steps = new ArrayList<>(problem.opening());
        for (int choice : level.order()) {
            steps.add(ways.choice(choice));
        }
        return steps;
    }
}
