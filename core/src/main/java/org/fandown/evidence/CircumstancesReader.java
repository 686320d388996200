package org.fandown.evidence;

import java.util.EnumMap;
import java.util.Map;
import org.fandown.check.Circumstance;
import org.fandown.document.Fields;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Reads what held while a reading was taken. */
final class CircumstancesReader {
    private CircumstancesReader() {}

    /** Reads a map that holds circumstances and nothing else. */
    static Circumstances readAll(Fields fields) {
        Circumstances circumstances = read(fields);
        fields.end();
        return circumstances;
    }

    /** Reads the circumstances among other keys. */
    static Circumstances read(Fields fields) {
        Map<Circumstance, String> states = new EnumMap<>(Circumstance.class);
        Map<Circumstance, Quantity> quantities = new EnumMap<>(Circumstance.class);
        for (Circumstance circumstance : Circumstance.values()) {
            String key = circumstance.id();
            if (!fields.has(key)) {
                continue;
            }
            if (circumstance == Circumstance.APPLICATIONS) {
                quantities.put(circumstance, Quantity.of(fields.integer(key, 1, 50), Unit.EACH));
            } else if (circumstance.dimension().isPresent()) {
                quantities.put(circumstance, range(circumstance).read(fields, key));
            } else {
                states.put(circumstance, state(fields, circumstance));
            }
        }
        return new Circumstances(states, quantities);
    }

    private static String state(Fields fields, Circumstance circumstance) {
        String state = fields.text(circumstance.id());
        if (!circumstance.states().contains(state)) {
            throw fields.refuse(
                    circumstance.id(),
                    "this is not one of the states of '" + circumstance.title() + "'",
                    String.join(", ", circumstance.states()),
                    "write one of these");
        }
        return state;
    }

    private static Plausible range(Circumstance circumstance) {
        return switch (circumstance) {
            case ENGINE_SPEED -> Plausible.ENGINE;
            case SPEED -> Plausible.ROAD;
            case HELD_FOR -> Plausible.WATCHED;
            default -> Plausible.GAUGE;
        };
    }
}
