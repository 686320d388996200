package org.fandown.app.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordStore;
import org.fandown.document.Fields;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.evidence.EarlierDefect;
import org.fandown.evidence.Inspection;
import org.fandown.record.DefectStory;
import org.fandown.record.Review;
import org.fandown.record.Settlement;

/**
 * The part of a record that follows an inspection: what was done about its defects, or that the
 * next driver reviewed it. It belongs to the chain of the inspection's vehicle.
 */
final class SentSettlement {
    private final RecordStore store;
    private final DefectDesk desk;

    SentSettlement(RecordStore store, DefectDesk desk) {
        this.store = store;
        this.desk = desk;
    }

    /**
     * Reads the part under {@code repair}.
     *
     * @throws org.fandown.document.DocumentException if it is none, or about no inspection or
     *     defect that is kept here
     */
    Summary settlement(Fields fields) {
        Node node = fields.node(Settlement.KIND);
        Settlement settlement = Settlement.read(node);
        KeptRecord report = report(Fields.of(node), settlement.report());
        List<DefectStory> defects = desk.of(report.seal().vehicle(), settlement.report());
        for (Settlement.Item item : settlement.items()) {
            if (item.number() > defects.size()) {
                throw Fields.of(node)
                        .refuse(
                                "settled",
                                "the report has no defect " + item.number(),
                                defects.isEmpty()
                                        ? "nothing: no defect of it is known, or another record"
                                                + " took its place"
                                        : "1 to " + defects.size(),
                                "open the report again and choose there");
            }
        }
        String done =
                settlement.items().size() == 1
                        ? "1 defect"
                        : settlement.items().size() + " defects";
        return summary(
                report,
                done + " settled",
                settlement.by() + settlement.firm().map(firm -> " " + firm).orElse(""),
                said(Settlement.KIND, node, corrects(fields, SentRecord.Kind.REPAIR)));
    }

    /**
     * Reads the part under {@code review}.
     *
     * @throws org.fandown.document.DocumentException if it is none, or about no inspection that is
     *     kept here
     */
    Summary review(Fields fields) {
        Node node = fields.node(Review.KIND);
        Review review = Review.read(node);
        KeptRecord report = report(Fields.of(node), review.report());
        return summary(
                report,
                "reviewed",
                review.by(),
                said(Review.KIND, node, corrects(fields, SentRecord.Kind.REVIEW)));
    }

    private KeptRecord report(Fields fields, String id) {
        return store.byId(id)
                .filter(kept -> kept.head().kind().equals("inspection"))
                .orElseThrow(
                        () ->
                                fields.refuse(
                                        "of",
                                        "no inspection of this id is kept here",
                                        "the id of an inspection that was sent before",
                                        "send the inspection first"));
    }

    /** An inspection with what is open from before; a report that it corrects counts no longer. */
    Inspection known(Inspection inspection, Optional<String> corrects) {
        List<EarlierDefect> all = new ArrayList<>(inspection.earlier());
        for (EarlierDefect defect : desk.openFor(inspection)) {
            if (!defect.report().equals(corrects.orElse("")) && !all.contains(defect)) {
                all.add(defect);
            }
        }
        return inspection.simulated() ? inspection : inspection.withEarlier(all);
    }

    /**
     * The id of the older record that a record takes the place of.
     *
     * @throws org.fandown.document.DocumentException if none of this kind is kept here
     */
    Optional<String> corrects(Fields fields, SentRecord.Kind kind) {
        Optional<String> old = fields.optionalText(DefectDesk.CORRECTS);
        boolean fits =
                old.isEmpty()
                        || old.flatMap(store::byId)
                                .filter(kept -> kept.head().kind().equals(Names.kebab(kind)))
                                .isPresent();
        if (!fits) {
            throw fields.refuse(
                    DefectDesk.CORRECTS,
                    "no record of this id and kind is kept here",
                    "the id of the record whose place this one takes",
                    "send that first, or leave the key out");
        }
        return old;
    }

    /** What the site said of a record, and which older one it takes the place of. */
    static MapNode with(MapNode said, Optional<String> corrects) {
        Tree.MapBuilder map = Tree.map();
        said.entries().forEach((key, entry) -> map.put(key, entry.value()));
        corrects.ifPresent(old -> map.put(DefectDesk.CORRECTS, old));
        return map.build();
    }

    private static MapNode said(String key, Node node, Optional<String> corrects) {
        return with(Tree.map().put(key, node).build(), corrects);
    }

    private static Summary summary(KeptRecord report, String verdict, String words, MapNode said) {
        return new Summary(
                report.head().place(),
                report.head().vehicle(),
                verdict,
                words + " " + report.head().words(),
                said,
                report.seal().vehicle());
    }
}
