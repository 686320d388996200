package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import org.fandown.trace.Recognised.Point;

/** A climb of pressure, from its foot on, and what follows its top. */
final class Climb {
    /** Without a new high for at least this time the pumping has ended, s. */
    private static final double PLATEAU = 6;

    /** A climb by this much and two steps is waited for, psi. */
    private static final double AWAITED = 1;

    /** Points of a climb that tell how fast it is now. */
    private static final int RECENT = 10;

    /** What is read at the top is the mean of this time, s. */
    private static final double LOOK = 3;

    /** A fall that is nowhere steeper than this from moment to moment is no application, psi. */
    private static final double GENTLE = 0.7;

    /** The last pounds of a climb that a governor ended, psi; at least two steps. */
    private static final double LAST = 2;

    /** A climb whose last pounds are slower than this part of those before fades. */
    private static final double ABRUPT = 0.45;

    private final List<Point> points = new ArrayList<>();
    private double high;
    private double highTime;
    private double before;
    private double steepest;
    private double topSum;
    private int topCount;

    /** Begins at a foot, seen when pressure had risen from it. */
    void begin(Point foot, Moment now, double level) {
        points.clear();
        points.add(foot);
        points.add(new Point(now.time, level));
        before = level;
        top(now, level);
    }

    private void top(Moment now, double level) {
        high = level;
        highTime = now.time;
        steepest = 0;
        topSum = now.higher();
        topCount = 1;
    }

    /** Takes the next pressure of the lower circuit. */
    void add(Moment now, double level, double step) {
        steepest = Math.max(steepest, before - level);
        before = level;
        if (level > high + Math.max(0.1, step / 2)) {
            top(now, level);
            if (level - points.get(points.size() - 1).psi() >= 1) {
                points.add(new Point(now.time, level));
            }
        } else if (now.time - highTime <= LOOK) {
            topSum += now.higher();
            topCount++;
        }
    }

    Point foot() {
        return points.get(0);
    }

    List<Point> points() {
        return points;
    }

    double high() {
        return high;
    }

    double highTime() {
        return highTime;
    }

    /** How far it went. */
    double height() {
        return high - foot().psi();
    }

    /** What the higher circuit showed at the top. */
    double topMean() {
        return topSum / topCount;
    }

    /** Whether no new high came for so long that the pumping has ended: the slower, the longer. */
    boolean levelled(double now, double step) {
        Point first = points.get(Math.max(0, points.size() - RECENT));
        double rate = (high - first.psi()) / Math.max(1, highTime - first.seconds());
        double awaited = (AWAITED + 2 * step) / Math.max(rate, 0.01);
        return now - highTime >= Math.max(PLATEAU, awaited);
    }

    /** Whether what followed the top fell too gently for an application. */
    boolean sinksGently(double step) {
        return steepest <= Math.max(GENTLE, 1.2 * step);
    }

    /** Whether the climb went on to its end as before: one against a leak fades. */
    boolean isAbrupt(double step) {
        double last = Math.max(LAST, 2 * step);
        double to = timeOf(high - last);
        double from = timeOf(high - 3 * last);
        if (Double.isNaN(from) || to <= from || highTime <= to) {
            return true;
        }
        return last / (highTime - to) >= ABRUPT * 2 * last / (to - from);
    }

    /** When the climb passed a pressure, between its points; NaN if it began higher. */
    private double timeOf(double psi) {
        for (int i = points.size() - 1; i > 0; i--) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (a.psi() <= psi && b.psi() > psi) {
                double part = (psi - a.psi()) / (b.psi() - a.psi());
                return a.seconds() + part * (b.seconds() - a.seconds());
            }
        }
        return Double.NaN;
    }
}
