package org.fandown.plot;

import java.util.List;

/** One shape of a {@link Drawing}. x grows to the right, y downwards. */
public sealed interface Shape {
    /** A point. */
    record Point(double x, double y) {}

    /**
     * Straight lines from point to point.
     *
     * @param points two or more
     * @param ink what it is for
     * @param width width of the line
     * @param dashed whether it is dashed
     */
    record Trail(List<Point> points, Ink ink, double width, boolean dashed) implements Shape {
        /** Copies the points. */
        public Trail {
            points = List.copyOf(points);
        }

        static Trail line(Point from, Point to, Ink ink, double width) {
            return new Trail(List.of(from, to), ink, width, false);
        }
    }

    /**
     * A box with round corners, filled.
     *
     * @param corner the upper left corner
     * @param width its width
     * @param height its height
     * @param ink what it is for
     */
    record Plate(Point corner, double width, double height, Ink ink) implements Shape {}

    /**
     * One line of text.
     *
     * @param at where it stands: the base line at its start, middle or end
     * @param text the text
     * @param align which part of the text stands there
     * @param look how it is printed
     */
    record Label(Point at, String text, Align align, Look look) implements Shape {}

    /** Which part of a text stands at its point. */
    enum Align {
        /** Its left end. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Its right end. */
        END
    }

    /**
     * How a text is printed.
     *
     * @param ink what it is for
     * @param size height of the letters
     * @param bold whether it is bold
     * @param onPlate whether it stands on a {@link Plate}, so that it is light where the plate is
     *     dark
     */
    record Look(Ink ink, double size, boolean bold, boolean onPlate) {
        static Look plain(Ink ink, double size) {
            return new Look(ink, size, false, false);
        }

        static Look bold(Ink ink, double size) {
            return new Look(ink, size, true, false);
        }
    }
}
