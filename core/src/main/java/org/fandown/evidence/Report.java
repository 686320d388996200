package org.fandown.evidence;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the written report holds besides the readings: names, plates, place, statements, signatures.
 *
 * @param entries text of each entry; a statement or signature that was given has the text {@code
 *     yes}
 */
public record Report(Map<Entry, String> entries) {

    /** What can be entered. Text form in the file: lower case with hyphens. */
    public enum Entry {
        /** Plate of the powered unit. */
        PLATE("plate"),
        /** Plates of the trailers. */
        TRAILER_PLATES("plates of the trailers"),
        /** Operator or carrier. */
        OPERATOR("operator"),
        /** Municipality or place on the road. */
        LOCATION("place"),
        /** Odometer reading with its unit. */
        ODOMETER("odometer"),
        /** Who inspected. */
        INSPECTOR("inspector"),
        /** Who drives, where somebody else inspected. */
        DRIVER("driver"),
        /** The inspector states that the inspection met the rules. */
        STATEMENT("inspector's statement"),
        /** The inspector signed. */
        SIGNED("inspector's signature"),
        /** The driver signed. */
        DRIVER_SIGNED("driver's signature"),
        /** What was done about defects. */
        REPAIRS("repairs");

        private final String title;

        Entry(String title) {
            this.title = title;
        }

        /** What a person calls it, without a capital. */
        public String title() {
            return title;
        }

        /** Whether it is given or not given rather than written. */
        public boolean isYesNo() {
            return this == STATEMENT || this == SIGNED || this == DRIVER_SIGNED;
        }
    }

    /** Copies the map. */
    public Report {
        Map<Entry, String> copy = new EnumMap<>(Entry.class);
        copy.putAll(entries);
        entries = Collections.unmodifiableMap(copy);
    }

    /** The text of an entry, empty if the report does not hold it. */
    public Optional<String> entry(Entry entry) {
        return Optional.ofNullable(entries.get(entry));
    }

    /** Whether the report holds the entry. */
    public boolean holds(Entry entry) {
        return entries.containsKey(entry);
    }
}
