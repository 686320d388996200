package org.fandown.record;

import java.util.Optional;
import org.fandown.braking.BrakingEstimate;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.evidence.EarlierDefect;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Report;
import org.fandown.judgement.Defect;
import org.fandown.judgement.Judgement;
import org.fandown.record.FollowingDates.Following;
import org.fandown.rulebook.Rule;

/** A judgement with all that belongs to it, as a document with stable keys. */
public final class JudgementDocument {
    private JudgementDocument() {}

    /**
     * The document.
     *
     * @param judgement the judgement
     * @param braking what the strokes mean, empty if none was measured
     */
    public static MapNode of(Judgement judgement, Optional<BrakingEstimate> braking) {
        Inspection inspection = judgement.inspection();
        Tree.ListBuilder because = Tree.list();
        judgement.because().forEach(because::add);
        Tree.ListBuilder findings = Tree.list();
        judgement.findings().forEach(f -> findings.add(FindingDocument.of(f)));
        Tree.ListBuilder defects = Tree.list();
        judgement.defects().forEach(d -> defects.add(defect(d)));
        Tree.MapBuilder map =
                Tree.map()
                        .put("format", "fandown-judgement/1")
                        .put("verdict", judgement.verdict())
                        .put("because", because)
                        .put("simulated", inspection.simulated())
                        .put("place", inspection.place().code())
                        .put("place-name", judgement.rules().lineage().get(0).name())
                        .put("moment", inspection.moment().toString())
                        .put("vehicle", inspection.vehicle().name())
                        .put("report", report(inspection.report()))
                        .put("findings", findings)
                        .put("defects", defects)
                        .put("coverage", RulesDocument.coverage(judgement.rules()))
                        .put("set-aside", RulesDocument.setAside(judgement.rules()))
                        .put("dates", dates(judgement));
        if (!inspection.earlier().isEmpty()) {
            Tree.ListBuilder earlier = Tree.list();
            inspection.earlier().forEach(e -> earlier.add(e.document()));
            map.put(EarlierDefect.KEY, earlier);
        }
        braking.ifPresent(estimate -> map.put("braking", BrakingDocument.of(estimate)));
        return map.build();
    }

    private static MapNode report(Report report) {
        Tree.MapBuilder map = Tree.map();
        report.entries().forEach((entry, text) -> map.put(Names.kebab(entry), text));
        return map.build();
    }

    private static MapNode defect(Defect defect) {
        Tree.MapBuilder map = Tree.map().put("component", defect.component());
        defect.wheel().ifPresent(w -> map.put("wheel", w.toString()));
        map.put("severity", defect.severity().map(Names::kebab).orElse("not-stated"));
        defect.rule().map(Rule::id).ifPresent(id -> map.put("rule", id));
        if (defect.rule().map(rule -> rule.weight().outOfService()).orElse(false)) {
            map.put("out-of-service", true);
        }
        return map.put("text", defect.text()).build();
    }

    private static Tree.ListBuilder dates(Judgement judgement) {
        Tree.ListBuilder list = Tree.list();
        for (Following date : FollowingDates.of(judgement)) {
            list.add(
                    Tree.map()
                            .put("sense", date.sense())
                            .put("until", date.until().toString())
                            .put("rule", date.ruling().rule().id())
                            .put("provenance", date.ruling().rule().provenance()));
        }
        return list;
    }
}
