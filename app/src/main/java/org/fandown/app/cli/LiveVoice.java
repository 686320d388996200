package org.fandown.app.cli;

import java.io.PrintWriter;
import java.util.function.UnaryOperator;
import org.fandown.document.Json;
import org.fandown.document.Tree;
import org.fandown.plot.ClockText;

/**
 * Says what happens while a log is followed: one line for each thing, written at once, in words
 * that can be read aloud, or as one JSON object.
 */
final class LiveVoice {
    private final PrintWriter out;
    private final boolean json;

    LiveVoice(PrintWriter out, boolean json) {
        this.out = out;
        this.json = json;
    }

    /** Says something that belongs to no moment of the trace. */
    void say(String event, String text) {
        say(event, Double.NaN, text, map -> map);
    }

    /**
     * Says something.
     *
     * @param event a word for it, for programs
     * @param seconds when, in the trace; NaN for something outside of it
     * @param text a sentence
     * @param more adds what programs want to know
     */
    void say(String event, double seconds, String text, UnaryOperator<Tree.MapBuilder> more) {
        boolean timed = !Double.isNaN(seconds);
        if (json) {
            Tree.MapBuilder map = Tree.map().put("event", event);
            if (timed) {
                map.put("at", seconds, 1);
            }
            out.println(Json.writeCompact(more.apply(map.put("text", text)).build()));
        } else {
            out.println((timed ? ClockText.tenths(seconds) + ": " : "") + text);
        }
        out.flush();
    }

    /** Whether nobody listens any more. */
    boolean isUnheard() {
        return out.checkError();
    }
}
