package org.fandown.reference.rulebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.fandown.check.PlaceCode;
import org.fandown.judgement.Status;

/**
 * One row of a table of boundary triples.
 *
 * @param rule id of the rule
 * @param alone whether the rule is judged apart from the rules of its place, because there another
 *     rule is applied in its stead, disagrees with it, or it is no longer in force
 * @param on the day
 * @param vehicle name of the test vehicle
 * @param beside what else is noted, and what differs from the test vehicle
 * @param values just below the edge, at it, just above it
 * @param expected what the judge has to say of each
 * @param where work and section the figures were typed from
 */
record Triple(
        String rule,
        boolean alone,
        LocalDate on,
        String vehicle,
        Map<String, String> beside,
        List<String> values,
        List<Status> expected,
        String where) {

    /** The place of the rule: the first part of its id. */
    PlaceCode place() {
        String prefix = rule.substring(0, rule.indexOf('.'));
        return new PlaceCode(prefix.toUpperCase(java.util.Locale.ROOT));
    }

    /** The value at the edge. */
    String at() {
        return values.get(1);
    }

    /** Whether the edge is a least value: what is below it fails. */
    boolean isLowerEdge() {
        return expected.get(0) != Status.MET;
    }

    @Override
    public String toString() {
        return rule + " at " + at() + (beside.isEmpty() ? "" : " with " + beside);
    }
}
