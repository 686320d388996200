package org.fandown.procedure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Finds which works can be of use on the way from a situation to a step. */
final class Useful {
    private final Durations durations;
    private final List<WorkStep> all;
    private final Situation from;
    private final List<Need> target;
    private final List<WorkStep> chosen = new ArrayList<>();
    private final Set<Aspect> broken = EnumSet.noneOf(Aspect.class);

    Useful(Durations durations, List<WorkStep> all, Situation from, List<Need> target) {
        this.durations = durations;
        this.all = all;
        this.from = from;
        this.target = target;
    }

    /** The works, in their order. */
    List<WorkStep> works() {
        boolean more = true;
        while (more) {
            more = choose(target);
            for (WorkStep work : List.copyOf(chosen)) {
                more |= choose(work.needs());
            }
        }
        List<WorkStep> works = new ArrayList<>();
        for (WorkStep work : all) {
            if (chosen.contains(work)) {
                works.add(work);
            }
        }
        return works;
    }

    /** Adds the works that serve needs which do not hold or may cease to; answers if any is new. */
    private boolean choose(List<Need> needs) {
        boolean any = false;
        for (Need need : needs) {
            if (!need.isMetBy(from) || broken.contains(need.aspect())) {
                for (WorkStep work : all) {
                    boolean serves = Purpose.serves(work, need, durations);
                    if (serves && !chosen.contains(work)) {
                        chosen.add(work);
                        broken.addAll(Purpose.breaks(work.work()));
                        any = true;
                    }
                }
            }
        }
        return any;
    }
}
