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
        return through(masks);
    }

    /** Adds what has to be done before what has to be done before. */
    private static long[] through(long[] masks) {
        for (int k = 0; k < masks.length; k++) {
            for (int i = 0; i < masks.length; i++) {
                masks[i] |= (masks[i] >> k & 1) != 0 ? masks[k] : 0;
            }
        }
        return masks;
    }

    /** How many different sets of items can have been done on the way, counted up to a number. */
    static int sets(long[] needed, int most) {
        LongTable known = new LongTable(1 << 6);
        long[] sets = new long[most];
        int count = 1;
        for (int at = 0; at < count; at++) {
            for (int i = 0; i < needed.length && count < most; i++) {
                long then = sets[at] | 1L << i;
                boolean inTurn = (needed[i] & ~sets[at]) == 0;
                if (inTurn && then != sets[at] && known.improves(then, 0)) {
                    sets[count++] = then;
                }
            }
        }
        return count;
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
