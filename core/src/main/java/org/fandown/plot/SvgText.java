package org.fandown.plot;

import java.util.List;
import org.fandown.plot.Shape.Align;
import org.fandown.plot.Shape.Label;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;
import org.fandown.units.Decimals;

/**
 * Writes a drawing as an SVG file that stands for itself: light by day, dark where the reader
 * prefers it, no wider than it is good to read.
 */
public final class SvgText {
    private static final List<String> STYLE =
            List.of(
                    "svg{background:#fbfaf4;max-width:60rem;margin:auto;display:block}",
                    "text{font-family:system-ui,'DejaVu Sans',sans-serif;",
                    "font-variant-numeric:tabular-nums}",
                    ".b{font-weight:700}",
                    ".trail{fill:none;stroke-linejoin:round;stroke-linecap:round}",
                    "text.text{fill:#17181c}text.faint{fill:#55585f}",
                    "text.first{fill:#0b4a86}text.second{fill:#a33e00}text.third{fill:#55585f}",
                    "text.mark{fill:#17181c}text.hazard{fill:#ab0020}",
                    ".trail.faint{stroke:#55585f}.trail.grid{stroke:#d8d4c6}",
                    ".trail.first{stroke:#0b4a86}.trail.second{stroke:#d95f0e}",
                    ".trail.third{stroke:#8a8578}.trail.text{stroke:#17181c}",
                    ".trail.mark{stroke:#8d8a7e}.trail.hazard{stroke:#ab0020}",
                    "rect.mark{fill:#3d4048}rect.hazard{fill:#ab0020}",
                    "rect.band{fill:#ece8d9}rect.faint{fill:#55585f}",
                    "text.on{fill:#fff}",
                    "@media (prefers-color-scheme:dark){",
                    "svg{background:#14171b}",
                    "text.text,text.mark{fill:#f1f0ea}text.faint{fill:#b4b6bb}",
                    "text.first{fill:#8cc8ff}text.second{fill:#ffb27a}text.hazard{fill:#ff9aa2}",
                    "text.third{fill:#b4b6bb}",
                    ".trail.faint{stroke:#b4b6bb}.trail.grid{stroke:#383c42}",
                    ".trail.first{stroke:#8cc8ff}.trail.second{stroke:#ff9a4d}",
                    ".trail.third{stroke:#8d9097}.trail.text{stroke:#f1f0ea}",
                    ".trail.mark{stroke:#74777d}.trail.hazard{stroke:#ff9aa2}",
                    "rect.mark{fill:#d5d3c9}rect.hazard{fill:#ff9aa2}",
                    "rect.band{fill:#232830}rect.faint{fill:#b4b6bb}",
                    "text.on{fill:#14171b}",
                    "}");
    private static final int DECIMALS = 2;

    private final StringBuilder out = new StringBuilder();

    private SvgText() {}

    /**
     * Writes a drawing.
     *
     * @param drawing the drawing
     * @return the whole SVG file
     */
    public static String of(Drawing drawing) {
        SvgText svg = new SvgText();
        svg.begin(drawing);
        drawing.shapes().forEach(svg::shape);
        return svg.out.append("</svg>\n").toString();
    }

    private void begin(Drawing drawing) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100%\" viewBox=\"0 0 ")
                .append(figure(drawing.width()))
                .append(' ')
                .append(figure(drawing.height()))
                .append("\" role=\"img\">\n<title>")
                .append(escaped(drawing.title()))
                .append("</title>\n<style>\n")
                .append(String.join("\n", STYLE))
                .append("\n</style>\n");
    }

    private void shape(Shape shape) {
        if (shape instanceof Trail trail) {
            trail(trail);
        } else if (shape instanceof Plate plate) {
            plate(plate);
        } else if (shape instanceof Label label) {
            label(label);
        }
    }

    private void trail(Trail trail) {
        out.append("<path class=\"trail ").append(name(trail.ink())).append("\" d=\"");
        char command = 'M';
        for (Point point : trail.points()) {
            out.append(command).append(figure(point.x())).append(' ').append(figure(point.y()));
            command = 'L';
        }
        out.append("\" stroke-width=\"").append(figure(trail.width())).append('"');
        if (trail.dashed()) {
            out.append(" stroke-dasharray=\"")
                    .append(trail.width() > 1 ? "7 5" : "2 4")
                    .append('"');
        }
        out.append("/>\n");
    }

    private void plate(Plate plate) {
        out.append("<rect class=\"").append(name(plate.ink())).append('"');
        attribute("x", plate.corner().x());
        attribute("y", plate.corner().y());
        attribute("width", plate.width());
        attribute("height", plate.height());
        attribute("rx", corner(plate));
        out.append("/>\n");
    }

    /** Bands are square; small plates are not quite round. */
    private static double corner(Plate plate) {
        double least = Math.min(plate.width(), plate.height());
        return plate.ink() == Ink.BAND ? 0 : Math.min(5, least / 3);
    }

    private void label(Label label) {
        out.append("<text class=\"")
                .append(label.look().onPlate() ? "on" : name(label.look().ink()));
        out.append(label.look().bold() ? " b\"" : "\"");
        attribute("x", label.at().x());
        attribute("y", label.at().y());
        attribute("font-size", label.look().size());
        if (label.align() != Align.START) {
            out.append(" text-anchor=\"")
                    .append(label.align() == Align.END ? "end" : "middle")
                    .append('"');
        }
        out.append('>').append(escaped(label.text())).append("</text>\n");
    }

    private void attribute(String name, double value) {
        out.append(' ').append(name).append("=\"").append(figure(value)).append('"');
    }

    private static String figure(double value) {
        return Decimals.formatShort(value, DECIMALS);
    }

    private static String name(Ink ink) {
        return switch (ink) {
            case TEXT -> "text";
            case FAINT -> "faint";
            case GRID -> "grid";
            case FIRST -> "first";
            case SECOND -> "second";
            case THIRD -> "third";
            case BAND -> "band";
            case MARK -> "mark";
            case HAZARD -> "hazard";
        };
    }

    private static boolean isXml(String text, int at) {
        char c = text.charAt(at);
        if (isHigh(c)) {
            return at + 1 < text.length() && isLow(text.charAt(at + 1));
        }
        if (isLow(c)) {
            return at > 0 && isHigh(text.charAt(at - 1));
        }
        return c >= ' ' && c < '\ufffe';
    }

    private static boolean isHigh(char c) {
        return c >= '\ud800' && c < '\udc00';
    }

    private static boolean isLow(char c) {
        return c >= '\udc00' && c < '\ue000';
    }

    /** Characters that XML cannot hold become blanks. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.append(isXml(text, i) ? c : ' ');
            }
        }
        return escaped.toString();
    }
}
