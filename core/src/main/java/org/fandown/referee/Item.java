package org.fandown.referee;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.Names;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/**
 * One line of a marking sheet. Text form: lower case with hyphens. Weights and allowances are ours,
 * not those of any authority; a {@link Sheet} may set others.
 */
public enum Item {
    HELD("The vehicle is held whenever nobody is at its pedals", 10, 10, true),
    CHOCKED("Wheels are chocked before anybody works at them", 10, 10, true),
    STARTED("The engine is started in neutral on a vehicle that is held", 10, 10, true),
    LINES("Trailer lines are parted and coupled without pressure", 10, 10, true),
    CLEAR("Nobody is at the push rods while brakes move", 10, 10, true),
    DANGER("Nobody is put in danger otherwise", 10, 10, true),
    MADE("Every check the place asks for is made", 50, 10, false),
    UNSPOILED("Checks are made so that they show something", 20, 5, false),
    LONG_ENOUGH("Checks are held for as long as the place asks", 10, 5, false, "2 s"),
    FIGURES("Figures are those the instruments showed", 15, 3, false, "1 psi", "3 s", "1/16 in"),
    VERDICT("The verdict follows from what was recorded", 10, 10, false),
    FIT("An unfit vehicle is not called fit to move", 10, 10, true),
    FOUND("Faults that matter in the place are found", 20, 10, false),
    NOTICED("Other faults are noticed", 4, 2, false),
    PHANTOM("No fault is called that is not there", 10, 5, false),
    ORDER("The order is one the place allows", 6, 3, false),
    TIME("The work is done in good time", 5, 5, false, "200 %");

    private final String title;
    private final int weight;
    private final int each;
    private final boolean critical;

    @SuppressWarnings("ImmutableEnumChecker") // always List.of
    private final java.util.List<Quantity> allowed;

    Item(String title, int weight, int each, boolean critical, String... allowed) {
        this.title = title;
        this.weight = weight;
        this.each = each;
        this.critical = critical;
        java.util.List<Quantity> quantities = new java.util.ArrayList<>();
        for (String text : allowed) {
            quantities.add(quantity(text));
        }
        this.allowed = java.util.List.copyOf(quantities);
    }

    /** A pressure named without its kind is a gauge pressure, as everywhere in files. */
    private static Quantity quantity(String text) {
        return Quantity.parse(text);
    }

    /** Returns what it is about, in sentence case. */
    public String title() {
        return title;
    }

    /** Returns the text form. */
    public String id() {
        return Names.kebab(this);
    }

    /** Returns the kinds of allowance it takes, with ours. */
    Map<Dimension, Quantity> allowances() {
        Map<Dimension, Quantity> map = new EnumMap<>(Dimension.class);
        for (Quantity quantity : allowed) {
            map.put(quantity.dimension(), quantity);
        }
        return map;
    }

    /** Returns our entry of the sheet. */
    Sheet.Entry ours() {
        return new Sheet.Entry(weight, each, critical, allowances());
    }

    /** Returns the item with a text form, empty if there is none. */
    public static Optional<Item> byId(String id) {
        for (Item item : values()) {
            if (item.id().equals(id)) {
                return Optional.of(item);
            }
        }
        return Optional.empty();
    }
}
