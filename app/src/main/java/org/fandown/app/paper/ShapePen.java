package org.fandown.app.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import org.fandown.plot.Drawing;
import org.fandown.plot.Ink;
import org.fandown.plot.Shape;
import org.fandown.plot.Shape.Label;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;
import org.fandown.units.Decimals;

/**
 * Puts a {@link Drawing} into the page, in black and greys: its lines and plates are drawn, its
 * letters are text of the page above them, in the fonts of the page, so that they can be searched
 * and read aloud.
 */
final class ShapePen {
    /** The type of the drawn objects. */
    static final String TYPE = "fandown/shapes";

    /** The base line of a line of text lies so far below its top, in heights of a letter. */
    private static final double BASE = 0.946;

    /** Room for a text that stands around or left of its point. */
    private static final double ROOM = 400;

    private static final Color DARK = new Color(0x33, 0x33, 0x33);
    private static final Color MIDDLE = new Color(0x77, 0x77, 0x77);
    private static final Color GRID = new Color(0xcc, 0xcc, 0xcc);
    private static final Color BAND = new Color(0xec, 0xec, 0xec);

    private ShapePen() {}

    /** Adds a drawing; {@code number} is its place in the list given to {@link #draw}. */
    static void add(Tag parent, Drawing drawing, int number) {
        String size = "width: " + px(drawing.width()) + "; height: " + px(drawing.height());
        Tag box = parent.add("div", "drawing").set("style", size);
        box.add("object", "shapes")
                .set("type", TYPE)
                .set("style", size)
                .set("alt", drawing.title())
                .set("title", drawing.title())
                .set("data-number", Integer.toString(number));
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Label label) {
                label(box, label);
            }
        }
    }

    private static void label(Tag box, Label label) {
        double size = label.look().size();
        double x = label.at().x();
        String place =
                switch (label.align()) {
                    case START -> "left: " + px(x) + "; text-align: left";
                    case MIDDLE -> "left: " + px(x - ROOM / 2) + "; text-align: center";
                    case END -> "left: " + px(x - ROOM) + "; text-align: right";
                };
        String css = label.look().bold() ? "letters strong" : "letters";
        box.add("div", label.look().onPlate() ? css + " light" : css)
                .set(
                        "style",
                        place
                                + "; top: "
                                + px(label.at().y() - BASE * size)
                                + "; font-size: "
                                + px(size))
                .text(label.text());
    }

    private static String px(double value) {
        return Decimals.formatShort(value, 2) + "px";
    }

    /** Draws the lines and plates. */
    static void draw(Graphics2D g, List<Drawing> drawings, String number) {
        for (Shape shape : drawings.get(Integer.parseInt(number)).shapes()) {
            if (shape instanceof Trail trail) {
                trail(g, trail);
            } else if (shape instanceof Plate plate) {
                plate(g, plate);
            }
        }
    }

    private static void trail(Graphics2D g, Trail trail) {
        Path2D path = new Path2D.Double();
        for (Point point : trail.points()) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(point.x(), point.y());
            } else {
                path.lineTo(point.x(), point.y());
            }
        }
        g.setColor(colour(trail.ink()));
        g.setStroke(stroke(trail));
        g.draw(path);
    }

    private static BasicStroke stroke(Trail trail) {
        float width = (float) trail.width();
        if (!trail.dashed()) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] dashes = trail.width() > 1 ? new float[] {5, 2.5f} : new float[] {1.5f, 2.5f};
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
    }

    private static void plate(Graphics2D g, Plate plate) {
        boolean square = plate.ink() == Ink.BAND || plate.ink() == Ink.FAINT;
        double corner = square ? 0 : Math.min(6, plate.height() / 2);
        g.setColor(colour(plate.ink()));
        g.fill(
                new RoundRectangle2D.Double(
                        plate.corner().x(),
                        plate.corner().y(),
                        plate.width(),
                        plate.height(),
                        Math.min(corner, plate.width()),
                        corner));
    }

    private static Color colour(Ink ink) {
        return switch (ink) {
            case TEXT, FIRST, SECOND, MARK, HAZARD -> Color.BLACK;
            case FAINT -> DARK;
            case THIRD -> MIDDLE;
            case GRID -> GRID;
            case BAND -> BAND;
        };
    }
}
