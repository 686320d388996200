package org.fandown.app.paper;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.util.Map;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Side;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** The drawn parts of the axle diagram: stroke bars, axles and the front of each unit. */
final class AxleDrawing {
    private static final String BAR = "fandown/bar";
    private static final String AXLE = "fandown/axle";
    private static final String HEAD = "fandown/head";

    /** More lines of text beside an axle do not occur. */
    private static final int MOST_LINES = 4;

    private AxleDrawing() {}

    /** Adds the bar of one wheel. */
    static void bar(Tag cell, WheelStroke wheel, Side side, double scale) {
        Tag object = object(cell, BAR, wheel.strokeText() + ", " + wheel.limitText());
        object.set("data-side", String.valueOf(side.letter()));
        if (scale > 0) {
            object.set("data-stroke", Double.toString(wheel.strokeMm() / scale));
            object.set("data-limit", Double.toString(wheel.limitMm() / scale));
            object.set("data-off", Double.toString(wheel.mayBeOff() / scale));
        }
        object.set("data-over", Boolean.toString(wheel.isOver()));
    }

    /** Adds an axle with its wheels, as seen from above. */
    static void axle(Tag cell, Axle axle, boolean last, int lines) {
        Tag object = object(cell, AXLE, "axle");
        object.set("class", "axle lines" + Math.min(lines, MOST_LINES));
        object.set("data-last", Boolean.toString(last));
        object.set("data-left", Boolean.toString(axle.left().isBraked()));
        object.set("data-right", Boolean.toString(axle.right().isBraked()));
    }

    /** Adds the front end of a unit: a cab, or the coupling to the unit in front. */
    static void head(Tag cell, boolean powered) {
        object(cell, HEAD, powered ? "front" : "coupling")
                .set("data-powered", Boolean.toString(powered));
    }

    private static Tag object(Tag cell, String type, String alternative) {
        String css = type.substring(type.indexOf('/') + 1);
        return cell.add("object", css)
                .set("type", type)
                .set("alt", alternative)
                .set("title", alternative);
    }

    /** What draws these parts into the document. */
    static DefaultObjectDrawerFactory drawers() {
        DefaultObjectDrawerFactory factory = new DefaultObjectDrawerFactory();
        factory.registerDrawer(BAR, drawer(BarPen::draw));
        factory.registerDrawer(AXLE, drawer(PlanPen::axle));
        factory.registerDrawer(HEAD, drawer(PlanPen::head));
        return factory;
    }

    /** Draws into a box of the given size (CSS pixels). */
    @FunctionalInterface
    interface Pen {
        void draw(Graphics2D g, Element element, double width, double height);
    }

    /** What draws with a pen. */
    static FSObjectDrawer drawer(Pen pen) {
        return new FSObjectDrawer() {
            @Override
            public @Nullable Map<Shape, String> drawObject(
                    Element element,
                    double x,
                    double y,
                    double width,
                    double height,
                    OutputDevice device,
                    RenderingContext context,
                    int dotsPerPixel) {
                double w = width / dotsPerPixel;
                double h = height / dotsPerPixel;
                device.drawWithGraphics(
                        (float) x,
                        (float) y,
                        (float) w,
                        (float) h,
                        g -> pen.draw(g, element, w, h));
                return null;
            }
        };
    }
}
