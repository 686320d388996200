package org.fandown.procedure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The needs of one step, one for each aspect. */
final class NeedBook {
    private final Map<Aspect, Need> byAspect = new EnumMap<>(Aspect.class);
    private boolean contradictory;

    /** Adds a need; where there is one of this aspect already, both have to hold. */
    void add(Need need) {
        Need held = byAspect.get(need.aspect());
        byAspect.put(need.aspect(), held == null ? need : both(held, need));
    }

    /** Puts a need in the place of another of its aspect. */
    void put(Need need) {
        byAspect.put(need.aspect(), need);
    }

    void remove(Aspect aspect) {
        byAspect.remove(aspect);
    }

    boolean has(Aspect aspect) {
        return byAspect.containsKey(aspect);
    }

    boolean asks(Aspect aspect, int value) {
        Need need = byAspect.get(aspect);
        return need != null && need.least() == value && need.most() == value;
    }

    /** Whether two needs cannot hold together. */
    boolean isContradictory() {
        return contradictory;
    }

    private Need both(Need first, Need second) {
        int least = Math.max(first.least(), second.least());
        int most = Math.min(first.most(), second.most());
        contradictory |= least > most;
        Need graver = second.weight().compareTo(first.weight()) < 0 ? second : first;
        boolean secondAsksMore = second.least() > first.least() || second.most() < first.most();
        String why = secondAsksMore ? second.why() : graver.why();
        return new Need(first.aspect(), least, most, graver.weight(), why);
    }

    /** The needs, gravest first. */
    List<Need> list() {
        List<Need> needs = new ArrayList<>(byAspect.values());
        needs.sort((a, b) -> a.weight().compareTo(b.weight()));
        return needs;
    }
}
