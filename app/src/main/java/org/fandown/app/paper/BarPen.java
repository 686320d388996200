package org.fandown.app.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.w3c.dom.Element;

/** Draws the stroke of one wheel as a bar against its limit, outward from the vehicle. */
final class BarPen {
    private static final Color FILL = new Color(0x8c, 0x8c, 0x8c);
    private static final double THICK = 0.5;
    private static final float LIMIT_LINE = 2.2f;
    private static final double HATCH = 3.2;

    private final Graphics2D g;
    private final double width;
    private final double height;
    private final double top;
    private final double thick;

    private BarPen(Graphics2D g, double width, double height) {
        this.g = g;
        this.width = width;
        this.height = height;
        this.thick = height * THICK;
        this.top = (height - thick) / 2;
    }

    static void draw(Graphics2D g, Element element, double width, double height) {
        if (element.getAttribute("data-side").equals("L")) {
            g.transform(new AffineTransform(-1, 0, 0, 1, width, 0));
        }
        double stroke = number(element, "data-stroke") * width;
        double limit = number(element, "data-limit") * width;
        BarPen pen = new BarPen(g, width, height);
        g.setColor(Color.BLACK);
        if (stroke > 0) {
            boolean over = Boolean.parseBoolean(element.getAttribute("data-over"));
            pen.bar(stroke, over && limit > 0 ? Math.min(limit, stroke) : stroke);
            pen.whisker(stroke, number(element, "data-off") * width);
        } else if (limit > 0) {
            pen.unmeasured(limit);
        }
        if (limit > 0) {
            pen.limit(limit);
        }
    }

    private static double number(Element element, String attribute) {
        String text = element.getAttribute(attribute);
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    /** Grey up to the given length, hatched beyond. */
    private void bar(double stroke, double grey) {
        g.setColor(FILL);
        g.fill(new Rectangle2D.Double(0, top, grey, thick));
        g.setColor(Color.BLACK);
        g.setStroke(new BasicStroke(0.6f));
        for (double x = grey + HATCH / 2; x < stroke + thick; x += HATCH) {
            hatch(x, grey, stroke);
        }
        g.draw(new Rectangle2D.Double(0, top, stroke, thick));
    }

    /** One slanted line, cut at both ends of the hatched part. */
    private void hatch(double bottomX, double from, double to) {
        double low = Math.min(bottomX, to);
        double high = Math.max(bottomX - thick, from);
        if (low > high) {
            double bottom = top + thick;
            g.draw(
                    new Line2D.Double(
                            low, bottom - (bottomX - low), high, bottom - (bottomX - high)));
        }
    }

    private void whisker(double stroke, double off) {
        if (off * 2 < 1) {
            return;
        }
        double middle = height / 2;
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new Line2D.Double(stroke - off, middle, Math.min(stroke + off, width), middle));
        for (double x : new double[] {stroke - off, Math.min(stroke + off, width)}) {
            g.draw(new Line2D.Double(x, middle - thick / 4, x, middle + thick / 4));
        }
    }

    private void unmeasured(double limit) {
        float[] dots = {1.5f, 2.5f};
        g.setStroke(
                new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, dots, 0));
        g.draw(new Rectangle2D.Double(0, top, limit, thick));
    }

    private void limit(double at) {
        g.setStroke(new BasicStroke(LIMIT_LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Line2D.Double(at, height * 0.06, at, height * 0.94));
    }
}
