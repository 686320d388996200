package org.fandown.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.fandown.plot.TraceView.Span;

/**
 * Finds room for the numbers of what was done: in rows above each other, so that none covers
 * another; where there are too many for that, in one row of plates that several share.
 */
final class Spans {
    private static final int MOST_ROWS = 4;

    /** Places together on one plate. */
    static final class Place {
        private final int row;
        private final int first;
        private int last;
        private final double from;
        private final double to;

        Place(int row, Span span, double from, double to) {
            this.row = row;
            this.first = span.number();
            this.last = span.number();
            this.from = from;
            this.to = to;
        }

        /** Which row it stands in, 0 lowest. */
        int row() {
            return row;
        }

        /** Its number, or its first and last. */
        String text() {
            return first == last
                    ? Integer.toString(first)
                    : Integer.toString(first) + "\u2013" + Integer.toString(last);
        }

        /** Left end of what was done. */
        double from() {
            return from;
        }

        /** Right end of it. */
        double to() {
            return to;
        }

        /** Where the plate stands: over the middle. */
        double middle() {
            return (from + to) / 2;
        }
    }

    private final double letter;
    private final double left;
    private final double right;
    private final List<Place> places = new ArrayList<>();
    private final List<Place> lastOfRow = new ArrayList<>();
    private boolean full;

    private Spans(double letter, double left, double right) {
        this.letter = letter;
        this.left = left;
        this.right = right;
    }

    /** Finds places between two edges for spans in order of their beginning. */
    static List<Place> of(
            List<Span> spans, DoubleUnaryOperator x, double letter, double left, double right) {
        Spans rows = new Spans(letter, left, right);
        spans.forEach(
                span -> rows.add(span, x.applyAsDouble(span.from()), x.applyAsDouble(span.to())));
        return rows.full ? rows.shared(spans, x) : rows.places;
    }

    /** One row of plates, each for all that begins beneath it. */
    private List<Place> shared(List<Span> spans, DoubleUnaryOperator x) {
        int digits = Integer.toString(spans.get(spans.size() - 1).number()).length();
        double apart = Wrap.width("0".repeat(2 * digits + 1), letter) + 1.2 * letter;
        List<Place> row = new ArrayList<>();
        double next = left;
        for (Span span : spans) {
            double at = x.applyAsDouble(span.from());
            // The first plate may have been moved away from the edge.
            double plate = Math.max(at, left + apart / 2);
            if (row.isEmpty() || (plate >= next && plate + apart / 2 <= right)) {
                row.add(new Place(0, span, at, at));
                next = plate + apart;
            } else {
                row.get(row.size() - 1).last = span.number();
            }
        }
        return row;
    }

    /** Width of a plate. */
    static double width(Place place, double letter) {
        return Math.max(1.7 * letter, Wrap.width(place.text(), letter) + 0.7 * letter);
    }

    /** The middle of a plate, moved so that it stays between the edges. */
    static double middle(Place place, double letter, double left, double right) {
        double half = width(place, letter) / 2;
        return Math.max(left + half, Math.min(right - half, place.middle()));
    }

    private double end(Place place) {
        return Math.max(
                place.to(), middle(place, letter, left, right) + width(place, letter) / 2 + 2);
    }

    private double start(Place place) {
        return Math.min(
                place.from(), middle(place, letter, left, right) - width(place, letter) / 2);
    }

    private void add(Span span, double from, double to) {
        for (int row = 0; row < lastOfRow.size(); row++) {
            Place place = new Place(row, span, from, to);
            if (start(place) >= end(lastOfRow.get(row))) {
                lastOfRow.set(row, place);
                places.add(place);
                return;
            }
        }
        if (lastOfRow.size() < MOST_ROWS) {
            Place place = new Place(lastOfRow.size(), span, from, to);
            lastOfRow.add(place);
            places.add(place);
            return;
        }
        full = true;
    }
}
