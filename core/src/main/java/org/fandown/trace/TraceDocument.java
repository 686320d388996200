package org.fandown.trace;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.trace.Recognised.Kind;

/** Writes what a trace shows as a document {@code fandown-trace/1}. */
public final class TraceDocument {
    private static final int DECIMALS = 2;

    private TraceDocument() {}

    /**
     * Writes what a log shows, once it is read.
     *
     * @param log the log
     * @param name what it is called
     * @param sha256 its SHA-256, empty if nobody asked
     */
    public static Tree.MapBuilder of(TraceLog log, String name, Optional<String> sha256) {
        Tree.ListBuilder recognised = Tree.list();
        inOrder(log).forEach(found -> recognised.add(one(found)));
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
        return map;
    }

    /** Returns what was recognised, by when it began. */
    public static List<Recognised> inOrder(TraceLog log) {
        return log.recognised().stream()
                .sorted(Comparator.comparingDouble(Recognised::from))
                .toList();
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

    /** Writes one thing recognised. */
    public static Tree.MapBuilder one(Recognised found) {
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
