package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.fandown.plot.Shape.Point;

/**
 * A curve with no more points than can be told apart: of each narrow strip the first, lowest,
 * highest and last, so that no peak is lost.
 */
final class Thinned {
    private static final double STRIP = 0.5;

    private final Curve curve;
    private final DoubleUnaryOperator x;
    private final DoubleUnaryOperator y;
    private final List<Point> points = new ArrayList<>();

    private Thinned(Curve curve, DoubleUnaryOperator x, DoubleUnaryOperator y) {
        this.curve = curve;
        this.x = x;
        this.y = y;
    }

    static List<Point> of(Curve curve, DoubleUnaryOperator x, DoubleUnaryOperator y) {
        Thinned thinned = new Thinned(curve, x, y);
        thinned.fill();
        return thinned.points;
    }

    private void fill() {
        int from = 0;
        for (int i = 1; i <= curve.size(); i++) {
            if (i == curve.size() || strip(i) != strip(from)) {
                add(from, i - 1);
                from = i;
            }
        }
    }

    private double strip(int index) {
        return Math.floor(x.applyAsDouble(curve.time(index)) / STRIP);
    }

    private void add(int from, int to) {
        int low = from;
        int high = from;
        for (int i = from; i <= to; i++) {
            low = curve.value(i) < curve.value(low) ? i : low;
            high = curve.value(i) > curve.value(high) ? i : high;
        }
        point(from);
        int first = Math.min(low, high);
        int second = Math.max(low, high);
        if (first > from) {
            point(first);
        }
        if (second > first) {
            point(second);
        }
        if (to > second) {
            point(to);
        }
    }

    private void point(int index) {
        points.add(
                new Point(x.applyAsDouble(curve.time(index)), y.applyAsDouble(curve.value(index))));
    }
}
