package org.fandown.architecture.bad.decent;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Does nothing that a rule of the core forbids; the rules must be silent here. */
public record Decent(String name, double value, List<LocalDate> days) {
    /** The kinds, for the code that a switch needs. */
    public enum Kind {
        /** One. */
        ONE,
        /** Two. */
        TWO
    }

    /** Copies the days. */
    public Decent {
        days = List.copyOf(days);
        if (!(Math.sqrt(value) >= 0)) {
            throw new IllegalArgumentException("value of " + name + " is below zero");
        }
    }

    /** Returns a text for a kind. */
    public String text(Kind kind) {
        return switch (kind) {
            case ONE -> "100 %s of %s".formatted("%", name);
            case TWO -> name + days.size() % 7;
        };
    }

    /** Returns the day for each name, in order. */
    public Map<String, LocalDate> byName() {
        Map<String, LocalDate> result = new LinkedHashMap<>();
        days.forEach(day -> result.put(day.toString(), day));
        return result;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Decent that && name.equals(that.name);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name);
    }
}
