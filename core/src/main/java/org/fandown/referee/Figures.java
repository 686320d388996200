package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.CheckKind;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Reading;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Holds figures that were written down against what the instruments really showed. */
final class Figures {
    private static final double BEFORE = 0.5;
    private static final double AFTER = 3;

    /** A needle this near to where it ended is where it was read, psi. */
    private static final double NEAR = 4;

    private static final String READ =
            "Read each needle in the moment it happens, straight on, and write down what it shows.";

    private final Tale tale;
    private final double psi;
    private final double seconds;

    Figures(Tale tale, Sheet sheet) {
        this.tale = tale;
        psi = tolerance(sheet, Unit.PSI);
        seconds = tolerance(sheet, Unit.SECOND);
    }

    /** The step of the instrument, and what the sheet allows beside. */
    static double tolerance(Sheet sheet, Unit unit) {
        return Instruments.USUAL.step(unit) + sheet.allowed(Item.FIGURES, unit);
    }

    /**
     * Whether a figure is that of the needle when a sign was waited for in vain, and a note beside
     * it says so.
     */
    static boolean isAtTheEnd(Tale tale, Attempt attempt) {
        Optional<Sign.Kind> kind = Proofs.sign(attempt.check());
        if (kind.isEmpty()
                || !(attempt.reading().orElse(null) instanceof Reading.Value value)
                || value.note().isEmpty()) {
            return false;
        }
        Stretch window = attempt.window();
        boolean up = kind.get() == Sign.Kind.CUT_OUT;
        double end =
                up
                        ? tale.mostOfLower(window.from(), window.to())
                        : tale.leastOfHigher(window.from(), window.to());
        return Math.abs(value.values().get(0).valueIn(Unit.PSI) - end) <= NEAR;
    }

    /** What is wrong with the figures of one check; {@code made} is where it was made. */
    Optional<Feedback> of(Attempt attempt, List<Proof> made) {
        Reading reading = attempt.reading().orElse(null);
        if (reading instanceof Reading.Value value
                && value.check().dimension().equals(Optional.of(Dimension.GAUGE_PRESSURE))) {
            return pressure(attempt, value, made);
        }
        if (reading instanceof Reading.Span span) {
            return span(attempt, span);
        }
        return Optional.empty();
    }

    private Optional<Feedback> pressure(Attempt attempt, Reading.Value value, List<Proof> made) {
        Optional<Sign.Kind> kind = Proofs.sign(attempt.check());
        if (kind.isPresent() && made.isEmpty()) {
            return Optional.empty();
        }
        Stretch when = kind.isPresent() ? around(made.get(0).made().from()) : attempt.window();
        List<Quantity> values = value.values();
        boolean right = true;
        for (int i = 0; i < values.size(); i++) {
            double figure = values.get(i).valueIn(Unit.PSI);
            Which which = values.size() > 1 ? Which.of(i) : Which.of(kind);
            right &= shows(when, which, figure);
        }
        return right ? Optional.empty() : Optional.of(wrong(attempt, values, when, kind));
    }

    private Stretch around(long tick) {
        return new Stretch(
                Math.max(0, tick - Tale.ticks(BEFORE)),
                Math.min(tale.ticks, tick + Tale.ticks(AFTER)));
    }

    /** Which needle a figure has to be read on. */
    private enum Which {
        PRIMARY,
        SECONDARY,
        LOWER,
        HIGHER,
        EITHER;

        static Which of(int index) {
            return index == 0 ? PRIMARY : SECONDARY;
        }

        static Which of(Optional<Sign.Kind> kind) {
            if (kind.isEmpty()) {
                return EITHER;
            }
            return switch (kind.get()) {
                case CUT_OUT, CUT_IN -> EITHER;
                case WARNING -> LOWER;
                case PARKING_OUT, TRAILER_OUT -> HIGHER;
            };
        }
    }

    private boolean shows(Stretch when, Which which, double figure) {
        return switch (which) {
            case PRIMARY -> between(when, figure, tick -> tale.needles.primary(tick));
            case SECONDARY -> between(when, figure, tick -> tale.needles.secondary(tick));
            case LOWER -> between(when, figure, tick -> tale.needles.lower(tick));
            case HIGHER -> between(when, figure, tick -> tale.needles.higher(tick));
            case EITHER ->
                    shows(when, Which.PRIMARY, figure) || shows(when, Which.SECONDARY, figure);
        };
    }

