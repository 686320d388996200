package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;

/** What can be done in each situation, with what comes of it; worked out once. */
final class Moves {
    /** Numbers that describe one move: which choice, the situation after it, its cost. */
    static final int WIDTH = 3;

    private final Problem problem;
    private final List<Step> choices;
    private final LongTable index = new LongTable(1 << 10);
    private final List<int[]> moves = new ArrayList<>();

    Moves(Problem problem, List<Step> choices) {
        this.problem = problem;
        this.choices = choices;
    }

    /** The moves from a situation, {@link #WIDTH} numbers each. */
    int[] from(int code) {
        int at = index.find(code);
        if (at < 0) {
            at = moves.size();
            index.improves(code, at);
            moves.add(find(new Situation(code)));
        }
        return moves.get(at);
    }

    private int[] find(Situation now) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < choices.size(); i++) {
            Step step = choices.get(i);
            if (allMet(step.needs(), now)) {
                Course.Outcome outcome = problem.course().take(now, step);
                boolean check = i < problem.items().size();
                boolean idle = !check && outcome.after().equals(now);
                if (outcome.all() < Durations.NEVER && !idle) {
                    found.add(i);
                    found.add(outcome.after().code());
                    found.add(problem.cost(step, outcome));
                }
            }
        }
        int[] numbers = new int[found.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = found.get(i);
        }
        return numbers;
    }

    static boolean allMet(List<Need> needs, Situation situation) {
        for (Need need : needs) {
            if (!need.isMetBy(situation)) {
                return false;
            }
        }
        return true;
    }
}
