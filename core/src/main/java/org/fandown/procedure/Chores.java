package org.fandown.procedure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The work that open checks and the end must still have, whatever the order: the least time of it,
 * and how much of it is outside the cab, where air can build up meanwhile.
 */
final class Chores {
    private final Problem problem;
    private final Durations durations;
    private final Map<Aspect, long[]> asks = new EnumMap<>(Aspect.class);
    private final boolean again;
    private long inCab;
    private long partedInCab;
    private long parted;
    private long chocked;
    private long off;
    private long set;
    private long released;
    private long closed;
    private long open;
    private long pops;
    private int outside;

    Chores(Problem problem) {
        this.problem = problem;
        durations = problem.course().durations();
        again = problem.works().stream().anyMatch(w -> w.work() == Work.CHOCK);
        for (Aspect aspect : Aspect.values()) {
            for (int i = 0; i < problem.checks().size(); i++) {
                note(aspect, problem.checks().get(i).needs(), 1L << i);
            }
            note(aspect, problem.finish(), 1L << Problem.MOST_CHECKS);
        }
        learn();
    }

    private void learn() {
        parted =
                mask(Aspect.LINES, Lines.SERVICE_PARTED)
                        | mask(Aspect.LINES, Lines.SUPPLY_PARTED)
                        | mask(Aspect.LINES, Lines.BOTH_PARTED);
        chocked = mask(Aspect.CHOCKS, 1);
        off = mask(Aspect.ENGINE, 0);
        set = mask(Aspect.PARKING, 0);
        released = mask(Aspect.PARKING, 1);
        closed = mask(Aspect.TRAILER_SUPPLY, 0);
        open = mask(Aspect.TRAILER_SUPPLY, 1);
        for (int i = 0; i < problem.checks().size(); i++) {
            CheckStep check = problem.checks().get(i);
            long bit = 1L << i;
            boolean cab = check.manner().spot() == Spot.CAB;
            partedInCab |= cab ? parted & bit : 0;
            inCab |= cab ? chocked & bit : 0;
            boolean lowers = !check.leaves().isEmpty();
            pops |= lowers || check.change().psi() < Course.SUPPLY_POPS ? bit : 0;
        }
    }

    private void note(Aspect aspect, List<Need> needs, long bit) {
        for (Need need : needs) {
            boolean state = aspect != Aspect.PRESSURE && need.least() == need.most();
            if (need.aspect() == aspect && state) {
                asks.computeIfAbsent(aspect, a -> new long[4])[need.least()] |= bit;
            }
        }
    }

    private long mask(Aspect aspect, int value) {
        long[] masks = asks.get(aspect);
        return masks == null ? 0 : masks[value];
    }

    /** Whether the end needs a charged trailer. */
    boolean charges() {
        return open != 0;
    }

    /** Part of the last time that is spent outside the cab, tenths of a second. */
    int outside() {
        return outside;
    }

    /** The least time of all work still to be done, tenths of a second. */
    int of(Situation now, long done) {
        long left = ~done;
        outside = 0;
        return trips(now, left) + engine(now, left) + parking(now, left) + supply(now, left);
    }

    /** Whether wheels can be chocked again, so that rolling need not come last. */
    boolean chocksAgain() {
        return again;
    }

    /** Whether a check that needs chocks is open although they are gone. */
    boolean isTooLate(Situation now, long done) {
        return !again && !now.has(Aspect.CHOCKS) && (chocked & ~done) != 0;
    }

    private int trips(Situation now, long left) {
        if (!now.has(Aspect.CHOCKS)) {
            return lines(now, left);
        }
        boolean enters = now.spot() != Spot.CAB && (inCab & left) != 0;
        int way =
                enters
                        ? durations.walk(now.spot(), Spot.CAB)
                                + durations.walk(Spot.CAB, Spot.WHEEL)
                        : durations.walk(now.spot(), Spot.WHEEL);
        outside += 10 * Work.UNCHOCK.seconds();
        int back = 10 * Work.UNCHOCK.seconds() + durations.walk(Spot.WHEEL, Spot.CAB);
        return way + back + lines(now, left);
    }

    private int lines(Situation now, long left) {
        int couple = 10 * Work.COUPLE_LINES.seconds();
        if (now.value(Aspect.LINES) != Lines.COUPLED) {
            outside += couple;
            return couple;
        }
        boolean returns = now.spot() == Spot.CAB && (partedInCab & left) != 0;
        int trip =
                returns
                        ? durations.walk(Spot.CAB, Spot.COUPLING)
                                + durations.walk(Spot.COUPLING, Spot.CAB)
                        : 0;
        int both = (parted & left) == 0 ? 0 : couple + 10 * Work.PART_SERVICE_LINE.seconds();
        outside += both;
        return both + trip;
    }

    private int engine(Situation now, long left) {
        int start = 10 * Work.START_ENGINE.seconds() + problem.startPenalty();
        if (!now.has(Aspect.ENGINE)) {
            return start;
        }
        return (off & left) != 0 ? 10 * Work.STOP_ENGINE.seconds() + start : 0;
    }

    private int parking(Situation now, long left) {
        if (now.has(Aspect.PARKING)) {
            boolean sets = now.has(Aspect.CHOCKS) || (set & left) != 0;
            return sets && (pops & left) == 0 ? 10 * Work.SET_PARKING.seconds() : 0;
        }
        return (released & left) != 0 ? 10 * Work.RELEASE_PARKING.seconds() : 0;
    }

    private int supply(Situation now, long left) {
        int charge = 10 * Work.OPEN_TRAILER_SUPPLY.seconds();
        if (!now.has(Aspect.TRAILER_SUPPLY)) {
            return (open & left) != 0 ? charge : 0;
        }
        boolean closes = (closed & left) != 0 && (pops & left) == 0;
        return closes ? 10 * Work.CLOSE_TRAILER_SUPPLY.seconds() + charge : 0;
    }
}
