package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.document.Fields;
import org.fandown.document.ListNode;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.rulebook.TestOrder.Force;

/** Reads the orders of checks that a duty asks for or prints, and the checks a method is about. */
final class TestOrderReader {
    static final String BINDING = "binding-order";
    static final String PRINTED = "printed-order";
    private static final String CONCERNS = "concerns";

    private TestOrderReader() {}

    static List<TestOrder> orders(Fields fields, Check check) {
        List<TestOrder> orders = new ArrayList<>();
        for (Force force : Force.values()) {
            String key = force == Force.BINDING ? BINDING : PRINTED;
            if (fields.has(key)) {
                fits(fields, key, check == Check.TEST_ORDER, "test-order");
                orders.add(new TestOrder(force, turns(fields, key)));
            }
        }
        return orders;
    }

    static List<Check> concerns(Fields fields, Check check) {
        if (!fields.has(CONCERNS)) {
            return List.of();
        }
        boolean method = check == Check.TEST_METHOD || check == Check.ADJUSTER_CARE;
        fits(fields, CONCERNS, method, "test-method, adjuster-care");
        List<Check> checks = new ArrayList<>();
        for (Node node : fields.list(CONCERNS)) {
            checks.add(fresh(node, checks));
        }
        if (checks.isEmpty()) {
            throw fields.refuse(
                    CONCERNS, "names no check", "at least one check", "Name one, or remove it.");
        }
        return checks;
    }

    private static void fits(Fields fields, String key, boolean fits, String checks) {
        if (!fits) {
            throw fields.refuseKey(
                    key,
                    "does not fit the check of this rule",
                    key + " in rules about " + checks,
                    "Remove it, or correct the check.");
        }
    }

    private static List<List<Check>> turns(Fields fields, String key) {
        List<List<Check>> turns = new ArrayList<>();
        List<Check> all = new ArrayList<>();
        for (Node node : fields.list(key)) {
            List<Check> turn = new ArrayList<>();
            for (Node item : node instanceof ListNode list ? list.items() : List.of(node)) {
                Check check = fresh(item, all);
                turn.add(check);
                all.add(check);
            }
            if (turn.isEmpty()) {
                throw Values.refuse(
                        node, "is an empty turn", "at least one check", "Name one, or remove it.");
            }
            turns.add(turn);
        }
        if (turns.size() < 2) {
            throw fields.refuse(
                    key,
                    "puts nothing before anything else",
                    "at least two turns, such as [governor-cut-out, air-loss-applied]",
                    "Add what comes after, or remove it.");
        }
        return turns;
    }

    private static Check fresh(Node node, List<Check> before) {
        Check check =
                Check.byId(Values.text(node))
                        .orElseThrow(
                                () ->
                                        Values.refuse(
                                                node,
                                                "is not a check this program knows",
                                                "a check id such as governor-cut-out",
                                                "See the list of checks in docs/rules.md."));
        if (check.kind() == CheckKind.DUTY || check.kind() == CheckKind.REPORT) {
            throw Values.refuse(
                    node,
                    "is about papers, not done at the vehicle",
                    "a check made at the vehicle, such as governor-cut-out",
                    "Name the check that is made, or remove it.");
        }
        if (before.contains(check)) {
            throw Values.refuse(node, "stands twice", "each check once", "Remove one of the two.");
        }
        return check;
    }
}
