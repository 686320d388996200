package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import org.fandown.plot.Shape.Align;
import org.fandown.plot.Shape.Look;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;
import org.fandown.units.GaugePressure;

/**
 * Lays out a piece of a trace: the pressures in psi and kPa, below them what else is known on the
 * same axis of time, and above them a numbered bracket over each thing that was done.
 *
 * <p>Nothing is told by colour alone: the first circuit is a solid line, the second a dashed one,
 * and what was done has its number.
 */
public final class TraceChart {
    /** More points lie on the curve itself: only the first and the last have a dot. */
    private static final int MOST_DOTS = 10;

    private final TraceView view;
    private final ChartSize size;
    private final double letter;
    private final double left;
    private final double right;
    private final Canvas canvas;
    private final PressureScale scale;
    private double y;
    private double floor;

    private TraceChart(TraceView view, ChartSize size, double top) {
        this.view = view;
        this.size = size;
        letter = size.letter();
        canvas = new Canvas(letter);
        scale = PressureScale.of(view);
        left = 3.4 * letter;
        right = size.width() - 3.6 * letter;
        y = top;
    }

    /**
     * Draws a piece of a trace.
     *
     * @param title what it is, for those who cannot see it
     * @param view what to show
     * @param size how large
     */
    public static Drawing of(String title, TraceView view, ChartSize size) {
        TraceChart chart = new TraceChart(view, size, 0);
        chart.lay();
        return new Drawing(title, size.width(), chart.y, chart.canvas.shapes());
    }

    private void lay() {
        legend();
        List<Spans.Place> places = Spans.of(view.spans(), this::atTime, letter, left, right);
        brackets(places);
        grid();
        curves();
        figure();
        y = new LowerPart(view, canvas, left, right, floor, this::atTime).draw();
    }

    private void legend() {
        y += 1.2 * letter;
        double x = left;
        for (int i = 0; i < view.pressures().size(); i++) {
            String name = view.pressures().get(i).name();
            double middle = y - 0.35 * letter;
            canvas.add(
                    stroke(List.of(new Point(x, middle), new Point(x + 2.6 * letter, middle)), i));
            canvas.text(x + 3.1 * letter, y, name, Align.START, Look.bold(ink(i), letter));
            x += 3.1 * letter + Wrap.width(name, letter) + 1.4 * letter;
        }
        y += 0.6 * letter;
    }

    /** The bands and brackets of what was done, and their numbers. */
    private void brackets(List<Spans.Place> places) {
        int rows = places.stream().mapToInt(Spans.Place::row).max().orElse(-1) + 1;
        double row = 1.9 * letter;
        double base = y + Math.max(rows * row, 1.2 * letter);
        floor = base + 0.4 * letter + size.height();
        for (Spans.Place place : places) {
            double from = place.from();
            double to = Math.max(place.to(), from + 1);
            canvas.add(
                    new Plate(
                            new Point(from, floor - size.height()),
                            to - from,
                            size.height(),
                            Ink.BAND));
        }
        for (Spans.Place place : places) {
            bracket(place, base - place.row() * row);
        }
        y = base + 0.4 * letter;
    }

    private void bracket(Spans.Place place, double line) {
        double foot = floor - size.height();
        for (double x : new double[] {place.from(), place.to()}) {
            canvas.add(
                    new Trail(
                            List.of(new Point(x, line), new Point(x, floor)), Ink.MARK, 0.8, true));
        }
        if (place.to() > place.from()) {
            canvas.add(
                    Trail.line(
                            new Point(place.from(), line),
                            new Point(place.to(), line),
                            Ink.MARK,
                            1.5));
        }
        double width = Spans.width(place, letter);
        double middle = Spans.middle(place, letter, left, right);
        double height = 1.45 * letter;
        canvas.add(
                new Plate(
                        new Point(middle - width / 2, Math.min(line, foot) - height),
                        width,
                        height,
                        Ink.MARK));
        canvas.text(
                middle,
                Math.min(line, foot) - 0.37 * letter,
                place.text(),
                Align.MIDDLE,
                new Look(Ink.MARK, letter, true, true));
    }

