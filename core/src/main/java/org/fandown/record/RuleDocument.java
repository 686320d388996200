package org.fandown.record;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.rulebook.Demand;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Ruling;
import org.fandown.rulebook.TestOrder;

/** A rule in force as a document. */
final class RuleDocument {
    private RuleDocument() {}

    static MapNode of(Ruling ruling) {
        Rule rule = ruling.rule();
        Tree.MapBuilder map =
                Tree.map()
                        .put("check", rule.check().id())
                        .put("rule", rule.id())
                        .put("place", rule.place().code())
                        .put("title", rule.title())
                        .put("limit", LimitDocument.printed(ruling.limit()));
        rule.method().window().ifPresent(w -> map.put("window", w.toString()));
        Tree.ListBuilder demands = Tree.list();
        for (Demand demand : rule.method().demands()) {
            demands.add(demand.toString());
        }
        map.put("conditions", demands);
        if (ruling.limit() instanceof Limit.Duty duty) {
            orders(map, duty);
        }
        weight(map, rule);
        ruling.value().from().ifPresent(day -> map.put("in-force-from", day.toString()));
        map.put("source", ruling.value().source().toString())
                .put("provenance", rule.provenance())
                .put("last-checked", rule.verifiedOn().toString());
        text(map, "words", rule.words());
        text(map, "note", rule.note());
        text(map, "why", rule.kinship().why());
        text(map, "applies-if", ruling.fit().missing());
        return map.build();
    }

    private static void orders(Tree.MapBuilder map, Limit.Duty duty) {
        for (TestOrder order : duty.orders()) {
            Tree.ListBuilder turns = Tree.list();
            order.turns().forEach(turn -> turns.add(ids(turn)));
            boolean binding = order.force() == TestOrder.Force.BINDING;
            map.put(binding ? "binding-order" : "printed-order", turns);
        }
        if (!duty.concerns().isEmpty()) {
            map.put("concerns", ids(duty.concerns()));
        }
    }

    private static Tree.ListBuilder ids(List<Check> checks) {
        Tree.ListBuilder list = Tree.list();
        checks.forEach(check -> list.add(check.id()));
        return list;
    }

    static void weight(Tree.MapBuilder map, Rule rule) {
        map.put("standing", rule.weight().standing())
                .put("evidence", rule.weight().evidence())
                .put("severity", Names.kebab(rule.weight().severity()));
        if (rule.weight().outOfService()) {
            map.put("out-of-service", true);
        }
        if (rule.weight().approximate()) {
            map.put("approximate", true);
        }
    }

    private static void text(Tree.MapBuilder map, String key, String text) {
        if (!text.isBlank()) {
            map.put(key, text.strip());
        }
    }
}
