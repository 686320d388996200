package org.fandown.judgement;

import java.util.List;
import org.fandown.evidence.Reading;
import org.fandown.evidence.Sample;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Judges the time in which pressure climbs through the rule's window. With several points the
 * window is interpolated; with two, a span that is wider than the window can only prove that the
 * window took no longer.
 */
final class BuildUpJudge {
    private static final double SLACK = 1e-9;

    /** Books print one window in two units that differ by less than this (psi). */
    private static final double NEAR_PSI = 1;

    private BuildUpJudge() {}

    static Finding judge(Case before, Ruling ruling, Reading.Span span) {
        Rule.Window window = ruling.rule().method().window().orElseThrow();
        Unit pressure = span.first().pressure().unit();
        Bounds ends = Bounds.in(before, pressure, span.at());
        double from = window.from().map(ends::value).orElse(0.0);
        double to = ends.value(window.to());
        if (ends.missing().isPresent()) {
            return Finding.of(
                    ruling,
                    Status.UNDETERMINED,
                    Why.of(() -> "The window needs " + ends.missing().get() + "."));
        }
        return judge(before, ruling, span, from, to);
    }

    private static Finding judge(
            Case before, Ruling ruling, Reading.Span span, double from, double to) {
        double first = span.first().pressure().value();
        double last = span.last().pressure().value();
        double near = Quantity.of(NEAR_PSI, Unit.PSI).valueIn(span.first().pressure().unit());
        boolean sameEnds = Math.abs(first - from) <= near && Math.abs(last - to) <= near;
        boolean twoReadings = span.samples().size() == 2;
        if (twoReadings && sameEnds) {
            return scaled(before, ruling, span, to - from);
        }
        if (first > from + SLACK || last < to - SLACK) {
            return narrower(ruling, span);
        }
        Unit clock = span.first().time().unit();
        if (twoReadings) {
            return wider(before, ruling, span, clock);
        }
        double time = crossing(span.samples(), to, clock) - crossing(span.samples(), from, clock);
        Measurement measured = new Measurement(time, clock, doubt(before, span, time, to - from));
        return NumericJudge.compare(ruling, measured, Bounds.in(before, clock, span.at()));
    }

    /** Timed between ends that are the rule's own, or no more than a needle's width from them. */
    private static Finding scaled(Case before, Ruling ruling, Reading.Span span, double rise) {
        Unit clock = span.first().time().unit();
        double timed = span.last().time().valueIn(clock) - span.first().time().valueIn(clock);
        double climbed = span.last().pressure().value() - span.first().pressure().value();
        double time = Math.abs(climbed - rise) <= SLACK ? timed : timed * rise / climbed;
        double doubt = Uncertainty.combine(doubt(before, span, time, rise), Math.abs(timed - time));
        return NumericJudge.compare(
                ruling, new Measurement(time, clock, doubt), Bounds.in(before, clock, span.at()));
    }

    /** Two clock readings, and two needle readings turned into time by the rate of climb. */
    private static double doubt(Case before, Reading.Span span, double time, double rise) {
        double ofClock = Uncertainty.expanded(2, before.step(span, span.first().time().unit()));
        double ofNeedle =
                Uncertainty.expanded(2, before.step(span, span.first().pressure().unit()));
        return Uncertainty.combine(ofClock, ofNeedle * time / rise);
    }

    private static double crossing(List<Sample> samples, double pressure, Unit clock) {
        for (int i = 1; i < samples.size(); i++) {
            double low = samples.get(i - 1).pressure().value();
            double high = samples.get(i).pressure().value();
            if (high >= pressure - SLACK && high > low && (low <= pressure + SLACK)) {
                double share = Math.min(1, Math.max(0, (pressure - low) / (high - low)));
                double start = samples.get(i - 1).time().valueIn(clock);
                return start + share * (samples.get(i).time().valueIn(clock) - start);
            }
        }
        return samples.get(samples.size() - 1).time().valueIn(clock);
    }

    private static Finding narrower(Ruling ruling, Reading.Span span) {
        Rule.Window window = ruling.rule().method().window().orElseThrow();
        return Finding.of(
                ruling,
                Status.SPOILED,
                Why.of(
                        () ->
                                "Timed from "
                                        + span.first().pressure()
                                        + " to "
                                        + span.last().pressure()
                                        + "; the rule times it "
                                        + window
                                        + "."
                                        + Demanded.sentence(ruling.rule().words()),
                        () -> "Time it again " + window + "."));
    }

    private static Finding wider(Case before, Ruling ruling, Reading.Span span, Unit clock) {
        double time = span.last().time().valueIn(clock) - span.first().time().valueIn(clock);
        Measurement atMost =
                new Measurement(time, clock, Uncertainty.expanded(2, before.step(span, clock)));
        Finding finding = NumericJudge.compare(ruling, atMost, Bounds.in(before, clock, span.at()));
        boolean atMostOnly = ((Limit.Numeric) ruling.limit()).edges().lower().isEmpty();
        if (finding.status() == Status.MET && atMostOnly) {
            return finding;
        }
        return finding.as(
                Status.UNDETERMINED,
                Why.of(
                        () ->
                                "Timed over a wider span ("
                                        + span.first().pressure()
                                        + " to "
                                        + span.last().pressure()
                                        + ") than the rule's, and too long to prove that the rule's part"
                                        + " of it was quick enough.",
                        () ->
                                "Time it again "
                                        + ruling.rule().method().window().orElseThrow()
                                        + ", or note the needle at several moments."));
    }
}
