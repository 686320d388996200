package org.fandown.judgement;

import java.util.Optional;
import org.fandown.evidence.Circumstances;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Decimals;
import org.fandown.units.Num;
import org.fandown.units.Quantities;
import org.fandown.units.Quantity;

/** Compares a measured value with the edges of a rule and finds the words for it. */
final class NumericJudge {
    private static final int SHOWN_DECIMALS = 2;

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
                        ruling, status, measured, why(ruling, status, measured, band, lower, upper))
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

    private static Why why(
            Ruling ruling,
            Status status,
            Measurement measured,
            double band,
            Optional<Edge> lower,
            Optional<Edge> upper) {
        return switch (status) {
            case MET ->
                    Why.of(
                            () ->
                                    "Measured "
                                            + measured
                                            + ", limit "
                                            + shown(ruling, measured, lower, upper)
                                            + ".");
            case NOT_MET ->
                    Why.of(
                            () ->
                                    "Measured "
                                            + measured
                                            + ", limit "
                                            + shown(ruling, measured, lower, upper)
                                            + "."
                                            + Demanded.sentence(ruling.rule().words()));
            default ->
                    Why.of(
                            () ->
                                    "Measured "
                                            + measured
                                            + ", too close to the limit ("
                                            + shown(ruling, measured, lower, upper)
                                            + ") to decide: it may be off by "
                                            + Decimals.formatShort(band, SHOWN_DECIMALS)
                                            + " "
                                            + measured.unit().symbol()
                                            + ".",
                            () -> Advice.closer(ruling.rule().check()));
        };
    }

    /** The limit as printed, and worked out where it depends on other readings. */
    private static String shown(
            Ruling ruling, Measurement measured, Optional<Edge> lower, Optional<Edge> upper) {
        String printed = ruling.limit().toString();
        if (!Advice.isWorkedOut(ruling.limit())) {
            return printed;
        }
        StringBuilder text = new StringBuilder(printed).append(", here ");
        lower.ifPresent(e -> text.append(Quantities.print(tidy(e.value()), measured.unit())));
        if (lower.isPresent() && upper.isPresent()) {
            text.append(" to ");
        }
        upper.ifPresent(e -> text.append(Quantities.print(tidy(e.value()), measured.unit())));
        return text.toString();
    }

    private static double tidy(double value) {
        return Num.roundTo(value, SHOWN_DECIMALS);
    }

    /** Judges every needle that was read and keeps the one the rule counts. */
    static Finding needles(
            Ruling ruling, Case before, java.util.List<Quantity> values, Circumstances at) {
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
        return java.util.Objects.requireNonNull(worst);
    }

    private static java.util.List<Quantity> counted(
            Ruling ruling, java.util.List<Quantity> values) {
        Quantity lowest = values.get(0);
        Quantity highest = values.get(0);
        for (Quantity value : values) {
            lowest = value.value() < lowest.value() ? value : lowest;
            highest = value.value() > highest.value() ? value : highest;
        }
        return switch (ruling.rule().method().gauge()) {
            case HIGHEST -> java.util.List.of(highest);
            case LOWEST -> java.util.List.of(lowest);
            case EACH -> values;
        };
    }
}
