package org.fandown.app.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import org.w3c.dom.Element;

/** Draws the vehicle from above, one table row at a time: frame, axle, wheels, cab, coupling. */
final class PlanPen {
    private static final Color FRAME = new Color(0x59, 0x59, 0x59);
    private static final double RAIL = 0.12;
    private static final double WHEEL_WIDTH = 0.16;

    private PlanPen() {}

    static void axle(Graphics2D g, Element element, double width, double height) {
        rails(g, width, 0, is(element, "data-last") ? height * 0.8 : height);
        g.setColor(Color.BLACK);
        g.setStroke(new BasicStroke(1.6f));
        g.draw(new Line2D.Double(width * 0.1, height / 2, width * 0.9, height / 2));
        wheel(g, width * 0.02, width, height, is(element, "data-left"));
        wheel(g, width * (0.98 - WHEEL_WIDTH), width, height, is(element, "data-right"));
    }

    private static boolean is(Element element, String attribute) {
        return Boolean.parseBoolean(element.getAttribute(attribute));
    }

    private static void wheel(Graphics2D g, double x, double width, double height, boolean braked) {
        RoundRectangle2D wheel =
                new RoundRectangle2D.Double(
                        x, height * 0.17, width * WHEEL_WIDTH, height * 0.66, 2, 2);
        if (braked) {
            g.fill(wheel);
        } else {
            g.setStroke(new BasicStroke(0.8f));
            g.draw(wheel);
        }
    }

    private static void rails(Graphics2D g, double width, double from, double to) {
        g.setColor(FRAME);
        g.setStroke(new BasicStroke(1.2f));
        for (double x : new double[] {width * (0.5 - RAIL), width * (0.5 + RAIL)}) {
            g.draw(new Line2D.Double(x, from, x, to));
        }
    }

    static void head(Graphics2D g, Element element, double width, double height) {
        g.setColor(FRAME);
        g.setStroke(new BasicStroke(1.2f));
        if (!is(element, "data-powered")) {
            g.draw(new Line2D.Double(width / 2, 0, width / 2, height * 0.55));
            double edge = width * RAIL;
            g.draw(
                    new Line2D.Double(
                            width / 2 - edge, height * 0.55, width / 2 + edge, height * 0.55));
            rails(g, width, height * 0.55, height);
            return;
        }
        Path2D cab = new Path2D.Double();
        cab.moveTo(width * 0.26, height);
        cab.lineTo(width * 0.26, height * 0.45);
        cab.quadTo(width * 0.26, height * 0.12, width * 0.42, height * 0.12);
        cab.lineTo(width * 0.58, height * 0.12);
        cab.quadTo(width * 0.74, height * 0.12, width * 0.74, height * 0.45);
        cab.lineTo(width * 0.74, height);
        g.draw(cab);
    }
}