    private void grid() {
        double step = scale.psiStep();
        for (double psi : Ticks.between(scale.low(), scale.high(), step)) {
            double at = atPsi(psi);
            canvas.line(left, at, right, at, Ink.GRID, psi == 0 ? 2 : 1);
            canvas.text(
                    left - 0.6 * letter,
                    at + 0.35 * letter,
                    Canvas.figure(psi, step),
                    Align.END,
                    canvas.faint());
        }
        double kpaStep = scale.kpaStep();
        for (double kpa : Ticks.between(scale.lowKpa(), scale.highKpa(), kpaStep)) {
            double at = atPsi(GaugePressure.ofKilopascals(kpa).inPsi());
            canvas.line(right, at, right + 0.35 * letter, at, Ink.FAINT, 1);
            canvas.text(
                    right + 0.6 * letter,
                    at + 0.35 * letter,
                    Canvas.figure(kpa, kpaStep),
                    Align.START,
                    canvas.faint());
        }
        double above = floor - size.height() - 0.9 * letter;
        canvas.text(left - 0.6 * letter, above, "psi", Align.END, Look.bold(Ink.FAINT, letter));
        canvas.text(right + 0.6 * letter, above, "kPa", Align.START, Look.bold(Ink.FAINT, letter));
    }

    private void curves() {
        // Dashes over a solid line leave both to be seen; what is neither circuit lies below.
        for (int i = 2; i < view.pressures().size(); i++) {
            curve(i);
        }
        for (int i = 0; i < Math.min(2, view.pressures().size()); i++) {
            curve(i);
        }
    }

    private void curve(int number) {
        for (Curve piece : Pieces.of(view.pressures().get(number))) {
            List<Point> points = Thinned.of(piece, this::atTime, this::atAnyPsi);
            for (List<Point> inside : Pieces.between(points, floor - size.height(), floor)) {
                canvas.add(stroke(inside, number));
            }
        }
    }

    private void figure() {
        Curve curve = view.figure().curve();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < curve.size(); i++) {
            points.add(new Point(atTime(curve.time(i)), atPsi(curve.value(i))));
        }
        if (view.figure().joined() && points.size() > 1 && points.size() <= MOST_DOTS) {
            canvas.add(new Trail(points, Ink.MARK, 1, false));
        }
        double dot = 0.5 * letter;
        for (int i = 0; i < points.size(); i++) {
            boolean end = i == 0 || i == points.size() - 1;
            if (!end && points.size() > MOST_DOTS) {
                continue;
            }
            Point at = points.get(i);
            doubt(at, curve.value(i));
            canvas.add(
                    new Plate(new Point(at.x() - dot / 2, at.y() - dot / 2), dot, dot, Ink.MARK));
        }
    }

    private void doubt(Point at, double psi) {
        double half = view.figure().half();
        if (!(half > 0)) {
            return;
        }
        double top = atPsi(psi + half);
        double bottom = atPsi(psi - half);
        double arm = 0.4 * letter;
        canvas.line(at.x(), top, at.x(), bottom, Ink.MARK, 1.2);
        canvas.line(at.x() - arm, top, at.x() + arm, top, Ink.MARK, 1.2);
        canvas.line(at.x() - arm, bottom, at.x() + arm, bottom, Ink.MARK, 1.2);
    }

    private Trail stroke(List<Point> points, int curve) {
        double width = curve == 0 ? size.line() : 0.75 * size.line();
        return new Trail(points, ink(curve), width, curve == 1);
    }

    private static Ink ink(int curve) {
        return curve == 0 ? Ink.FIRST : curve == 1 ? Ink.SECOND : Ink.THIRD;
    }

    private double atTime(double seconds) {
        double part = (seconds - view.from()) / (view.to() - view.from());
        return left + (right - left) * Math.min(1, Math.max(0, part));
    }

    private double atPsi(double psi) {
        return Math.min(floor, Math.max(floor - size.height(), atAnyPsi(psi)));
    }

    /** Where a pressure stands, which may be outside of the graph. */
    private double atAnyPsi(double psi) {
        return floor - size.height() * scale.share(psi);
    }
}
