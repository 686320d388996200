package org.fandown.plot;

/**
 * How large a {@link TraceChart} is drawn.
 *
 * @param width its width
 * @param letter the height of its letters
 * @param height the height of the graph of pressures
 * @param line the width of the first curve
 */
public record ChartSize(double width, double letter, double height, double line) {
    /** For a screen, from a phone on. */
    public static final ChartSize SCREEN = new ChartSize(600, 14, 240, 2.2);

    /** For a sheet of paper, in pixels of 1/96 inch. */
    public static final ChartSize PAPER = new ChartSize(716, 9.4, 200, 1.5);

    /** Returns the same with another height of the graph. */
    public ChartSize high(double other) {
        return new ChartSize(width, letter, other, line);
    }
}
