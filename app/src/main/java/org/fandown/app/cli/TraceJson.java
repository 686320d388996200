package org.fandown.app.cli;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.judgement.Judgement;
import org.fandown.record.JudgementDocument;
import org.fandown.trace.LossAdvice;
import org.fandown.trace.TraceDocument;
import org.fandown.trace.TraceLog;

/** Writes what a trace shows as a document, for programs. */
final class TraceJson {
    private TraceJson() {}

    static MapNode of(
            TraceLog log,
            String name,
            Optional<String> sha256,
            Optional<Judgement> judgement,
            List<Check> missing,
            List<LossAdvice> tests) {
        Tree.MapBuilder map = TraceDocument.of(log, name, sha256);
        judgement.ifPresent(
                judged -> {
                    Tree.ListBuilder ids = Tree.list();
                    missing.forEach(check -> ids.add(check.id()));
                    Tree.ListBuilder losses = Tree.list();
                    tests.forEach(test -> losses.add(loss(test)));
                    map.put("loss-tests", losses);
                    map.put("missing", ids);
                    map.put("judgement", JudgementDocument.of(judged, Optional.empty()));
                });
        return map.build();
    }

    /** The last line of what a followed log gives. */
    static String line(MapNode document) {
        return Json.writeCompact(Tree.map().put("event", "summary").put("trace", document).build());
    }

    private static Tree.MapBuilder loss(LossAdvice test) {
        return LossWords.put(Tree.map().put("text", LossWords.ended(test)), test);
    }
}
