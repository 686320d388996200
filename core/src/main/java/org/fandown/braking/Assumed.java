package org.fandown.braking;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Collects the assumptions an estimate uses, as it uses them. */
final class Assumed {
    private final EnumSet<Assumption> used = EnumSet.noneOf(Assumption.class);

    /** Notes that a number is used and returns it. */
    double use(Assumption assumption) {
        used.add(assumption);
        return assumption.number();
    }

    /** Notes that a statement is relied on. */
    void note(Assumption assumption) {
        used.add(assumption);
    }

    Set<Assumption> all() {
        return Collections.unmodifiableSet(EnumSet.copyOf(used));
    }
}
