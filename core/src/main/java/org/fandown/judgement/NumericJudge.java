package org.fandown.judgement;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fandown.evidence.Circumstances;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Num;
import org.fandown.units.Quantity;

/** Compares a measured value with the edges of a rule. */
final class NumericJudge {
    /** In steps: 0.35 s is three and a half steps of 0.1 s, though 0.35 / 0.1 is a hair less. */
    private static final double HALF_SLACK = 1e-9;

    private NumericJudge() {}

    static Finding compare(Ruling ruling, Measurement raw, Bounds bounds) {
        NumericLimit limit = ((Limit.Numeric) ruling.limit()).edges();
        Measurement measured = rounded(ruling, raw);
        Optional<Edge> lower = bounds.lower(limit);
        Optional<Edge> upper = bounds.upper(limit);
        if (bounds.missing().isPresent()) {
            return lacking(ruling, measured, bounds.missing().get());
        }
        return decided(ruling, measured, bounds.uncertainty(), lower, upper);
    }

    static Finding decided(
            Ruling ruling,
            Measurement measured,
            double ofEdges,
            Optional<Edge> lower,
            Optional<Edge> upper) {
        double band = Uncertainty.combine(measured.uncertainty(), ofEdges);
        Status status =
                Decision.decide(measured.value() - band, measured.value() + band, lower, upper);
        return Finding.of(
                        ruling,
                        status,
                        measured,
                        NumericWords.why(ruling, status, measured, band, lower, upper))
                .within(lower, upper);
    }

    static Finding lacking(Ruling ruling, Measurement measured, String what) {
        return Finding.of(
                ruling,
                Status.UNDETERMINED,
                measured,
                Why.of(
                        () -> "Measured " + measured + ", but the limit needs " + what + ".",
                        () -> "Note " + what + " too."));
    }

    private static Measurement rounded(Ruling ruling, Measurement raw) {
        Optional<Quantity> step = ruling.rule().method().roundedTo();
        if (step.isEmpty()) {
            return raw;
        }
        double size = step.get().valueIn(raw.unit());
        double steps = Num.round(raw.value() / size + HALF_SLACK);
        return new Measurement(steps * size, raw.unit(), raw.uncertainty());
    }

    /** Judges every needle that was read and keeps the one the rule counts. */
    static Finding needles(Ruling ruling, Case before, List<Quantity> values, Circumstances at) {
        Finding worst = null;
        for (Quantity value : counted(ruling, values)) {
            Bounds bounds = Bounds.in(before, value.unit(), at);
            Measurement measured =
                    new Measurement(value.value(), value.unit(), before.ofOneReading(value.unit()));
            Finding finding = compare(ruling, measured, bounds);
            if (worst == null || finding.status().worse(worst.status()) != worst.status()) {
                worst = finding;
            }
        }
        return Objects.requireNonNull(worst);
    }

    private static List<Quantity> counted(Ruling ruling, List<Quantity> values) {
        Quantity lowest = values.get(0);
        Quantity highest = values.get(0);
        for (Quantity value : values) {
            lowest = value.value() < lowest.value() ? value : lowest;
            highest = value.value() > highest.value() ? value : highest;
        }
        return switch (ruling.rule().method().gauge()) {
            case HIGHEST -> List.of(highest);
            case LOWEST -> List.of(lowest);
            case EACH -> values;
        };
    }
}
