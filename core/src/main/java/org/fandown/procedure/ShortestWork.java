package org.fandown.procedure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the fewest works after which something is possible, level by level. */
final class ShortestWork {
    private final Course course;
    private final List<WorkStep> works;

    ShortestWork(Course course, List<WorkStep> works) {
        this.course = course;
        this.works = works;
    }

    /** The works, empty if no way of at most so many works leads there. */
    List<WorkStep> to(Situation from, List<Need> needs, int most) {
        List<WorkStep> useful = new Useful(course.durations(), works, from, needs).works();
        Map<Situation, List<WorkStep>> level = new LinkedHashMap<>();
        Map<Situation, Boolean> seen = new LinkedHashMap<>();
        level.put(from, List.of());
        seen.put(from, true);
        for (int count = 0; count < most; count++) {
            Map<Situation, List<WorkStep>> next = new LinkedHashMap<>();
            for (Map.Entry<Situation, List<WorkStep>> entry : level.entrySet()) {
                goOn(entry.getKey(), entry.getValue(), useful, seen, next);
            }
            for (Map.Entry<Situation, List<WorkStep>> entry : next.entrySet()) {
                if (Moves.allMet(needs, entry.getKey())) {
                    return entry.getValue();
                }
            }
            level = next;
        }
        return List.of();
    }

    private void goOn(
            Situation now,
            List<WorkStep> way,
            List<WorkStep> useful,
            Map<Situation, Boolean> seen,
            Map<Situation, List<WorkStep>> next) {
        for (WorkStep work : useful) {
            if (Moves.allMet(work.needs(), now)) {
                Course.Outcome outcome = course.take(now, work);
                boolean fresh = outcome.all() < Durations.NEVER;
                if (fresh && seen.putIfAbsent(outcome.after(), true) == null) {
                    List<WorkStep> longer = new ArrayList<>(way);
                    longer.add(work);
                    next.put(outcome.after(), longer);
                }
            }
        }
    }
}
