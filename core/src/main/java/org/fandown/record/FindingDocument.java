package org.fandown.record;

import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Measurement;
import org.fandown.rulebook.Rule;
import org.fandown.units.Unit;

/** A finding as a document. */
final class FindingDocument {
    private FindingDocument() {}

    static MapNode of(Finding finding) {
        Rule rule = finding.ruling().rule();
        Tree.MapBuilder map =
                Tree.map()
                        .put("check", rule.check().id())
                        .put("rule", rule.id())
                        .put("title", rule.title());
        finding.wheel().ifPresent(w -> map.put("wheel", w.toString()));
        map.put("status", finding.status());
        finding.measured().ifPresent(m -> measured(map, m));
        if (finding.measured().isPresent() && finding.allowed().isPresent()) {
            map.put(
                    "limit",
                    LimitDocument.compared(
                            finding.ruling().limit(),
                            finding.measured().get(),
                            finding.allowed().get()));
        } else {
            map.put("limit", LimitDocument.printed(finding.ruling().limit()));
        }
        RuleDocument.weight(map, rule);
        map.put("source", finding.ruling().value().source().toString())
                .put("provenance", rule.provenance())
                .put("last-checked", rule.verifiedOn().toString())
                .put("reason", finding.why().reason());
        if (!finding.why().advice().isEmpty()) {
            map.put("advice", finding.why().advice());
        }
        return map.build();
    }

    private static void measured(Tree.MapBuilder map, Measurement measured) {
        map.put("measured", quantity(measured.value(), measured.unit()));
        map.put("uncertainty", quantity(measured.uncertainty(), measured.unit()));
    }

    private static MapNode quantity(double value, Unit unit) {
        return Tree.map().put("value", value).put("unit", unit.symbol()).build();
    }
}
