package org.fandown.plot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Marks too close together to be told apart in a picture, under one number.
 *
 * @param number the number, from 1
 * @param marks the marks, in order of time
 */
public record MarkGroup(int number, List<Mark> marks) {
    /** Copies the marks. */
    public MarkGroup {
        marks = List.copyOf(marks);
    }

    /** Returns the time of the first mark. */
    public double seconds() {
        return marks.get(0).seconds();
    }

    /** Returns whether one of them is a hazard. */
    public boolean isHazard() {
        return marks.stream().anyMatch(mark -> mark.weight() == Mark.Weight.HAZARD);
    }

    /**
     * Returns the marks with equal texts made one, at the time of the first: {@code foot-brake: 100
     * %, 20 times until 15:36.0}.
     */
    public List<Mark> summed() {
        Map<String, List<Mark>> byText = new LinkedHashMap<>();
        for (Mark mark : marks) {
            byText.computeIfAbsent(mark.text(), text -> new ArrayList<>()).add(mark);
        }
        return byText.values().stream().map(MarkGroup::sum).toList();
    }

    private static Mark sum(List<Mark> equal) {
        Mark first = equal.get(0);
        if (equal.size() == 1) {
            return first;
        }
        String last = ClockText.tenths(equal.get(equal.size() - 1).seconds());
        String text = first.text() + ", " + equal.size() + " times until " + last;
        return new Mark(first.seconds(), text, first.weight());
    }

    /**
     * Groups marks.
     *
     * @param marks the marks, in order of time
     * @param apart time between the first marks of two groups, at least
     */
    static List<MarkGroup> of(List<Mark> marks, double apart) {
        List<MarkGroup> groups = new ArrayList<>();
        List<Mark> open = new ArrayList<>();
        for (Mark mark : marks) {
            if (!open.isEmpty() && mark.seconds() - open.get(0).seconds() >= apart) {
                groups.add(new MarkGroup(groups.size() + 1, open));
                open.clear();
            }
            open.add(mark);
        }
        if (!open.isEmpty()) {
            groups.add(new MarkGroup(groups.size() + 1, open));
        }
        return groups;
    }
}
