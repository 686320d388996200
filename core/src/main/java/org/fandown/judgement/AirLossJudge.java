package org.fandown.judgement;

import java.util.List;
import org.fandown.evidence.Reading;
import org.fandown.evidence.Sample;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Judges pressure lost in the rule's time. Two readings give a difference; three or more a straight
 * line by least squares.
 *
 * <p>Quantisation errors of successive readings are not independent while the needle moves only a
 * few steps. The standard error of the line is therefore taken no smaller than q / T x min(0.6,
 * 0.425 / n), with q the step, T the time and n the number of steps the needle moved: an envelope
 * of errors enumerated over all sub-step phases of a noise-free staircase of 61 readings (0.584 q/T
 * at half a step, 0.425 at one, 0.212 at two, 0.105 at four).
 */
final class AirLossJudge {
    private static final double ENVELOPE_FEW_STEPS = 0.6;
    private static final double ENVELOPE_BY_STEPS = 0.425;
    private static final double COVERAGE = 2;

    private AirLossJudge() {}

    static Finding judge(Case before, Ruling ruling, Reading.Span span) {
        Unit unit = span.first().pressure().unit();
        Unit clock = span.first().time().unit();
        Quantity per = ((Limit.Numeric) ruling.limit()).edges().per().orElseThrow();
        double window = per.valueIn(clock);
        double time = span.last().time().valueIn(clock) - span.first().time().valueIn(clock);
        Measurement loss =
                span.samples().size() == 2
                        ? difference(before, span, time, window)
                        : line(before, span.samples(), unit, clock, window);
        if (loss.high() < 0) {
            return rose(ruling, loss);
        }
        return NumericJudge.compare(ruling, loss, Bounds.in(before, unit, span.at()));
    }

    private static Measurement difference(
            Case before, Reading.Span span, double time, double window) {
        Unit unit = span.first().pressure().unit();
        double lost =
                (span.first().pressure().value() - span.last().pressure().value()) * window / time;
        double ofNeedle =
                Uncertainty.expanded(2, before.inspection().instruments().step(unit))
                        * window
                        / time;
        double ofClock =
                Uncertainty.expanded(
                        2, before.inspection().instruments().step(span.first().time().unit()));
        return new Measurement(lost, unit, Uncertainty.combine(ofNeedle, lost * ofClock / time));
    }

    private static Measurement line(
            Case before, List<Sample> samples, Unit unit, Unit clock, double window) {
        int n = samples.size();
        double meanTime = 0;
        double meanPressure = 0;
        for (Sample sample : samples) {
            meanTime += sample.time().valueIn(clock) / n;
            meanPressure += sample.pressure().value() / n;
        }
        double sxx = 0;
        double sxy = 0;
        for (Sample sample : samples) {
            double dt = sample.time().valueIn(clock) - meanTime;
            sxx += dt * dt;
            sxy += dt * (sample.pressure().value() - meanPressure);
        }
        double slope = sxy / sxx;
        double residual = 0;
        for (Sample sample : samples) {
            double off =
                    sample.pressure().value()
                            - meanPressure
                            - slope * (sample.time().valueIn(clock) - meanTime);
            residual += off * off;
        }
        double scatter = Math.sqrt(residual / (n - 2) / sxx);
        double time =
                samples.get(n - 1).time().valueIn(clock) - samples.get(0).time().valueIn(clock);
        double staircase = staircase(before.inspection().instruments().step(unit), slope, time);
        return new Measurement(
                -slope * window, unit, COVERAGE * Math.max(scatter, staircase) * window);
    }

    private static double staircase(double step, double slope, double time) {
        if (step == 0) {
            return 0;
        }
        double steps = Math.abs(slope) * time / step;
        double factor =
                steps * ENVELOPE_FEW_STEPS <= ENVELOPE_BY_STEPS
                        ? ENVELOPE_FEW_STEPS
                        : ENVELOPE_BY_STEPS / steps;
        return step / time * factor;
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
