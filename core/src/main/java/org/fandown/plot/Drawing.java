package org.fandown.plot;

import java.util.List;

/**
 * A picture as a list of shapes, the first drawn first.
 *
 * @param title what it shows, for those who cannot see it
 * @param width its width
 * @param height its height
 * @param shapes what is in it, all inside 0 to width and 0 to height
 */
public record Drawing(String title, double width, double height, List<Shape> shapes) {
    /** Copies the shapes. */
    public Drawing {
        shapes = List.copyOf(shapes);
    }
}
