package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.plot.ChartSize;
import org.fandown.plot.ClockText;
import org.fandown.plot.Drawing;
import org.fandown.plot.Stack;
import org.fandown.plot.TraceChart;
import org.fandown.plot.TraceView;
import org.fandown.record.PracticeNotice;
import org.fandown.trace.Recognised;
import org.fandown.trace.RecognisedWords;
import org.fandown.trace.TraceDocument;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceNote;

/** A trace as one tall picture: the whole of it, then each thing recognised. */
final class TraceSheet {
    private static final double DETAIL = 170;
    private static final int LONGEST = 400;

    private TraceSheet() {}

    static Drawing of(TraceLog log, String name, TracePictures pictures) {
        List<Recognised> inOrder = TraceDocument.inOrder(log);
        Stack stack = new Stack("Trace " + name, ChartSize.SCREEN);
        if (log.isSimulated()) {
            stack.strong(PracticeNotice.TEXT);
        }
        stack.plain("The whole log, " + ClockText.tenths(log.seconds()) + " min. " + lead(inOrder));
        TraceView overview = pictures.overview(log, inOrder);
        stack.drawing(TraceChart.of("The whole log", overview, ChartSize.SCREEN));
        int more = 0;
        for (int i = 0; i < inOrder.size(); i++) {
            Recognised found = inOrder.get(i);
            Optional<TraceView> view = pictures.detail(log, found, inOrder);
            if (view.isPresent()) {
                detail(stack, i + 1, found, view.get());
            } else {
                more++;
            }
        }
        if (more > 0) {
            stack.strong(more + " more have no picture of their own.");
        }
        notes(stack, log);
        return stack.done();
    }

    private static String lead(List<Recognised> inOrder) {
        return inOrder.isEmpty()
                ? "It holds no test of the air system."
                : "What was done is numbered above it.";
    }

    private static void detail(Stack stack, int number, Recognised found, TraceView view) {
        stack.numbered(number, RecognisedWords.text(found));
        stack.plain(when(found));
        stack.drawing(
                TraceChart.of(
                        TraceFigures.name(found.kind()), view, ChartSize.SCREEN.high(DETAIL)));
    }

    /** From when to when, and how fast the engine turned meanwhile. */
    static String when(Recognised found) {
        String engine = TraceFigures.engine(found);
        return ClockText.tenths(found.from())
                + " to "
                + ClockText.tenths(found.to())
                + (engine.isEmpty() ? "" : ", engine " + engine);
    }

    /** A head of a table can be as long as whoever wrote it likes. */
    private static String cut(String text) {
        return text.length() <= LONGEST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST / 2)) + "\u2026";
    }

    private static void notes(Stack stack, TraceLog log) {
        List<String> notes = new ArrayList<>();
        log.notes().stream().map(TraceNote::sentence).forEach(notes::add);
        if (!notes.isEmpty()) {
            stack.strong("To know about the log");
            notes.forEach(note -> stack.plain(cut(note)));
        }
    }
}