    private boolean between(
            Stretch when, double figure, java.util.function.LongToDoubleFunction shown) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (long tick = when.from(); tick <= when.to(); tick += NeedleTrack.EVERY) {
            double now = shown.applyAsDouble(tick);
            least = Math.min(least, now);
            most = Math.max(most, now);
        }
        return figure >= least - psi && figure <= most + psi;
    }

    private Feedback wrong(
            Attempt attempt, List<Quantity> values, Stretch when, Optional<Sign.Kind> kind) {
        long tick = kind.isPresent() ? when.from() + Tale.ticks(BEFORE) : when.to();
        String which =
                switch (Which.of(kind)) {
                    case LOWER -> " It is the lower needle that counts.";
                    case HIGHER -> " It is the higher needle that counts.";
                    default -> "";
                };
        return new Feedback(
                Item.FIGURES,
                Tale.seconds(tick),
                attempt.check().title()
                        + " was written down as "
                        + written(values)
                        + "; at "
                        + Words.clock(Tale.seconds(tick))
                        + " the needles showed "
                        + needles(tick)
                        + "."
                        + which,
                "A verdict is worth no more than its figures.",
                READ);
    }

    private static String written(List<Quantity> values) {
        List<String> texts = new ArrayList<>();
        values.forEach(value -> texts.add(value.written()));
        return String.join(" and ", texts);
    }

    private String needles(long tick) {
        return "primary "
                + Words.psi(tale.needles.primary(tick))
                + ", secondary "
                + Words.psi(tale.needles.secondary(tick));
    }

    private Optional<Feedback> span(Attempt attempt, Reading.Span span) {
        double first = span.first().pressure().valueIn(Unit.PSI);
        double last = span.last().pressure().valueIn(Unit.PSI);
        double took =
                span.last().time().valueIn(Unit.SECOND) - span.first().time().valueIn(Unit.SECOND);
        boolean loss = span.check().kind() == CheckKind.AIR_LOSS;
        boolean onlyLoss =
                loss && span.at().quantity(org.fandown.check.Circumstance.START_PRESSURE).isEmpty();
        Stretch when = attempt.window();
        if (when.seconds() + seconds < took) {
            return Optional.of(clock(attempt, took));
        }
        for (long tick = when.from(); tick <= when.to(); tick += NeedleTrack.EVERY) {
            if (matches(tick, first, last, took, when.to(), onlyLoss)) {
                return Optional.empty();
            }
        }
        return Optional.of(unmatched(attempt, first, last, took, loss));
    }

    private boolean matches(
            long tick, double first, double last, double took, long end, boolean onlyLoss) {
        for (int needle = 0; needle < 2; needle++) {
            double begun = tale.needles.needle(needle == 0, tick);
            if (!onlyLoss && Math.abs(begun - first) > psi) {
                continue;
            }
            long from = tick + Tale.ticks(Math.max(0, took - seconds));
            long to = Math.min(end, tick + Tale.ticks(took + seconds));
            for (long then = from; then <= to; then += 10 * NeedleTrack.EVERY) {
                double now = tale.needles.needle(needle == 0, then);
                boolean change = Math.abs(begun - now - (first - last)) <= psi;
                if (change && (onlyLoss || Math.abs(now - last) <= psi)) {
                    return true;
                }
            }
        }
        return false;
    }

    private Feedback clock(Attempt attempt, double took) {
        return new Feedback(
                Item.FIGURES,
                attempt.seconds(),
                attempt.check().title()
                        + " was written down as timed for "
                        + Words.seconds(took)
                        + ", but only "
                        + Words.seconds(attempt.window().seconds())
                        + " passed.",
                "A verdict is worth no more than its figures.",
                "Start the clock with the first reading and stop it with the last.");
    }

    private Feedback unmatched(
            Attempt attempt, double first, double last, double took, boolean loss) {
        long end = attempt.window().to();
        long begin = Math.max(attempt.window().from(), end - Tale.ticks(took));
        String what = loss ? " lost in " : " climbed in ";
        return new Feedback(
                Item.FIGURES,
                attempt.seconds(),
                attempt.check().title()
                        + " was written down as "
                        + Words.psi(first)
                        + " to "
                        + Words.psi(last)
                        + what
                        + Words.seconds(took)
                        + "; no needle did that. At "
                        + Words.clock(Tale.seconds(begin))
                        + " they showed "
                        + needles(begin)
                        + ", at "
                        + Words.clock(Tale.seconds(end))
                        + " "
                        + needles(end)
                        + ".",
                "A verdict is worth no more than its figures.",
                READ);
    }
}
