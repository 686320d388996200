package org.fandown.judgement;

import java.util.Optional;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Decimals;
import org.fandown.units.Num;
import org.fandown.units.Quantities;

/** The words for a measured value beside a limit. */
final class NumericWords {
    private static final int SHOWN_DECIMALS = 2;

    private NumericWords() {}

    static Why why(
            Ruling ruling,
            Status status,
            Measurement measured,
            double band,
            Optional<Edge> lower,
            Optional<Edge> upper) {
        return switch (status) {
            case MET -> Why.of(() -> compared(ruling, measured, lower, upper));
            case NOT_MET ->
                    Why.of(
                            () ->
                                    compared(ruling, measured, lower, upper)
                                            + Demanded.sentence(ruling.rule().words()));
            default ->
                    Why.of(
                            () -> tooClose(ruling, measured, band, lower, upper),
                            () -> Advice.closer(ruling.rule().check()));
        };
    }

    private static String compared(
            Ruling ruling, Measurement measured, Optional<Edge> lower, Optional<Edge> upper) {
        return "Measured " + measured + ", limit " + shown(ruling, measured, lower, upper) + ".";
    }

    private static String tooClose(
            Ruling ruling,
            Measurement measured,
            double band,
            Optional<Edge> lower,
            Optional<Edge> upper) {
        return "Measured "
                + measured
                + ", too close to the limit ("
                + shown(ruling, measured, lower, upper)
                + ") to decide: it may be off by "
                + Decimals.formatShort(band, SHOWN_DECIMALS)
                + " "
                + measured.unit().symbol()
                + ".";
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
}
