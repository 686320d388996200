package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;

/**
 * All situations that can be reached whatever was checked, numbered from the opened one, which is
 * 0, with the moves from and to each. A move is three numbers: which choice, the situation at its
 * other end, and its time beyond the least time of the check; work has no least time.
 */
final class Reachable {
    private final Problem problem;
    private final List<Step> choices;
    private final LongTable numbers = new LongTable(1 << 12);
    private final List<Situation> situations = new ArrayList<>();
    private final int[][] from;
    private final int[][] to;
    private final int[] least;
    private final int[] home;

    Reachable(Problem problem) {
        this.problem = problem;
        choices = new ArrayList<>(problem.items());
        choices.addAll(problem.works());
        least = new int[problem.items().size()];
        from = explore();
        to = turned();
        home = new int[situations.size()];
        for (int i = 0; i < home.length; i++) {
            Situation now = situations.get(i);
            boolean done = Moves.allMet(problem.finish(), now);
            home[i] = done ? problem.course().durations().walk(now.spot(), Spot.CAB) : -1;
        }
    }

    private int[][] explore() {
        Moves moves = new Moves(problem, choices);
        List<int[]> found = new ArrayList<>();
        for (int i = 0; i < least.length; i++) {
            least[i] = Durations.NEVER;
        }
        number(problem.opened().code());
        for (int at = 0; at < situations.size(); at++) {
            int[] list = moves.from(situations.get(at).code()).clone();
            for (int j = 0; j < list.length; j += Moves.WIDTH) {
                list[j + 1] = number(list[j + 1]);
                if (list[j] < least.length) {
                    least[list[j]] = Math.min(least[list[j]], list[j + 2]);
                }
            }
            found.add(list);
        }
        for (int[] list : found) {
            for (int j = 0; j < list.length; j += Moves.WIDTH) {
                list[j + 2] -= list[j] < least.length ? least[list[j]] : 0;
            }
        }
        return found.toArray(new int[0][]);
    }

    private int number(int code) {
        int at = numbers.find(code);
        if (at < 0) {
            at = situations.size();
            numbers.improves(code, at);
            situations.add(new Situation(code));
        }
        return at;
    }

    /** The moves by their end instead of their beginning. */
    private int[][] turned() {
        int[] size = new int[from.length];
        for (int[] list : from) {
            for (int j = 0; j < list.length; j += Moves.WIDTH) {
                size[list[j + 1]] += Moves.WIDTH;
            }
        }
        int[][] turned = new int[from.length][];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = new int[size[i]];
        }
        for (int i = 0; i < from.length; i++) {
            for (int j = 0; j < from[i].length; j += Moves.WIDTH) {
                int end = from[i][j + 1];
                size[end] -= Moves.WIDTH;
                turned[end][size[end]] = from[i][j];
                turned[end][size[end] + 1] = i;
                turned[end][size[end] + 2] = from[i][j + 2];
            }
        }
        return turned;
    }

    int count() {
        return situations.size();
    }

    Step choice(int i) {
        return choices.get(i);
    }

    /** The moves from a situation, or those that lead to it. */
    int[] moves(int situation, boolean forward) {
        return forward ? from[situation] : to[situation];
    }

    /** Least time of a check wherever it is made; {@link Durations#NEVER} if it cannot be made. */
    int least(int check) {
        return least[check];
    }

    /** Time from a situation into the cab, tenths of a second; -1 if the end is not reached. */
    int home(int situation) {
        return home[situation];
    }
}
