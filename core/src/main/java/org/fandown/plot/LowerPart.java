package org.fandown.plot;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.fandown.plot.Shape.Align;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;
import org.fandown.plot.TraceView.Panel;
import org.fandown.plot.TraceView.Strip;

/** What stands below the pressures in a {@link TraceChart}: other things known, and the time. */
final class LowerPart {
    private static final int MOST_TIMES = 8;

    /** Heights of a panel and of the bar of a switch, in letters. */
    private static final double PANEL = 3.4;

    private static final double BAR = 0.6;

    private final TraceView view;
    private final Canvas canvas;
    private final double letter;
    private final double left;
    private final double right;
    private final DoubleUnaryOperator x;
    private double y;

    LowerPart(
            TraceView view,
            Canvas canvas,
            double left,
            double right,
            double top,
            DoubleUnaryOperator x) {
        this.view = view;
        this.canvas = canvas;
        this.letter = canvas.letter();
        this.left = left;
        this.right = right;
        this.x = x;
        this.y = top;
    }

    /** Draws it and returns where it ends. */
    double draw() {
        view.panels().forEach(this::panel);
        view.strips().forEach(this::strip);
        timeAxis();
        return y;
    }

    private void panel(Panel panel) {
        double top = y + 1.5 * letter;
        double base = top + PANEL * letter;
        double highest = Math.max(1, Math.max(panel.top(), panel.curve().highest()));
        double step = Ticks.step(highest, 3);
        double most = step * Math.ceil(highest / step - 1e-9);
        canvas.text(left, top - 0.4 * letter, panel.title(), Align.START, canvas.faint());
        for (double value : new double[] {0, most}) {
            double at = base - (base - top) * value / most;
            canvas.line(left, at, right, at, Ink.GRID, value == 0 ? 2 : 1);
            canvas.text(
                    left - 0.6 * letter,
                    at + 0.35 * letter,
                    Canvas.figure(value, step),
                    Align.END,
                    canvas.faint());
        }
        for (Curve piece : Pieces.of(panel.curve())) {
            List<Point> points =
                    Thinned.of(
                            piece,
                            x,
                            v -> base - (base - top) * Math.max(0, Math.min(1, v / most)));
            if (points.size() > 1) {
                canvas.add(new Trail(points, Ink.TEXT, 1.2, false));
            }
        }
        y = base;
    }

    private void strip(Strip strip) {
        double top = y + 1.5 * letter;
        double base = top + BAR * letter;
        canvas.text(left, top - 0.35 * letter, strip.title(), Align.START, canvas.faint());
        canvas.line(left, base, right, base, Ink.GRID, 1);
        for (Curve piece : Pieces.of(strip.curve())) {
            for (double[] bar : Pieces.on(piece, x)) {
                double width = Math.max(1, bar[1] - bar[0]);
                canvas.add(new Plate(new Point(bar[0], top), width, BAR * letter, Ink.FAINT));
            }
        }
        y = base;
    }

    private void timeAxis() {
        double step = Ticks.timeStep(view.to() - view.from(), MOST_TIMES);
        for (double seconds : Ticks.between(view.from(), view.to(), step)) {
            double at = x.applyAsDouble(seconds);
            canvas.line(at, y, at, y + 0.35 * letter, Ink.FAINT, 1);
            canvas.text(
                    at, y + 1.5 * letter, ClockText.whole(seconds), Align.MIDDLE, canvas.faint());
        }
        canvas.text(
                (left + right) / 2,
                y + 2.8 * letter,
                "minutes and seconds since the start of the log",
                Align.MIDDLE,
                canvas.faint());
        y += 3.2 * letter;
    }
}
