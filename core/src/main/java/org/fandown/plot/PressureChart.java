package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import org.fandown.plot.Shape.Align;
import org.fandown.plot.Shape.Label;
import org.fandown.plot.Shape.Look;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;
import org.fandown.units.Decimals;
import org.fandown.units.GaugePressure;

/**
 * Lays out two pressures over time, in psi and kPa, with numbered marks of what happened and the
 * list of these below.
 *
 * <p>Marks that would touch share a number, so nothing overlaps however much happens.
 */
public final class PressureChart {
    private static final double WIDTH = 600;
    private static final double LEFT = 46;
    private static final double RIGHT = 548;
    private static final double GRAPH_HEIGHT = 280;
    private static final double SMALL = 14;
    private static final double NORMAL = 16;
    private static final double LARGE = 21;
    private static final double LINE = 22;
    private static final double MARK_HEIGHT = 20;
    private static final double MARK_WIDTH = 26;
    private static final double MARGIN = 14;
    private static final double TEXT_COLUMN = 108;
    private static final double ENTRY = 15;
    private static final double KPA_STEP = 200;
    private static final int MOST_TIMES = 7;

    private final String title;
    private final String subtitle;
    private final List<Curve> curves;
    private final List<MarkGroup> groups;
    private final double end;
    private final double top;
    private final List<Shape> shapes = new ArrayList<>();
    private double y;
    private double floor;

    private PressureChart(String title, String subtitle, List<Curve> curves, List<Mark> marks) {
        this.title = title;
        this.subtitle = subtitle;
        this.curves = curves;
        double last = 1;
        double highest = 0;
        for (Curve curve : curves) {
            last = Math.max(last, curve.end());
            highest = Math.max(highest, curve.highest());
        }
        end = last;
        top = Ticks.top(highest);
        groups = MarkGroup.of(marks, end * (MARK_WIDTH + 2) / (RIGHT - LEFT));
    }

    /**
     * Draws pressures.
     *
     * @param title what it is
     * @param subtitle more about it, empty text if nothing
     * @param curves one or two curves, in psi over seconds
     * @param marks what happened meanwhile, in order of time
     */
    public static Drawing of(String title, String subtitle, List<Curve> curves, List<Mark> marks) {
        PressureChart chart = new PressureChart(title, subtitle, curves, marks);
        chart.head();
        chart.grid();
        chart.timeAxis();
        chart.curves();
        chart.list();
        return new Drawing(title, WIDTH, chart.y + MARGIN, chart.shapes);
    }

    private void head() {
        y = MARGIN + 4;
        for (String line : Wrap.lines(title, letters(WIDTH - 2 * MARGIN, LARGE))) {
            y += LARGE;
            text(MARGIN, line, Align.START, Look.bold(Ink.TEXT, LARGE));
            y += 4;
        }
        for (String line : Wrap.lines(subtitle, letters(WIDTH - 2 * MARGIN, NORMAL))) {
            y += NORMAL + 2;
            text(MARGIN, line, Align.START, Look.plain(Ink.FAINT, NORMAL));
        }
        y += LINE + 6;
        double x = LEFT;
        for (int i = 0; i < curves.size(); i++) {
            shapes.add(stroke(List.of(new Point(x, y - 5), new Point(x + 34, y - 5)), i));
            text(x + 42, curves.get(i).name(), Align.START, Look.bold(ink(i), NORMAL));
            x += 42 + Wrap.width(curves.get(i).name(), NORMAL) + 30;
        }
        y += 12;
    }

    private static int letters(double width, double size) {
        return (int) Math.floor(width / (size * Wrap.LETTER));
    }

    private void grid() {
        y += MARK_HEIGHT + 8;
        floor = y + GRAPH_HEIGHT;
        text(LEFT - 8, floor + 38, "psi", Align.END, Look.plain(Ink.FAINT, SMALL));
        text(RIGHT + 8, floor + 38, "kPa", Align.START, Look.plain(Ink.FAINT, SMALL));
        for (double psi : Ticks.psi(top)) {
            double at = atPsi(psi);
            shapes.add(
                    Trail.line(
                            new Point(LEFT, at), new Point(RIGHT, at), Ink.GRID, psi == 0 ? 2 : 1));
            text(LEFT - 8, at + 5, figure(psi), Align.END, Look.plain(Ink.FAINT, SMALL));
        }
        double topKpa = GaugePressure.ofPsi(top).inKilopascals();
        for (double kpa : Ticks.upTo(topKpa, KPA_STEP)) {
            double at = atPsi(GaugePressure.ofKilopascals(kpa).inPsi());
            shapes.add(Trail.line(new Point(RIGHT, at), new Point(RIGHT + 5, at), Ink.FAINT, 1.5));
            text(RIGHT + 8, at + 5, figure(kpa), Align.START, Look.plain(Ink.FAINT, SMALL));
        }
        marks();
    }

