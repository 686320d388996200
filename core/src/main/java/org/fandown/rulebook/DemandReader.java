package org.fandown.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Circumstance;
import org.fandown.document.Fields;

/** Reads the circumstances a rule demands. */
final class DemandReader {
    private DemandReader() {}

    static List<Demand> read(Fields fields) {
        List<Demand> demands = new ArrayList<>();
        for (Circumstance circumstance : Circumstance.values()) {
            if (fields.has(circumstance.id())) {
                demands.add(demand(fields, circumstance));
            }
        }
        fields.end();
        return demands;
    }

    private static Demand demand(Fields fields, Circumstance circumstance) {
        String key = circumstance.id();
        if (circumstance.dimension().isPresent()) {
            BoundKind kind = BoundKind.of(circumstance.dimension().get());
            return new Demand(
                    circumstance,
                    List.of(),
                    Optional.of(NumericReader.read(fields.fields(key), kind)));
        }
        List<String> states = fields.optionalTexts(key);
        if (states.isEmpty()) {
            throw fields.refuse(
                    key,
                    "allows no state at all",
                    String.join(", ", circumstance.states()),
                    "Write one of these, or remove the condition.");
        }
        for (String state : states) {
            if (!circumstance.states().contains(state)) {
                throw fields.refuse(
                        key,
                        "is not a state of the " + circumstance.title(),
                        String.join(", ", circumstance.states()),
                        "Write one of these.");
            }
        }
        return new Demand(circumstance, states, Optional.empty());
    }

    static Demand applications(Fields fields) {
        int count = fields.integer("applications", 1, 50);
        return Demands.exactly(Circumstance.APPLICATIONS, count);
    }
}
