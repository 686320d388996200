package org.fandown.record;

import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.RulesInForce.Coverage;
import org.fandown.rulebook.SetAside;

/** The rules in force for a place, a vehicle and a day, as a document. */
public final class RulesDocument {
    private RulesDocument() {}

    /** The document. */
    public static MapNode of(RulesInForce rules) {
        Tree.ListBuilder list = Tree.list();
        rules.rulings().forEach(ruling -> list.add(RuleDocument.of(ruling)));
        return Tree.map()
                .put("format", "fandown-rules/1")
                .put("place", rules.place().code())
                .put("place-name", rules.lineage().get(0).name())
                .put("vehicle", rules.vehicle().name())
                .put("day", rules.day().toString())
                .put("rules", list)
                .put("set-aside", setAside(rules))
                .put("coverage", coverage(rules))
                .build();
    }

    static Tree.ListBuilder coverage(RulesInForce rules) {
        Tree.ListBuilder list = Tree.list();
        for (Coverage gap : rules.gaps()) {
            Tree.MapBuilder map = Tree.map().put("check", gap.check().id());
            gap.from().ifPresent(place -> map.put("covered-by", place.code()));
            list.add(map.put("says", gap.says()));
        }
        return list;
    }

    static Tree.ListBuilder setAside(RulesInForce rules) {
        Tree.ListBuilder list = Tree.list();
        for (SetAside aside : rules.setAside()) {
            list.add(
                    Tree.map()
                            .put("rule", aside.ruling().rule().id())
                            .put("limit", LimitDocument.printed(aside.ruling().limit()))
                            .put("source", aside.ruling().value().source().toString())
                            .put("provenance", aside.ruling().rule().provenance())
                            .put("because", aside.reason())
                            .put("applied-instead", aside.by())
                            .put("settled", aside.settled()));
        }
        return list;
    }
}
