package org.fandown.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fandown.record.BrakingSummary.Line;

/**
 * A braking summary as a table: a row for each thing estimated, a column for each state of the
 * drums.
 */
public final class BrakingTable {
    private static final String NOT_KNOWN = "not known";

    private final Set<String> states = new LinkedHashSet<>();
    private final Map<String, Map<String, Line>> rows = new LinkedHashMap<>();

    /** The table of a summary. */
    public BrakingTable(BrakingSummary summary) {
        for (Line line : summary.lines()) {
            states.add(line.drums());
            rows.computeIfAbsent(line.what(), w -> new LinkedHashMap<>()).put(line.drums(), line);
        }
    }

    /** The states of the drums: {@code cold}, {@code at 400 F}. */
    public List<String> states() {
        return List.copyOf(states);
    }

    /** The things of which something is known in some state. */
    public List<String> things() {
        return rows.keySet().stream().filter(thing -> !isUnknown(thing)).toList();
    }

    /** What is estimated of a thing in a state, a dash if nothing. */
    public String value(String thing, String state) {
        Line line = row(thing).get(state);
        return line == null ? "\u2013" : line.value();
    }

    private Map<String, Line> row(String thing) {
        return rows.getOrDefault(thing, new LinkedHashMap<>());
    }

    private boolean isUnknown(String thing) {
        return row(thing).values().stream().allMatch(line -> line.value().equals(NOT_KNOWN));
    }

    /** The remarks, each once, with the things and states it is about. */
    public List<String> remarks() {
        Map<String, Set<String>> about = new LinkedHashMap<>();
        rows.forEach(
                (thing, row) ->
                        byRemark(row)
                                .forEach(
                                        (remark, in) ->
                                                about.computeIfAbsent(
                                                                remark, r -> new LinkedHashSet<>())
                                                        .add(subject(thing, row, in))));
        List<String> remarks = new ArrayList<>();
        about.forEach((remark, subjects) -> remarks.add(sentence(remark, subjects)));
        return remarks;
    }

    private static Map<String, List<String>> byRemark(Map<String, Line> row) {
        Map<String, List<String>> byRemark = new LinkedHashMap<>();
        row.forEach(
                (state, line) -> {
                    if (!line.remark().isEmpty()) {
                        byRemark.computeIfAbsent(line.remark(), r -> new ArrayList<>()).add(state);
                    }
                });
        return byRemark;
    }

    private String subject(String thing, Map<String, Line> row, List<String> in) {
        String lead = isUnknown(thing) ? thing + " not known" : thing;
        boolean everywhere = in.size() == row.size();
        return everywhere ? lead : lead + " (" + String.join(", ", in) + ")";
    }

    private static String sentence(String remark, Set<String> subjects) {
        return capital(String.join(", ", subjects)) + ": " + remark + ".";
    }

    private static String capital(String text) {
        char first = text.charAt(0);
        boolean small = first >= 'a' && first <= 'z';
        return small ? (char) (first - 'a' + 'A') + text.substring(1) : text;
    }
}
