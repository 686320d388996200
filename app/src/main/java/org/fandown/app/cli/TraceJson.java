package org.fandown.app.cli;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.judgement.Judgement;
import org.fandown.record.JudgementDocument;
import org.fandown.trace.Recognised;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceNote;

/** Writes what a trace shows as a document, for programs. */
final class TraceJson {
    private static final int DECIMALS = 2;

    private TraceJson() {}

    static MapNode of(
            TraceLog log,
            String name,
            Optional<String> sha256,
            Optional<Judgement> judgement,
            List<Check> missing) {
        Tree.ListBuilder recognised = Tree.list();
        TraceText.inOrder(log).forEach(found -> recognised.add(one(found)));
        Tree.ListBuilder notes = Tree.list();
        log.notes().forEach(note -> notes.add(note(note)));
        Tree.MapBuilder channels = Tree.map();
        log.channels().forEach((channel, count) -> channels.put(Names.kebab(channel), count));
        Tree.MapBuilder map =
                Tree.map()
                        .put("format", "fandown-trace/1")
                        .put("log", name)
                        .putIfPresent("sha256", sha256.orElse(null))
                        .put("written-as", log.isTable() ? "csv" : "candump")
                        .put("simulated", log.isSimulated())
                        .put("lines", log.lines())
                        .put("seconds", log.seconds(), DECIMALS)
                        .put("samples", channels)
                        .put("notes", notes)
                        .put("recognised", recognised);
        judgement.ifPresent(
                judged -> {
                    Tree.ListBuilder ids = Tree.list();
                    missing.forEach(check -> ids.add(check.id()));
                    map.put("missing", ids);
                    map.put("judgement", JudgementDocument.of(judged, Optional.empty()));
                });
        return map.build();
    }

    private static Tree.MapBuilder note(TraceNote note) {
        Tree.MapBuilder map = Tree.map().put("kind", note.kind());
        if (note.line() > 0) {
            map.put("line", note.line());
        }
        return map.put("times", note.times()).put("text", note.text());
    }

    private static Tree.MapBuilder one(Recognised found) {
        Tree.MapBuilder map =
                Tree.map()
                        .put("kind", Names.kebab(found.kind()))
                        .put("from", found.from(), DECIMALS)
                        .put("to", found.to(), DECIMALS)
                        .put("text", RecognisedWords.text(found));
        if (RecognisedWords.hasInterval(found.kind())) {
            double[] ends = RecognisedWords.interval(found);
            map.put("value", psi(found.value())).put("low", psi(ends[0])).put("high", psi(ends[1]));
            if (RecognisedWords.isLoss(found.kind())) {
                map.put("over", Tree.map().put("value", 60).put("unit", "s"));
            }
        } else {
            ends(map, found);
        }
        if (!Double.isNaN(found.engine())) {
            map.put("engine", Tree.map().put("value", found.engine(), 0).put("unit", "rpm"));
        }
        return map;
    }

    private static void ends(Tree.MapBuilder map, Recognised found) {
        if (found.kind() == Kind.APPLICATIONS) {
            map.put("applications", found.value(), 0);
        }
        if (!found.points().isEmpty()) {
            map.put("first", psi(found.points().get(0).psi()));
            map.put("last", psi(found.points().get(found.points().size() - 1).psi()));
        }
    }

    private static Tree.MapBuilder psi(double value) {
        return Tree.map().put("value", value, DECIMALS).put("unit", "psi");
    }
}
