package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import org.fandown.plot.Shape.Align;
import org.fandown.plot.Shape.Label;
import org.fandown.plot.Shape.Look;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;
import org.fandown.units.Decimals;

/** The shapes of a drawing while it is laid out. */
final class Canvas {
    private final double letter;
    private final List<Shape> shapes = new ArrayList<>();

    Canvas(double letter) {
        this.letter = letter;
    }

    /** Height of the letters of axes. */
    double letter() {
        return letter;
    }

    List<Shape> shapes() {
        return shapes;
    }

    void add(Shape shape) {
        shapes.add(shape);
    }

    void text(double x, double at, String text, Align align, Look look) {
        shapes.add(new Label(new Point(x, at), text, align, look));
    }

    void line(double x1, double y1, double x2, double y2, Ink ink, double width) {
        shapes.add(Trail.line(new Point(x1, y1), new Point(x2, y2), ink, width));
    }

    /** How axes are printed. */
    Look faint() {
        return Look.plain(Ink.FAINT, letter);
    }

    /** A figure at an axis whose figures are a step apart. */
    static String figure(double number, double step) {
        return Decimals.format(number, step < 1 ? 1 : 0);
    }
}
