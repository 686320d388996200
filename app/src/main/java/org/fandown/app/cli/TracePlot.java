package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.fandown.plot.ClockText;
import org.fandown.plot.Curve;
import org.fandown.plot.Drawing;
import org.fandown.plot.LongCurve;
import org.fandown.plot.Mark;
import org.fandown.plot.PressureChart;
import org.fandown.trace.Channel;
import org.fandown.trace.Recognised;
import org.fandown.trace.TraceLog;

/** Gathers both circuits of a trace, and draws them with what was recognised. */
final class TracePlot {
    private final LongCurve primary = new LongCurve();
    private final LongCurve secondary = new LongCurve();

    void sample(Channel channel, double seconds, double value) {
        if (channel == Channel.PRIMARY) {
            primary.add(seconds, value);
        } else if (channel == Channel.SECONDARY) {
            secondary.add(seconds, value);
        }
    }

    Drawing drawing(TraceLog log, String name) {
        List<Curve> curves = new ArrayList<>();
        for (Curve curve : List.of(primary.curve("primary"), secondary.curve("secondary"))) {
            if (curve.size() > 0) {
                curves.add(curve);
            }
        }
        List<Mark> marks = TraceText.inOrder(log).stream().map(TracePlot::mark).toList();
        return PressureChart.of("Trace " + name, "pressure of the circuits", curves, marks);
    }

    private static Mark mark(Recognised found) {
        String text = RecognisedWords.text(found) + ", until " + ClockText.tenths(found.to());
        return new Mark(found.from(), text, Mark.Weight.STRONG);
    }
}
