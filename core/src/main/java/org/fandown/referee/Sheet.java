package org.fandown.referee;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * A marking sheet: what counts, how much each mistake costs, how much is allowed. Immutable.
 *
 * @param title what it is called
 * @param note whose weights these are
 * @param pass share of all points that has to be kept to pass, 0 to 1
 * @param entries the items that count
 */
public record Sheet(String title, String note, double pass, Map<Item, Entry> entries) {
    /** Our own weights; no authority has set them. */
    public static final Sheet OURS = ours();

    private static final double PASS = 0.8;

    /**
     * What one item costs.
     *
     * @param weight the most that can be taken off, points
     * @param each what one mistake takes off, points
     * @param critical whether one mistake fails the run
     * @param allowances what is allowed beside what the instruments can show, by dimension
     */
    public record Entry(
            int weight, int each, boolean critical, Map<Dimension, Quantity> allowances) {
        /** Copies the map. */
        public Entry {
            Map<Dimension, Quantity> copy = new EnumMap<>(Dimension.class);
            copy.putAll(allowances);
            allowances = Collections.unmodifiableMap(copy);
        }
    }

    /** Copies the entries. */
    public Sheet {
        Map<Item, Entry> copy = new EnumMap<>(Item.class);
        copy.putAll(entries);
        entries = Collections.unmodifiableMap(copy);
    }

    private static Sheet ours() {
        Map<Item, Entry> entries = new EnumMap<>(Item.class);
        for (Item item : Item.values()) {
            entries.put(item, item.ours());
        }
        return new Sheet(
                "Marking sheet of Fandown",
                "Our own weights, not those of any authority.",
                PASS,
                entries);
    }

    /** Returns the entry of an item, empty if it does not count. */
    public Optional<Entry> entry(Item item) {
        return Optional.ofNullable(entries.get(item));
    }

    /** Returns what an item allows, in a unit; ours where the sheet does not say. */
    double allowed(Item item, Unit unit) {
        Quantity ours = item.allowances().get(unit.dimension());
        Quantity own =
                entry(item).map(entry -> entry.allowances().get(unit.dimension())).orElse(ours);
        return own == null ? 0 : own.valueIn(unit);
    }
}
