package org.fandown.procedure;

import java.util.List;
import org.fandown.check.Check;

/** Which items of a problem have to be done before each. */
final class Turns {
    private Turns() {}

    /** The items before each item, as bits. */
    static long[] needed(Problem problem) {
        List<Step> items = problem.items();
        long[] masks = new long[items.size()];
        for (Precedence order : problem.precedences()) {
            for (int i = 0; i < masks.length; i++) {
                boolean second = is(items.get(i), order.second());
                masks[i] |= second ? mask(items, order.first()) : 0;
            }
        }
        int last = -1;
        int works = problem.checks().size();
        for (Step step : problem.followed()) {
            int at = step instanceof WorkStep ? works++ : items.indexOf(step);
            if (at >= 0) {
                masks[at] |= last >= 0 ? 1L << last : 0;
                last = at;
            }
        }
        return masks;
    }

    private static boolean is(Step item, Check check) {
        return item instanceof CheckStep step && step.check() == check;
    }

    private static long mask(List<Step> items, Check check) {
        long mask = 0;
        for (int i = 0; i < items.size(); i++) {
            mask |= is(items.get(i), check) ? 1L << i : 0;
        }
        return mask;
    }
}
