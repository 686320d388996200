package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.check.CheckKind;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Ruling;

/**
 * Findings that are printed together: those of one rule with one status, at one or more wheels.
 *
 * @param ruling the rule
 * @param status the status
 * @param findings the findings, at least one
 */
record Row(Ruling ruling, Status status, List<Finding> findings) {
    private static final List<Status> WORST_FIRST =
            List.of(
                    Status.NOT_MET,
                    Status.UNDETERMINED,
                    Status.SPOILED,
                    Status.NOT_CHECKED,
                    Status.MET,
                    Status.NOT_APPLICABLE);
    private static final int MANY = 2;
    private static final String RULE_TEXT = " Rule: ";

    /** The rows of a judgement: what decides before what does not, the worst first. */
    static List<Row> of(List<Finding> findings) {
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Finding finding : findings) {
            String key = finding.ruling().rule().id() + " " + finding.status();
            rows.computeIfAbsent(
                            key,
                            k -> new Row(finding.ruling(), finding.status(), new ArrayList<>()))
                    .findings()
                    .add(finding);
        }
        List<Row> sorted = new ArrayList<>(rows.values());
        sorted.removeIf(row -> row.status() == Status.NOT_APPLICABLE);
        sorted.sort(
                Comparator.comparing((Row row) -> !row.decides())
                        .thenComparing(row -> WORST_FIRST.indexOf(row.status())));
        return sorted;
    }

    Rule rule() {
        return ruling.rule();
    }

    boolean decides() {
        return ruling.decides();
    }

    CheckKind kind() {
        return rule().check().kind();
    }

    boolean isFromMemory() {
        return rule().provenance() == Provenance.FROM_MEMORY;
    }

    /**
     * Whether the row has a line of the table; otherwise it is in a list below it. Strokes that are
     * in order stand in the diagram of the axles.
     */
    boolean isLine() {
        boolean figure =
                kind() != CheckKind.WHEEL_VALUE
                        && findings.stream().anyMatch(f -> f.measured().isPresent());
        return decides()
                && switch (status) {
                    case NOT_MET, UNDETERMINED, SPOILED -> true;
                    case MET -> figure;
                    case NOT_CHECKED, NOT_APPLICABLE -> false;
                };
    }

    /** The wheels, {@code 2L 3R}, or axles where ends are compared; empty for the vehicle. */
    String where() {
        boolean axles = kind() == CheckKind.AXLE_MATCH;
        if (!axles && findings.size() > MANY && findings.size() == ruling.wheels().size()) {
            return "all " + findings.size() + " wheels";
        }
        List<String> places =
                findings.stream()
                        .flatMap(finding -> finding.wheel().stream())
                        .map(wheel -> axles ? "" + wheel.axle() : wheel.toString())
                        .toList();
        String lead = !axles || places.isEmpty() ? "" : places.size() == 1 ? "axle " : "axles ";
        return lead + String.join(" ", places);
    }

    /** The reason of a finding, without the text of the rule. */
    static String reason(Finding finding) {
        String reason = finding.why().reason();
        int at = reason.indexOf(RULE_TEXT);
        return at < 0 ? reason : reason.substring(0, at);
    }
}
