package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.fandown.plot.Shape.Point;

/** Cuts a curve where nothing was recorded, so that no line is drawn there. */
final class Pieces {
    /** As the readers of logs have it, a longer silence is a gap, s. */
    private static final double GAP = 3;

    /** Where values come seldom, a silence so many times the usual one is a gap. */
    private static final double TIMES = 6;

    private static final double HALF = 0.5;

    private Pieces() {}

    static List<Curve> of(Curve curve) {
        List<Curve> pieces = new ArrayList<>();
        double usual =
                curve.size() < 2
                        ? GAP
                        : (curve.time(curve.size() - 1) - curve.time(0)) / (curve.size() - 1);
        double gap = Math.max(GAP, TIMES * usual);
        Curve piece = new Curve(curve.name());
        for (int i = 0; i < curve.size(); i++) {
            if (piece.size() > 0 && curve.time(i) - curve.time(i - 1) > gap) {
                pieces.add(piece);
                piece = new Curve(curve.name());
            }
            piece.add(curve.time(i), curve.value(i));
        }
        if (piece.size() > 0) {
            pieces.add(piece);
        }
        return pieces;
    }

    /** Returns where a switch is on, from left to right; what cannot be told apart is joined. */
    static List<double[]> on(Curve piece, DoubleUnaryOperator x) {
        List<double[]> bars = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= piece.size(); i++) {
            boolean end = i == piece.size();
            boolean on = !end && piece.value(i) > HALF;
            if (on && from < 0) {
                from = i;
            } else if (!on && from >= 0) {
                double right = x.applyAsDouble(piece.time(end ? i - 1 : i));
                join(bars, x.applyAsDouble(piece.time(from)), right);
                from = -1;
            }
        }
        return bars;
    }

    private static void join(List<double[]> bars, double left, double right) {
        double[] last = bars.isEmpty() ? null : bars.get(bars.size() - 1);
        if (last != null && left - last[1] < HALF) {
            last[1] = right;
        } else {
            bars.add(new double[] {left, right});
        }
    }

    /** Returns the parts of a trail that lie between two heights, cut where it crosses them. */
    static List<List<Point>> between(List<Point> trail, double top, double bottom) {
        List<List<Point>> parts = new ArrayList<>();
        List<Point> part = new ArrayList<>();
        for (int i = 1; i < trail.size(); i++) {
            Point a = trail.get(i - 1);
            Point b = trail.get(i);
            if (Math.max(a.y(), b.y()) < top || Math.min(a.y(), b.y()) > bottom) {
                continue;
            }
            Point from = cut(a, b, top, bottom);
            if (part.isEmpty() || !part.get(part.size() - 1).equals(from)) {
                part = new ArrayList<>();
                parts.add(part);
                part.add(from);
            }
            part.add(cut(b, a, top, bottom));
        }
        return parts;
    }

    /** The point itself, or where the line to another enters from outside. */
    private static Point cut(Point point, Point other, double top, double bottom) {
        double y = Math.min(bottom, Math.max(top, point.y()));
        if (y == point.y() || other.y() == point.y()) {
            return point;
        }
        double share = (y - point.y()) / (other.y() - point.y());
        return new Point(point.x() + share * (other.x() - point.x()), y);
    }
}
