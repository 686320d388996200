package org.fandown.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.document.ScalarNode.Kind;
import org.fandown.units.Decimals;
import org.fandown.units.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Builds documents in memory, for output.
 *
 * <p>Numbers are written with at most six decimals, unless a count is given. A quantity becomes a
 * map of {@code value} (a number) and {@code unit} (its symbol).
 */
public final class Tree {
    private static final int DECIMALS = 6;

    private Tree() {}

    /** Begins a map. */
    public static MapBuilder map() {
        return new MapBuilder();
    }

    /** Begins a list. */
    public static ListBuilder list() {
        return new ListBuilder();
    }

    /**
     * Makes a text.
     *
     * @param text the text
     * @return the node
     */
    public static ScalarNode text(String text) {
        return scalar(text, Kind.TEXT);
    }

    /**
     * Makes a whole number.
     *
     * @param number the number
     * @return the node
     */
    public static ScalarNode number(long number) {
        return scalar(Long.toString(number), Kind.NUMBER);
    }

    /**
     * Makes a number with at most a count of decimals.
     *
     * @param number a finite number of size up to 1e15
     * @param maxDecimals the greatest count of decimals, 0 to 15
     * @return the node
     * @throws IllegalArgumentException outside those ranges
     */
    public static ScalarNode number(double number, int maxDecimals) {
        return scalar(Decimals.formatShort(number, maxDecimals), Kind.NUMBER);
    }

    /**
     * Makes a truth value.
     *
     * @param truth the value
     * @return the node
     */
    public static ScalarNode truth(boolean truth) {
        return scalar(truth ? "true" : "false", Kind.TRUTH);
    }

    /** Makes a node that stands for no value. */
    public static ScalarNode nothing() {
        return scalar("null", Kind.NOTHING);
    }

    /**
     * Makes a map of the number and the symbol of a quantity.
     *
     * @param quantity the quantity
     * @return the node
     */
    public static MapNode quantity(Quantity quantity) {
        return map().put("value", quantity.value()).put("unit", quantity.unit().symbol()).build();
    }

    private static ScalarNode scalar(String text, Kind kind) {
        return new ScalarNode(text, kind, Position.NONE, "");
    }

    /** A map in the making. */
    public static final class MapBuilder {
        private final Map<String, MapNode.Entry> entries = new LinkedHashMap<>();

        private MapBuilder() {}

        /** Adds a text; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, String text) {
            return put(key, text(text));
        }

        /** Adds a whole number; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, long number) {
            return put(key, number(number));
        }

        /** Adds a number with at most six decimals; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, double number) {
            return put(key, number(number, DECIMALS));
        }

        /** Adds a number with at most a count of decimals; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, double number, int maxDecimals) {
            return put(key, number(number, maxDecimals));
        }

        /** Adds a truth value; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, boolean truth) {
            return put(key, truth(truth));
        }

        /** Adds a quantity as a map of value and unit; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, Quantity quantity) {
            return put(key, quantity(quantity));
        }

        /** Adds a constant by its name in documents; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, Enum<?> constant) {
            return put(key, Names.kebab(constant));
        }

        /** Adds a map that is complete; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, MapBuilder map) {
            return put(key, map.build());
        }

        /** Adds a list that is complete; see {@link #put(String, Node)}. */
        public MapBuilder put(String key, ListBuilder list) {
            return put(key, list.build());
        }

        /** Adds a text if there is one; leaves the key out if not. */
        public MapBuilder putIfPresent(String key, @Nullable String text) {
            return text == null ? this : put(key, text);
        }

        /**
         * Adds a value.
         *
         * @param key the key
         * @param value the value
         * @return this builder
         * @throws IllegalArgumentException if the key is there already
         */
        public MapBuilder put(String key, Node value) {
            if (entries.containsKey(key)) {
                throw new IllegalArgumentException("The key '" + key + "' is there already.");
            }
            entries.put(key, new MapNode.Entry(Position.NONE, value));
            return this;
        }

        /** Returns the map built so far. */
        public MapNode build() {
            return new MapNode(entries, Position.NONE, "");
        }
    }

    /** A list in the making. */
    public static final class ListBuilder {
        private final List<Node> items = new ArrayList<>();

        private ListBuilder() {}

        /** Adds a text. */
        public ListBuilder add(String text) {
            return add(text(text));
        }

        /** Adds a whole number. */
        public ListBuilder add(long number) {
            return add(number(number));
        }

        /** Adds a number with at most six decimals. */
        public ListBuilder add(double number) {
            return add(number(number, DECIMALS));
        }

        /** Adds a map that is complete. */
        public ListBuilder add(MapBuilder map) {
            return add(map.build());
        }

        /** Adds a list that is complete. */
        public ListBuilder add(ListBuilder list) {
            return add(list.build());
        }

        /** Adds a value. */
        public ListBuilder add(Node value) {
            items.add(value);
            return this;
        }

        /** Returns the list built so far. */
        public ListNode build() {
            return new ListNode(items, Position.NONE, "");
        }
    }
}
