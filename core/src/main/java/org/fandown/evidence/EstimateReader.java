package org.fandown.evidence;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.document.Fields;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Reads a figure that comes with its own doubt, {@code within}, such as one that was worked out
 * from a recorded log. Its doubt stands in place of the step of an instrument.
 */
final class EstimateReader {
    /** A needle that jitters more is not read but guessed. */
    private static final Plausible DOUBT = new Plausible(0, 100, Unit.PSI);

    /** A loss may come out a little below nothing. */
    private static final Plausible LOSS = new Plausible(-100, 250, Unit.PSI);

    private EstimateReader() {}

    static Reading read(Fields fields, Check check, Circumstances at, String note) {
        boolean loss = check.kind() == CheckKind.AIR_LOSS;
        if (!loss && !isGauge(check)) {
            throw fields.refuseKey(
                    "within",
                    "this check has no doubt of its own",
                    "a gauge pressure or a loss of air",
                    "take it out");
        }
        Quantity value =
                loss ? LOSS.read(fields, "loss") : Plausible.of(check).read(fields, "gauge");
        Quantity within = DOUBT.read(fields, "within");
        if (within.unit() != value.unit()) {
            throw fields.refuse(
                    "within",
                    "this is in another unit than the figure",
                    "one unit for both",
                    "write both in one unit");
        }
        Optional<Quantity> over = loss ? Optional.of(time(fields)) : Optional.empty();
        return new Reading.Estimate(check, value, within, over, at, note);
    }

    private static boolean isGauge(Check check) {
        return check.kind() == CheckKind.VALUE
                && check.dimension().orElseThrow() == Unit.PSI.dimension();
    }

    private static Quantity time(Fields fields) {
        Quantity time = Plausible.WATCHED.read(fields, "time");
        if (!(time.valueIn(Unit.SECOND) >= 1)) {
            throw fields.refuse(
                    "time",
                    "nobody watches a needle for so short a time",
                    "1 s or more",
                    "write the time in which it was lost");
        }
        return time;
    }
}
