package org.fandown.app.cli;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.judgement.Judgement;
import org.fandown.record.JudgementDocument;
import org.fandown.trace.LossAdvice;
import org.fandown.trace.OperatorMark;
import org.fandown.trace.Recognised;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceNote;
import org.fandown.trace.VehicleNumber;

/** Writes what a trace shows as a document, for programs. */
final class TraceJson {
    private static final int DECIMALS = 2;

    private TraceJson() {}

    static MapNode of(
            TraceLog log,
            String name,
            Optional<String> sha256,
            Optional<Judgement> judgement,
            List<Check> missing,
            List<LossAdvice> tests) {
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
        if (!log.marks().isEmpty()) {
            Tree.ListBuilder marks = Tree.list();
            log.marks().forEach(mark -> marks.add(mark(mark)));
            map.put("marks", marks);
        }
        if (!log.vins().isEmpty()) {
            map.put("vin", vins(log.vins()));
        }
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

    private static Tree.MapBuilder mark(OperatorMark mark) {
        return Tree.map().put("at", mark.seconds(), DECIMALS).put("mark", mark.word().id());
    }

    private static Tree.ListBuilder vins(List<VehicleNumber> numbers) {
        Tree.ListBuilder list = Tree.list();
        for (VehicleNumber number : numbers) {
            list.add(
                    Tree.map()
                            .put("vin", number.text())
                            .put("source", number.source())
                            .put("well-formed", number.isWellFormed())
                            .put("check-digit", number.hasCheckDigit()));
        }
        return list;
    }

    private static Tree.MapBuilder note(TraceNote note) {
        Tree.MapBuilder map = Tree.map().put("kind", note.kind());
        if (note.line() > 0) {
            map.put("line", note.line());
        }
        return map.put("times", note.times()).put("text", note.text());
    }

    static Tree.MapBuilder one(Recognised found) {
        Tree.MapBuilder map =
                Tree.map()
                        .put("kind", Names.kebab(found.kind()))
                        .put("from", found.from(), DECIMALS)
                        .put("to", found.to(), DECIMALS)
                        .put("text", RecognisedWords.text(found));
        if (RecognisedWords.hasInterval(found.kind())) {
            double[] ends = RecognisedWords.interval(found);
            map.put("value", psi(found.value())).put("low", psi(ends[0])).put("high", psi(ends[1]));
            if (found.kind().isLoss()) {
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