    private void marks() {
        for (MarkGroup group : groups) {
            double x = atTime(group.seconds());
            Ink ink = group.isHazard() ? Ink.HAZARD : Ink.MARK;
            shapes.add(new Trail(List.of(new Point(x, y - 6), new Point(x, floor)), ink, 1, true));
            plate(Math.min(x, WIDTH - MARK_WIDTH / 2), y - 6, group, ink);
        }
    }

    /** The number of a group on its plate, standing on y. */
    private void plate(double x, double below, MarkGroup group, Ink ink) {
        shapes.add(
                new Plate(
                        new Point(x - MARK_WIDTH / 2, below - MARK_HEIGHT),
                        MARK_WIDTH,
                        MARK_HEIGHT,
                        ink));
        text(
                x,
                below - 5,
                Integer.toString(group.number()),
                Align.MIDDLE,
                new Look(ink, SMALL, true, true));
    }

    private void timeAxis() {
        List<Double> ticks = Ticks.seconds(end, MOST_TIMES);
        for (double seconds : ticks) {
            double x = atTime(seconds);
            shapes.add(Trail.line(new Point(x, floor), new Point(x, floor + 5), Ink.FAINT, 1.5));
            text(
                    x,
                    floor + 20,
                    ClockText.whole(seconds),
                    Align.MIDDLE,
                    Look.plain(Ink.FAINT, SMALL));
        }
        text(
                (LEFT + RIGHT) / 2,
                floor + 38,
                "minutes and seconds since the start",
                Align.MIDDLE,
                Look.plain(Ink.FAINT, SMALL));
    }

    private void curves() {
        for (int i = 0; i < curves.size(); i++) {
            List<Point> points = Thinned.of(curves.get(i), this::atTime, this::atPsi);
            if (points.size() > 1) {
                shapes.add(stroke(points, i));
            }
        }
        y = floor + 40;
    }

    private static Trail stroke(List<Point> points, int curve) {
        return new Trail(points, ink(curve), curve == 0 ? 3.5 : 2.5, curve > 0);
    }

    private void list() {
        y += groups.isEmpty() ? 0 : 12;
        for (MarkGroup group : groups) {
            Ink ink = group.isHazard() ? Ink.HAZARD : Ink.MARK;
            plate(MARGIN + MARK_WIDTH / 2, y + LINE, group, ink);
            group.summed().forEach(this::row);
            y += 5;
        }
    }

    private void row(Mark mark) {
        boolean hazard = mark.weight() == Mark.Weight.HAZARD;
        Ink ink = hazard ? Ink.HAZARD : Ink.TEXT;
        boolean bold = mark.weight() != Mark.Weight.PLAIN;
        String said = hazard ? "Danger: " + mark.text() : mark.text();
        text(
                TEXT_COLUMN - 8,
                y + LINE - 5,
                ClockText.tenths(mark.seconds()),
                Align.END,
                Look.plain(Ink.FAINT, SMALL));
        double room = WIDTH - TEXT_COLUMN - 12;
        for (String line : Wrap.lines(said, letters(room, ENTRY))) {
            y += LINE;
            text(TEXT_COLUMN, y - 5, line, Align.START, new Look(ink, ENTRY, bold, false));
        }
    }

    private void text(double x, String text, Align align, Look look) {
        text(x, y, text, align, look);
    }

    private void text(double x, double at, String text, Align align, Look look) {
        if (!text.isEmpty()) {
            shapes.add(new Label(new Point(x, at), text, align, look));
        }
    }

    private double atTime(double seconds) {
        return LEFT + (RIGHT - LEFT) * Math.min(1, Math.max(0, seconds / end));
    }

    private double atPsi(double psi) {
        return floor - GRAPH_HEIGHT * Math.min(1, Math.max(0, psi / top));
    }

    private static Ink ink(int curve) {
        return curve == 0 ? Ink.FIRST : Ink.SECOND;
    }

    private static String figure(double number) {
        return Decimals.format(number, 0);
    }
}
