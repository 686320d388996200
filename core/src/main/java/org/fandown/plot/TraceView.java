package org.fandown.plot;

import java.util.List;

/**
 * What a {@link TraceChart} shows: a piece of a trace, and what was done in it.
 *
 * @param from where the piece begins, s
 * @param to where it ends, s, after its beginning
 * @param whole whether the scale of pressure starts at 0; otherwise it is as fine as the piece lets
 *     it be
 * @param pressures one to three curves, in psi over seconds
 * @param panels other things that have a number
 * @param strips switches
 * @param spans what was done when
 * @param figure what was measured
 * @param focus the time whose pressures the scale has to hold, where it does not start at 0
 */
public record TraceView(
        double from,
        double to,
        boolean whole,
        List<Curve> pressures,
        List<Panel> panels,
        List<Strip> strips,
        List<Span> spans,
        Figure figure,
        Focus focus) {
    /** Copies the lists. */
    public TraceView {
        pressures = List.copyOf(pressures);
        panels = List.copyOf(panels);
        strips = List.copyOf(strips);
        spans = List.copyOf(spans);
    }

    /**
     * A piece of time.
     *
     * @param from where it begins, s
     * @param to where it ends, s
     */
    public record Focus(double from, double to) {}

    /**
     * Something that has a number, on a scale of its own that starts at 0.
     *
     * @param title what it is, with its unit
     * @param curve its values
     * @param top what its scale has to hold at least
     */
    public record Panel(String title, Curve curve, double top) {}

    /**
     * Something that is on or off.
     *
     * @param title what it is while it is on
     * @param curve 1 while it is on, 0 while it is off
     */
    public record Strip(String title, Curve curve) {}

    /**
     * Something done, under a number.
     *
     * @param number the number
     * @param from when it began, s
     * @param to when it ended, s
     */
    public record Span(int number, double from, double to) {}

    /**
     * What was measured: points joined by lines, each with its doubt.
     *
     * @param curve times (s) and pressures (psi), in order of time; empty to draw nothing
     * @param half half of the interval that holds the true value, psi; 0 to draw none
     * @param joined whether the points are joined by lines
     */
    public record Figure(Curve curve, double half, boolean joined) {
        /** Nothing measured. */
        public static Figure none() {
            return new Figure(new Curve(""), 0, false);
        }
    }
}
