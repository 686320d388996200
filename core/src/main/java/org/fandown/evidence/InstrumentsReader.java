package org.fandown.evidence;

import java.util.EnumMap;
import java.util.Map;
import org.fandown.document.Fields;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads how finely each instrument was read. */
final class InstrumentsReader {
    private InstrumentsReader() {}

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
        step(map, "gauge", Dimension.GAUGE_PRESSURE, steps);
        step(map, "clock", Dimension.TIME, steps);
        step(map, "rule", Dimension.LENGTH, steps);
        step(map, "tachometer", Dimension.ROTATION, steps);
        step(map, "protractor", Dimension.ANGLE, steps);
        step(map, "tester", Dimension.RATIO, steps);
        map.end();
        return new Instruments(steps);
    }

    private static void step(
            Fields map, String key, Dimension dimension, Map<Dimension, Quantity> steps) {
        if (!map.has(key)) {
            return;
        }
        Quantity step = map.quantity(key, dimension);
        if (!(step.value() > 0)) {
            throw map.refuse(
                    key,
                    "is not above zero",
                    "the smallest step read, such as 2 psi",
                    "Correct the step.");
        }
        steps.put(dimension, step);
    }

    private enum Whole {
        EXACT
    }
}
