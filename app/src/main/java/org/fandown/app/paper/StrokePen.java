package org.fandown.app.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.List;

/** Puts what a person drew on the line for it. */
final class StrokePen {
    /** The type of the drawn object. */
    static final String TYPE = "fandown/signature";

    private static final float PEN = 5;

    private StrokePen() {}

    static void add(Tag cell, DrawnSignature drawn) {
        String alternative = "Drawn signature of " + Clean.text(drawn.name());
        cell.add("object", "drawn")
                .set("type", TYPE)
                .set("alt", alternative)
                .set("title", alternative);
    }

    static void draw(Graphics2D g, DrawnSignature drawn, double width, double height) {
        double scale = Math.min(width / DrawnSignature.WIDTH, height / DrawnSignature.HEIGHT);
        g.scale(scale, scale);
        g.setColor(Color.BLACK);
        g.setStroke(new BasicStroke(PEN, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (List<Double> stroke : drawn.strokes()) {
            if (stroke.isEmpty()) {
                continue;
            }
            Path2D path = new Path2D.Double();
            path.moveTo(stroke.get(0), stroke.get(1));
            for (int i = 0; i + 1 < stroke.size(); i += 2) {
                path.lineTo(stroke.get(i), stroke.get(i + 1));
            }
            g.draw(path);
        }
    }
}
