package org.fandown.evidence;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Reads how finely each instrument was read. */
final class InstrumentsReader {
    private InstrumentsReader() {}

    /** Those of one reading, empty if it names none. */
    static Optional<Instruments> own(Fields fields) {
        return fields.has("instruments") ? Optional.of(read(fields)) : Optional.empty();
    }

    static Instruments read(Fields fields) {
        if (!fields.has("instruments")) {
            return Instruments.USUAL;
        }
        if (!fields.isMap("instruments")) {
            fields.choice("instruments", Whole.values());
            return Instruments.EXACT;
        }
        Fields map = fields.fields("instruments");
        Map<Dimension, Quantity> steps = new EnumMap<>(Dimension.class);
        steps.putAll(Instruments.USUAL.steps());
        step(map, "gauge", new Plausible(0, 15, Unit.PSI), steps);
        step(map, "clock", new Plausible(0, 1, Unit.MINUTE), steps);
        step(map, "rule", new Plausible(0, 1, Unit.INCH), steps);
        step(map, "tachometer", new Plausible(0, 500, Unit.RPM), steps);
        step(map, "protractor", new Plausible(0, 45, Unit.DEGREE), steps);
        step(map, "tester", new Plausible(0, 10, Unit.PERCENT), steps);
        map.end();
        return new Instruments(steps);
    }

    private static void step(
            Fields map, String key, Plausible range, Map<Dimension, Quantity> steps) {
        if (!map.has(key)) {
            return;
        }
        Quantity step = range.read(map, key);
        if (!(step.value() > 0)) {
            throw map.refuse(
                    key,
                    "a step must be above zero",
                    "the smallest step that was read, such as 2 psi",
                    "write the step, or `instruments: exact` if every figure is exact");
        }
        steps.put(range.dimension(), step);
    }

    private enum Whole {
        EXACT
    }
}
