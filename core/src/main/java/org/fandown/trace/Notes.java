package org.fandown.trace;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fandown.document.Names;

/** Keeps of each kind of note the first and the number, so that any log needs little room. */
final class Notes {
    private final Map<Remark.Kind, Counted> remarks = new EnumMap<>(Remark.Kind.class);
    private final Map<LineKind, Counted> lines = new EnumMap<>(LineKind.class);
    private final List<TraceNote> others = new ArrayList<>();

    /** The first of a kind, and how many there were. */
    private static final class Counted {
        private final Enum<?> kind;
        private final long line;
        private final String text;
        private long times = 1;

        Counted(Enum<?> kind, long line, String text) {
            this.kind = kind;
            this.line = line;
            this.text = text;
        }

        TraceNote note() {
            return new TraceNote(Names.kebab(kind), line, times, text);
        }
    }

    void add(Remark remark) {
        Counted before = remarks.get(remark.kind());
        if (before == null) {
            Counted first = new Counted(remark.kind(), remark.line(), remark.sentence());
            remarks.put(remark.kind(), first);
        } else {
            before.times++;
        }
    }

    void add(long line, LineKind kind) {
        Counted before = lines.get(kind);
        if (before == null) {
            lines.put(kind, new Counted(kind, line, kind.at(line)));
        } else {
            before.times++;
        }
    }

    /** Adds a note of a kind that may come more than once. */
    void add(String kind, String text) {
        for (int i = 0; i < others.size(); i++) {
            TraceNote before = others.get(i);
            if (before.kind().equals(kind)) {
                others.set(i, new TraceNote(kind, 0, before.times() + 1, before.text()));
                return;
            }
        }
        others.add(new TraceNote(kind, 0, 1, text));
    }

    void add(TraceNote note) {
        others.add(note);
    }

    /** How many lines were damaged or do not belong in a log. */
    long problems() {
        long sum = 0;
        for (Map.Entry<LineKind, Counted> each : lines.entrySet()) {
            sum += each.getKey().isProblem() ? each.getValue().times : 0;
        }
        return sum;
    }

    List<TraceNote> list() {
        List<TraceNote> all = new ArrayList<>();
        lines.values().forEach(each -> all.add(each.note()));
        remarks.values().forEach(each -> all.add(each.note()));
        all.addAll(others);
        return List.copyOf(all);
    }
}
