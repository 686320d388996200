package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.document.Fields;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads how the measurement of a rule is made. */
final class MethodReader {
    private final Fields fields;
    private final Check check;

    private MethodReader(Fields fields, Check check) {
        this.fields = fields;
        this.check = check;
    }

    static Rule.Method read(Fields rule, Check check) {
        return new MethodReader(rule, check).read();
    }

    private Rule.Method read() {
        List<Demand> demands =
                fields.has("conditions")
                        ? DemandReader.read(fields.fields("conditions"))
                        : new ArrayList<>();
        if (fields.has("applications")) {
            demands.add(DemandReader.applications(fields));
        }
        GaugeChoice gauge =
                fields.optionalChoice("gauge", GaugeChoice.values()).orElse(GaugeChoice.EACH);
        return new Rule.Method(demands, gauge, roundedTo(), window());
    }

    private Optional<Quantity> roundedTo() {
        if (!fields.has("rounded-to")) {
            return Optional.empty();
        }
        if (check.dimension().isEmpty()) {
            throw fields.refuse(
                    "rounded-to",
                    "is for what is measured, and " + check.id() + " is not",
                    "no rounding",
                    "Remove it.");
        }
        Quantity step = fields.quantity("rounded-to", check.dimension().get());
        if (!(step.value() > 0)) {
            throw fields.refuse(
                    "rounded-to",
                    "is not above zero",
                    "a step such as 0.1 s",
                    "Write the last place that the source reports.");
        }
        return Optional.of(step);
    }

    private Optional<Rule.Window> window() {
        boolean timed = check.dimension().filter(d -> d == Dimension.TIME).isPresent();
        if (!fields.has("window")) {
            if (check.kind() == CheckKind.BUILD_UP) {
                throw fields.refuse(
                        "check",
                        "is timed between two pressures, but the rule has no window",
                        "window: { from: [85 psi, 586 kPa], to: [100 psi, 690 kPa] }",
                        "Add the window.");
            }
            return Optional.empty();
        }
        if (!timed) {
            throw fields.refuse(
                    "window",
                    "is for a build-up that is timed, and " + check.id() + " is not",
                    "no window",
                    "Remove it, or correct the check.");
        }
        return Optional.of(window(fields.fields("window")));
    }

    private static Rule.Window window(Fields window) {
        BoundKind pressure = BoundKind.of(Dimension.GAUGE_PRESSURE);
        Optional<Bound> from =
                window.has("from")
                        ? Optional.of(BoundReader.read(window, "from", pressure))
                        : Optional.empty();
        Bound to = BoundReader.read(window, "to", pressure);
        window.end();
        if (from.isPresent() && BoundReader.isAbove(from.get(), to)) {
            throw window.refuse(
                    "to", "is below from", "a higher pressure", "Swap or correct the two.");
        }
        return new Rule.Window(from, to);
    }
}
