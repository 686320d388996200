package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.rulebook.TestOrder.Force;

/**
 * Refuses orders of one pack that no work can keep: a binding order that leads, together with
 * others, from a check back to itself, and a printed order that goes against a binding one.
 *
 * <p>Rules for the same vehicles are compared, and each with those that hold for all vehicles; two
 * rules with different {@code applies} may be for vehicles that are never the same. Of dated values
 * the last is looked at.
 */
final class OrderCheck {
    /** An order with its rule and the vehicles it is for, as written; empty for all. */
    private record Known(String rule, String applies, TestOrder order, Fields limit) {
        boolean meets(Known other) {
            return applies.isEmpty() || other.applies.isEmpty() || applies.equals(other.applies);
        }
    }

    private final List<Known> known = new ArrayList<>();

    /** Takes in the orders of a rule; {@code fields} are the rule's. */
    void add(Rule rule, Fields fields) {
        if (!(rule.values().get(rule.values().size() - 1).limit() instanceof Limit.Duty duty)) {
            return;
        }
        String applies =
                fields.has("applies") ? Json.writeCompact(fields.fields("applies").map()) : "";
        for (TestOrder order : duty.orders()) {
            known.add(new Known(rule.id(), applies, order, limit(fields)));
        }
    }

    private static Fields limit(Fields fields) {
        if (fields.has("limit")) {
            return fields.fields("limit");
        }
        List<Node> values = fields.list("values");
        return Fields.of(values.get(values.size() - 1)).fields("limit");
    }

    /** Refuses the first order, from the top, that cannot be kept beside the others. */
    void check() {
        List<Known> binding = new ArrayList<>();
        for (Known one : known) {
            if (one.order.force() == Force.BINDING) {
                refuseAgainst(one, binding);
                binding.add(one);
            }
        }
        for (Known one : known) {
            if (one.order.force() == Force.PRINTED) {
                refuseAgainst(one, binding);
            }
        }
    }

    private static void refuseAgainst(Known one, List<Known> binding) {
        List<Known> others = binding.stream().filter(one::meets).toList();
        List<Check> checks = one.order.checks();
        for (Check first : checks) {
            for (Check second : checks) {
                if (one.order.puts(first, second)) {
                    leads(second, first, others, new ArrayList<>())
                            .ifPresent(
                                    by -> {
                                        throw refused(one, first, second, by);
                                    });
                }
            }
        }
    }

    /** The first order on a way from one check to another, empty if there is no way. */
    private static Optional<Known> leads(
            Check from, Check to, List<Known> orders, List<Check> seen) {
        seen.add(from);
        for (Known known : orders) {
            for (Check next : known.order.checks()) {
                boolean arrives = known.order.puts(from, next) && !seen.contains(next);
                if (arrives && (next == to || leads(next, to, orders, seen).isPresent())) {
                    return Optional.of(known);
                }
            }
        }
        return Optional.empty();
    }

    private static RuntimeException refused(Known one, Check first, Check second, Known by) {
        boolean binding = one.order.force() == Force.BINDING;
        return one.limit.refuse(
                binding ? TestOrderReader.BINDING : TestOrderReader.PRINTED,
                "puts "
                        + first.id()
                        + " before "
                        + second.id()
                        + ", but the binding order of "
                        + by.rule
                        + " leads from "
                        + second.id()
                        + " to "
                        + first.id(),
                "orders that can be kept together",
                "Correct one of the two, or say with applies which vehicles each is for.");
    }
}
