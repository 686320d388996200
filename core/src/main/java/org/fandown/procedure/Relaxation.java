package org.fandown.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The problem with only some of its checks counted: those have to be made once each; the others may
 * be made never or over and over, and cost only what they take beyond their least time. Every true
 * order is an order here as well, and none costs more here; so the quickest is a bound.
 *
 * <p>Searched from one end by A*. What is left to the other end is bounded by a relaxation with
 * fewer checks that was searched from that other end: its least times are exact for the fewer
 * checks, so they never exceed the true rest and never fall by more than a move takes. Whatever is
 * closed here therefore has its least time. An entry that is not closed there up to a time lies on
 * no order up to that time; it waits.
 */
final class Relaxation {
    private static final int NONE = -1;
    private static final int NO_CHOICE = 255;

    private final Reachable ways;
    private final long[] needed;
    private final long counted;
    private final boolean forward;
    private final @Nullable Relaxation fewer;
    private final Entries entries;
    private final Buckets open = new Buckets();
    private final Waiting waiting = new Waiting();
    private @Nullable Relaxation more;
    private long end = NONE;
    private int looked;

    /**
     * A relaxation.
     *
     * @param needed checks to be made before each, as bits
     * @param counted the checks counted, as bits
     * @param forward whether it is searched from the beginning
     * @param fewer a relaxation of fewer checks searched from the other end, null for no bound
     */
    Relaxation(
            Reachable ways,
            long[] needed,
            long counted,
            boolean forward,
            @Nullable Relaxation fewer) {
        this.ways = ways;
        this.needed = needed;
        this.counted = counted;
        this.forward = forward;
        this.fewer = fewer;
        if (fewer != null) {
            fewer.more = this;
        }
        entries = new Entries(ways.count());
        for (int i = 0; i < (forward ? 1 : ways.count()); i++) {
            if (forward) {
                reach(entries.number(0), bound(0), i, 0, 0, NO_CHOICE);
            } else if (ways.home(i) >= 0) {
                reach(entries.number(counted), bound(counted), i, ways.home(i), 0, NO_CHOICE);
            }
        }
    }

    long counted() {
        return counted;
    }

    boolean isForward() {
        return forward;
    }

    int looked() {
        return looked;
    }

    /** Whether its quickest order is found, and nothing still open can be quicker. */
    boolean isDone() {
        return end != NONE && next() >= time();
    }

    /** The time of the quickest order found, beyond the least times of all checks. */
    int time() {
        return entries.time(end) + (forward ? ways.home(entries.situation(end)) : 0);
    }

    /** A time below which nothing is left to look at, the greatest number if nothing is at all. */
    int next() {
        return open.isEmpty() ? Integer.MAX_VALUE : (int) (open.least() >>> Entries.BITS);
    }

    /** Looks at all that can lie on an order up to a time; at least until it is done if asked. */
    void raise(int time, boolean untilDone) {
        while (next() <= time && !(untilDone && isDone())) {
            long entry = open.remove() & ((1L << Entries.BITS) - 1);
            if (!entries.isClosed(entry)) {
                close(entry);
            }
        }
    }

    private void close(long entry) {
        entries.close(entry);
        looked++;
        if (more != null) {
            more.wake(entry, entries.time(entry));
        }
        int at = entries.situation(entry);
        long made = entries.made(entry);
        boolean ends = forward ? made == counted && ways.home(at) >= 0 : made == 0 && at == 0;
        if (ends && (end == NONE || worth(entry) < time())) {
            end = entry;
        }
        int number = entries.numberOf(entry);
        int bound = bound(made);
        int time = entries.time(entry);
        int[] moves = ways.moves(at, forward);
        for (int j = 0; j < moves.length; j += Moves.WIDTH) {
            long then = then(made, moves[j]);
            if (then == made) {
                reach(number, bound, moves[j + 1], time + moves[j + 2], at, moves[j]);
            } else if (then >= 0) {
                int other = entries.number(then);
                reach(other, bound(then), moves[j + 1], time + moves[j + 2], at, moves[j]);
            }
        }
    }

    /** The number under which the relaxation of fewer checks has these checks. */
    private int bound(long made) {
        return fewer == null ? NONE : fewer.entries.number(made & fewer.counted);
    }

    private int worth(long entry) {
        return entries.time(entry) + (forward ? ways.home(entries.situation(entry)) : 0);
    }

    /** The checks made at the other end of a move, -1 if it cannot be taken. */
    private long then(long made, int choice) {
        if (choice >= needed.length || (counted >> choice & 1) == 0) {
            return made;
        }
        long then = made ^ 1L << choice;
        long less = made & then;
        boolean inTurn = (needed[choice] & counted & ~less) == 0;
        return (forward ? less == made : less == then) && inTurn ? then : -1;
    }

    private void reach(int number, int bound, int at, int cost, int from, int choice) {
        long entry = entries.entry(number, at);
        boolean known = entries.isKnown(entry);
        if (!entries.reach(entry, cost, from, choice)) {
            return;
        }
        if (fewer == null) {
            queue(entry, 0);
            return;
        }
        int rest = fewer.entries.closedTime(bound, at);
        if (rest >= 0) {
            queue(entry, rest);
        } else if (!known) {
            waiting.add(fewer.entries.entry(bound, at), entry);
        }
    }

    /** Queues what waited for an entry of the relaxation of fewer checks, now that it is closed. */
    private void wake(long closed, int rest) {
        for (int i = waiting.first(closed); i != 0; i = waiting.next(i)) {
            queue(waiting.entry(i), rest);
        }
    }

    private void queue(long entry, int rest) {
        open.add(((long) (entries.time(entry) + rest) << Entries.BITS) | entry);
    }

    /** The least time to the end this is searched from, -1 if it is not known yet. */
    int rest(long made, int at) {
        return entries.closedTime(entries.find(made & counted), at);
    }

    /** The choices of the quickest order. */
    List<Integer> order() {
        List<Integer> order = new ArrayList<>();
        for (long e = end; entries.by(e) != NO_CHOICE; e = before(e)) {
            order.add(entries.by(e));
        }
        if (forward) {
            Collections.reverse(order);
        }
        return order;
    }

    private long before(long entry) {
        int by = entries.by(entry);
        long made = entries.made(entry);
        long check = by < needed.length ? counted & (1L << by) : 0;
        return entries.entry(entries.find(made ^ check), entries.from(entry));
    }

    /** The least time of an order of these checks in which each other check is made somewhere. */
    int[] through() {
        int[] least = new int[needed.length];
        Arrays.fill(least, Integer.MAX_VALUE);
        for (long e = entries.closed(0); e >= 0; e = entries.closed(e + 1)) {
            int[] moves = ways.moves(entries.situation(e), forward);
            for (int j = 0; j < moves.length; j += Moves.WIDTH) {
                boolean other = moves[j] < needed.length && (counted >> moves[j] & 1) == 0;
                int rest = other && fewer != null ? fewer.rest(entries.made(e), moves[j + 1]) : -1;
                if (rest >= 0) {
                    int time = entries.time(e) + moves[j + 2] + rest;
                    least[moves[j]] = Math.min(least[moves[j]], time);
                }
            }
        }
        return least;
    }
}
