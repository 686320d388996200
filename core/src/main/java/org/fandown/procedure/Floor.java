package org.fandown.procedure;

import java.util.List;

/**
 * A time that no plan from a situation on can beat; the bound that makes the search exact.
 *
 * <p>It adds what each open check takes by itself; the work that open checks and the end must still
 * have ({@link Chores}); a rest, if none of the checks can be one; and the build-up that must still
 * come, less all that can be done meanwhile. No part counts time of another.
 */
final class Floor {
    private static final int FASTEST = (int) PlanDefault.FAST_IDLE.number();
    private static final int IDLE = (int) PlanDefault.IDLE.number();
    private static final int COUNTS = Course.COUNTS;

    private final Problem problem;
    private final Durations durations;
    private final Chores chores;
    private final int[] own;
    private final int[] meanwhile;
    private final int[] begin;
    private final int[] end;
    private final int[] goal;
    private final int[] leaves;
    private final boolean[] settled;
    private final boolean[] rolls;
    private final int ready;
    private final BuildUps buildUps;
    private final double share;

    Floor(Problem problem) {
        this.problem = problem;
        durations = problem.course().durations();
        chores = new Chores(problem);
        int count = problem.checks().size();
        own = new int[count];
        meanwhile = new int[count];
        begin = new int[count];
        end = new int[count];
        goal = new int[count];
        leaves = new int[count];
        settled = new boolean[count];
        rolls = new boolean[count];
        for (int i = 0; i < count; i++) {
            learn(i, problem.checks().get(i));
        }
        ready = least(problem.finish());
        buildUps = new BuildUps(durations, begin, end, ready, chores.charges());
        int slow = durations.rise(false, IDLE, 50, 100);
        share = (double) durations.rise(false, FASTEST, 50, 100) / Math.max(slow, 1);
    }

    private void learn(int i, CheckStep step) {
        Change.Kind kind = step.change().kind();
        begin[i] = least(step.needs());
        boolean falls = kind == Change.Kind.FALL || kind == Change.Kind.ESCAPE;
        boolean rises = kind == Change.Kind.RISE;
        end[i] = falls ? step.change().psi() : Need.NO_LIMIT;
        goal[i] = rises ? Math.min(step.change().psi(), durations.cutOut()) : 0;
        boolean pumped = kind == Change.Kind.FALL && begin[i] > end[i];
        own[i] = step.manner().tenths() + (pumped ? durations.fall(false, begin[i], end[i]) : 0);
        leaves[i] = left(step);
        boolean off = false;
        for (Need need : step.needs()) {
            off |= need.aspect() == Aspect.ENGINE && need.most() == 0;
            rolls[i] |= !chores.chocksAgain() && need.aspect() == Aspect.CHOCKS && need.most() == 0;
            settled[i] |= need.aspect() == Aspect.REST;
        }
        boolean still = !falls && !rises && !off && step.manner().tenths() >= COUNTS;
        meanwhile[i] = still ? step.manner().tenths() : 0;
    }

    private static int least(List<Need> needs) {
        int least = 0;
        for (Need need : needs) {
            least = need.aspect() == Aspect.PRESSURE ? Math.max(least, need.least()) : least;
        }
        return least;
    }

    /** The most pressure a check can leave if nothing builds up meanwhile, psi. */
    private int left(CheckStep step) {
        int most = durations.cutOut();
        for (Need need : step.needs()) {
            most = need.aspect() == Aspect.PRESSURE ? Math.min(most, need.most()) : most;
        }
        boolean applies = step.change().kind() == Change.Kind.APPLICATION;
        return most - (applies ? durations.application(most) : 0);
    }

    /** The bound, tenths of a second; {@link Durations#NEVER} if there is no plan from here on. */
    int of(Situation now, long done) {
        if (chores.isTooLate(now, done)) {
            return Durations.NEVER;
        }
        int sum = 0;
        int overlap = 0;
        int rolling = 0;
        int peak = ready;
        boolean rests = false;
        int restFrom = Need.NO_LIMIT;
        int falls = 0;
        for (int i = 0; i < own.length; i++) {
            if ((done >> i & 1) == 0) {
                sum += own[i];
                falls |= buildUps.bit(i);
                int slow = Math.min(meanwhile[i], above(i, now));
                overlap += rolls[i] ? 0 : slow;
                rolling = rolls[i] ? Math.max(rolling, above(i, now)) : rolling;
                rests |= settled[i] && (!now.has(Aspect.REST) || now.psi() < begin[i]);
                restFrom = settled[i] ? Math.min(restFrom, begin[i]) : restFrom;
                peak = Math.max(peak, Math.max(begin[i], goal[i]));
            }
        }
        int work = chores.of(now, done);
        int rest = rests && !settles(done, restFrom) ? durations.settling() : 0;
        int up = buildUps.least(now.has(Aspect.TRAILER_AIR), now.psi(), falls, peak);
        int byTheWay = (int) Math.ceil((overlap + rolling + chores.outside()) * share);
        int build = Math.max(0, up - byTheWay);
        return sum + work + rest + build;
    }

    /** The most that can build up during a check, which has its own least pressure. */
    private int above(int i, Situation now) {
        boolean towing = now.has(Aspect.TRAILER_AIR) || chores.charges();
        int top = rolls[i] ? Math.max(ready, now.psi()) : durations.cutOut();
        int rounds = rolls[i] ? 1 : 2;
        return rounds * durations.rise(towing, IDLE, Math.min(begin[i], top), top);
    }

    /** Whether the air can settle during an open check instead of a wait. */
    private boolean settles(long done, int restFrom) {
        for (int i = 0; i < own.length; i++) {
            boolean open = (done >> i & 1) == 0;
            boolean slow = problem.checks().get(i).manner().tenths() >= durations.settling();
            if (open && slow && leaves[i] >= restFrom) {
                return true;
            }
        }
        return false;
    }
}
