package org.fandown.braking;

import java.util.List;

/** A range of bare numbers, in a unit its user knows. */
record Span(double least, double most) {
    static final Span ZERO = new Span(0, 0);

    static Span exactly(double value) {
        return new Span(value, value);
    }

    static Span sum(List<Span> spans) {
        Span total = ZERO;
        for (Span span : spans) {
            total = new Span(total.least + span.least, total.most + span.most);
        }
        return total;
    }

    Span times(double factor) {
        return new Span(least * factor, most * factor);
    }

    Span atMost(double cap) {
        return new Span(Math.min(least, cap), Math.min(most, cap));
    }
}
