package org.fandown.judgement;

import org.fandown.evidence.Reading;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Judges pressure lost in the rule's time. Two readings give a difference; three or more a {@link
 * StraightLine} by least squares.
 */
final class AirLossJudge {
    private AirLossJudge() {}

    static Finding judge(Case before, Ruling ruling, Reading.Span span) {
        Unit unit = span.first().pressure().unit();
        Unit clock = span.first().time().unit();
        Quantity per = ((Limit.Numeric) ruling.limit()).edges().per().orElseThrow();
        double window = per.valueIn(clock);
        Measurement loss =
                span.samples().size() == 2
                        ? difference(before, span, clock, window)
                        : line(before, span, clock, window);
        if (loss.high() < 0) {
            return rose(ruling, loss);
        }
        return NumericJudge.compare(ruling, loss, Bounds.in(before, unit, span.at()));
    }

    private static Measurement difference(
            Case before, Reading.Span span, Unit clock, double window) {
        Unit unit = span.first().pressure().unit();
        double time = span.last().time().valueIn(clock) - span.first().time().valueIn(clock);
        double lost =
                (span.first().pressure().value() - span.last().pressure().value()) * window / time;
        double ofNeedle = Uncertainty.expanded(2, before.step(span, unit)) * window / time;
        return new Measurement(
                lost,
                unit,
                Uncertainty.combine(ofNeedle, ofClock(before, span, clock, lost, time)));
    }

    private static Measurement line(Case before, Reading.Span span, Unit clock, double window) {
        Unit unit = span.first().pressure().unit();
        StraightLine line = StraightLine.through(span.samples(), clock);
        double lost = -line.slope() * window;
        double ofNeedle = line.uncertainty(before.step(span, unit)) * window;
        return new Measurement(
                lost,
                unit,
                Uncertainty.combine(ofNeedle, ofClock(before, span, clock, lost, line.time())));
    }

    /** What the two ends of the time, each read to a step of the clock, add to the doubt. */
    private static double ofClock(
            Case before, Reading.Span span, Unit clock, double lost, double time) {
        return lost * Uncertainty.expanded(2, before.step(span, clock)) / time;
    }

    private static Finding rose(Ruling ruling, Measurement loss) {
        return Finding.of(
                ruling,
                Status.SPOILED,
                loss,
                Why.of(
                        () -> "The pressure rose, so air was being added or the air was warming.",
                        () ->
                                "Switch the engine off, let the needles settle, and do the test again."));
    }
}
