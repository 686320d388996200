package org.fandown.trace;

import java.util.List;

/**
 * Something a trace shows to have been done, with what was measured.
 *
 * @param kind what was done
 * @param from when it began, s
 * @param to when it ended, s
 * @param value what was measured: psi, or psi a minute for a loss, or the number of applications; 0
 *     where {@link #points} tell it
 * @param uncertainty standard uncertainty of the value, in its unit
 * @param points times (s) and pressures (psi) of what was timed; empty where a value says it all
 * @param engine mean speed of the engine meanwhile, rpm, 0 while it stood; NaN if nothing tells
 * @param start pressure of the lower circuit at the beginning, psi
 */
public record Recognised(
        Kind kind,
        double from,
        double to,
        double value,
        double uncertainty,
        List<Point> points,
        double engine,
        double start) {
    /** What can be recognised. */
    public enum Kind {
        /** Pressure built up; the points are of the lower circuit. */
        BUILD_UP,
        /** The governor cut out, at the value. */
        CUT_OUT,
        /** The governor cut in, at the value. */
        CUT_IN,
        /** Air was lost with the brakes released. */
        LOSS_RELEASED,
        /** Air was lost with the brakes applied. */
        LOSS_APPLIED,
        /** Air was lost, and nothing tells whether the brakes were applied. */
        LOSS,
        /** The low-air warning came on at the value. */
        WARNING,
        /** The parking brake set itself at the value. */
        PARKING_CLOSED,
        /** The trailer supply valve closed by itself at the value. */
        TRAILER_CLOSED,
        /** The brakes were applied several times, engine off; the points are before and after. */
        APPLICATIONS,
        /** The supply reservoir was emptied; the value is what the circuits lost meanwhile. */
        SUPPLY_DRAINED;

        /** Returns whether it is an air loss, with a value in psi a minute. */
        public boolean isLoss() {
            return this == LOSS || this == LOSS_APPLIED || this == LOSS_RELEASED;
        }
    }

    /**
     * One point of a trace.
     *
     * @param seconds when
     * @param psi how much
     */
    public record Point(double seconds, double psi) {}

    /** Copies the points. */
    public Recognised {
        points = List.copyOf(points);
    }

    /** Something that a value says, without points. */
    static Recognised of(
            Kind kind, double from, double to, double value, double uncertainty, double engine) {
        return new Recognised(kind, from, to, value, uncertainty, List.of(), engine, value);
    }
}
