package org.fandown.evidence;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Circumstance;
import org.fandown.units.Quantity;

/**
 * What was noted to hold while a reading was taken. Immutable.
 *
 * @param states noted states of controls
 * @param quantities noted quantities
 */
public record Circumstances(
        Map<Circumstance, String> states, Map<Circumstance, Quantity> quantities) {
    /** Nothing noted. */
    public static final Circumstances NONE = new Circumstances(Map.of(), Map.of());

    /** Copies the maps. */
    public Circumstances {
        states = copy(states);
        quantities = copy(quantities);
    }

    private static <V> Map<Circumstance, V> copy(Map<Circumstance, V> map) {
        Map<Circumstance, V> copy = new EnumMap<>(Circumstance.class);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }

    /** Whether nothing was noted. */
    public boolean isEmpty() {
        return states.isEmpty() && quantities.isEmpty();
    }

    /** The noted state, empty if none was noted. */
    public Optional<String> state(Circumstance circumstance) {
        return Optional.ofNullable(states.get(circumstance));
    }

    /** The noted quantity, empty if none was noted. */
    public Optional<Quantity> quantity(Circumstance circumstance) {
        return Optional.ofNullable(quantities.get(circumstance));
    }

    /** These circumstances, with the given ones filling in what is not noted here. */
    public Circumstances orElse(Circumstances general) {
        Map<Circumstance, String> allStates = new EnumMap<>(Circumstance.class);
        allStates.putAll(general.states);
        allStates.putAll(states);
        Map<Circumstance, Quantity> all = new EnumMap<>(Circumstance.class);
        all.putAll(general.quantities);
        all.putAll(quantities);
        return new Circumstances(allStates, all);
    }

    /** These circumstances and one quantity more, unless it is noted already. */
    public Circumstances with(Circumstance circumstance, Quantity quantity) {
        if (quantities.containsKey(circumstance)) {
            return this;
        }
        Map<Circumstance, Quantity> all = new EnumMap<>(Circumstance.class);
        all.putAll(quantities);
        all.put(circumstance, quantity);
        return new Circumstances(states, all);
    }
}
