package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;

/**
 * An order of checks that a text asks for or prints.
 *
 * @param force whether another order is against the rule
 * @param turns the checks in their turn; those of one turn come in any order among themselves
 */
public record TestOrder(Force force, List<List<Check>> turns) {
    /** What an order asks of those who work. */
    public enum Force {
        /** The text asks for this order; another is against the rule. */
        BINDING("binding order"),
        /** The text takes the checks in this order and does not ask for it. */
        PRINTED("printed order");

        private final String title;

        Force(String title) {
            this.title = title;
        }

        /** What a person calls it, without a capital. */
        public String title() {
            return title;
        }
    }

    /** Copies the lists. */
    public TestOrder {
        List<List<Check>> copies = new ArrayList<>();
        turns.forEach(turn -> copies.add(List.copyOf(turn)));
        turns = List.copyOf(copies);
    }

    /** All its checks, in the order in which they are written. */
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        turns.forEach(checks::addAll);
        return checks;
    }

    /** Whether it puts the first check before the second. */
    boolean puts(Check first, Check second) {
        int one = turn(first);
        int other = turn(second);
        return one >= 0 && one < other;
    }

    private int turn(Check check) {
        for (int i = 0; i < turns.size(); i++) {
            if (turns.get(i).contains(check)) {
                return i;
            }
        }
        return -1;
    }

    /** In words: {@code build-up time; then governor cut-out; then ...}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (List<Check> turn : turns) {
            text.append(text.length() == 0 ? "" : "; then ");
            for (int i = 0; i < turn.size(); i++) {
                text.append(i == 0 ? "" : " and ");
                text.append(Texts.lowerFirst(turn.get(i).title()));
            }
        }
        return text.toString();
    }
}
