package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import org.fandown.plot.Shape.Align;
import org.fandown.plot.Shape.Label;
import org.fandown.plot.Shape.Look;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;

/** Puts texts and drawings below each other, to one drawing. */
public final class Stack {
    private static final double MARGIN = 14;
    private static final double LARGE = 1.5;
    private static final double LINE = 1.4;

    private final String title;
    private final double width;
    private final double letter;
    private final List<Shape> shapes = new ArrayList<>();
    private double y = MARGIN;

    /**
     * Begins with a title.
     *
     * @param title the title
     * @param size how wide, and how large its letters
     */
    public Stack(String title, ChartSize size) {
        this.title = title;
        this.width = size.width();
        this.letter = size.letter();
        lines(title, MARGIN, Look.bold(Ink.TEXT, LARGE * letter));
    }

    private void lines(String text, double x, Look look) {
        double room = width - x - MARGIN;
        for (String line : Wrap.lines(text, (int) Math.floor(room / (look.size() * Wrap.LETTER)))) {
            y += LINE * look.size();
            shapes.add(new Label(new Point(x, y - 0.35 * look.size()), line, Align.START, look));
        }
    }

    /** Adds a text. */
    public void plain(String text) {
        lines(text, MARGIN, Look.plain(Ink.FAINT, letter));
    }

    /** Adds a text that counts. */
    public void strong(String text) {
        y += 0.4 * letter;
        lines(text, MARGIN, Look.bold(Ink.TEXT, letter));
    }

    /**
     * Adds the head of a part under a number, as it stands in a {@link TraceChart}.
     *
     * @param number the number
     * @param text the head
     */
    public void numbered(int number, String text) {
        y += 1.6 * letter;
        String figure = Integer.toString(number);
        double plate = Math.max(1.7 * letter, Wrap.width(figure, letter) + 0.7 * letter);
        shapes.add(new Plate(new Point(MARGIN, y), plate, 1.45 * letter, Ink.MARK));
        shapes.add(
                new Label(
                        new Point(MARGIN + plate / 2, y + 1.08 * letter),
                        figure,
                        Align.MIDDLE,
                        new Look(Ink.MARK, letter, true, true)));
        lines(text, MARGIN + plate + 0.6 * letter, Look.bold(Ink.TEXT, 1.08 * letter));
    }

    /** Adds a drawing of the same width. */
    public void drawing(Drawing drawing) {
        y += 0.4 * letter;
        drawing.shapes().forEach(shape -> shapes.add(moved(shape, y)));
        y += drawing.height();
    }

    private static Shape moved(Shape shape, double down) {
        if (shape instanceof Trail trail) {
            List<Point> points = trail.points().stream().map(point -> moved(point, down)).toList();
            return new Trail(points, trail.ink(), trail.width(), trail.dashed());
        }
        if (shape instanceof Plate plate) {
            return new Plate(
                    moved(plate.corner(), down), plate.width(), plate.height(), plate.ink());
        }
        Label label = (Label) shape;
        return new Label(moved(label.at(), down), label.text(), label.align(), label.look());
    }

    private static Point moved(Point point, double down) {
        return new Point(point.x(), point.y() + down);
    }

    /** Returns all of it. */
    public Drawing done() {
        return new Drawing(title, width, y + MARGIN, shapes);
    }
}
