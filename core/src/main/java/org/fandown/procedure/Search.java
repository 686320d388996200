package org.fandown.procedure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Finds the quickest order by A*: always goes on from the beginning whose time so far and {@link
 * Floor} together are least, so the first complete order it meets is the quickest there is. Equal
 * ones are told apart by the order in which they were met; the same problem gives the same plan.
 */
final class Search {
    private static final int SITUATION_BITS = 22;
    private static final long FINISHED = -1;

    private final Problem problem;
    private final Floor floor;
    private final Moves moves;
    private final List<Step> items;
    private final List<Step> choices;
    private final long[] needed;
    private final LongTable best = new LongTable(1 << 12);
    private final PriorityQueue<Node> open = new PriorityQueue<>(Search::compare);
    private long met;

    Search(Problem problem) {
        this.problem = problem;
        items = problem.items();
        choices = new ArrayList<>(items);
        choices.addAll(problem.works());
        floor = new Floor(problem);
        moves = new Moves(problem, choices);
        needed = Turns.needed(problem);
    }

    /** One beginning of an order; {@code by} is the last choice, -1 for none. */
    private record Node(
            int code, long done, int cost, int bound, long number, @Nullable Node before, int by) {}

    private static int compare(Node a, Node b) {
        if (a.bound != b.bound) {
            return Integer.compare(a.bound, b.bound);
        }
        if (a.cost != b.cost) {
            return Integer.compare(b.cost, a.cost);
        }
        return Long.compare(a.number, b.number);
    }

    /** The quickest order, empty if there is none. */
    Optional<List<Step>> quickest() {
        add(problem.opened().code(), 0, 0, null, -1);
        while (!open.isEmpty()) {
            Node node = open.remove();
            if (node.done == FINISHED) {
                return Optional.of(steps(node));
            }
            if (node.cost <= best.cost(key(node.code, node.done))) {
                goOn(node);
            }
        }
        return Optional.empty();
    }

    /** How many situations were looked at. */
    int seen() {
        return best.size();
    }

    private List<Step> steps(Node last) {
        List<Step> steps = new ArrayList<>();
        for (Node node = last; node != null; node = node.before) {
            if (node.by >= 0) {
                steps.add(choices.get(node.by));
            }
        }
        Collections.reverse(steps);
        steps.addAll(0, problem.opening());
        return steps;
    }

    private void goOn(Node node) {
        if (node.done == (1L << items.size()) - 1) {
            finish(node);
        }
        int[] found = moves.from(node.code);
        for (int at = 0; at < found.length; at += Moves.WIDTH) {
            int choice = found[at];
            int cost = node.cost + found[at + 2];
            if (choice >= items.size()) {
                add(found[at + 1], node.done, cost, node, choice);
            } else if ((node.done >> choice & 1) == 0 && (needed[choice] & ~node.done) == 0) {
                add(found[at + 1], node.done | 1L << choice, cost, node, choice);
            }
        }
    }

    /** The end has to be reached in the cab. */
    private void finish(Node node) {
        Situation now = new Situation(node.code);
        if (Moves.allMet(problem.finish(), now)) {
            int walk = problem.course().durations().walk(now.spot(), Spot.CAB);
            int cost = node.cost + walk;
            open.add(new Node(node.code, FINISHED, cost, cost, met++, node, -1));
        }
    }

    private void add(int code, long done, int cost, @Nullable Node before, int by) {
        if (best.improves(key(code, done), cost)) {
            int bound = cost + floor.of(new Situation(code), done);
            if (bound < Durations.NEVER) {
                open.add(new Node(code, done, cost, bound, met++, before, by));
            }
        }
    }

    private static long key(int code, long done) {
        return done << SITUATION_BITS | code;
    }
}
