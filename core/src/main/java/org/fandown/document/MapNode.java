package org.fandown.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Values by key, in the order in which they were written.
 *
 * @param entries the values by key
 * @param at where the map begins
 * @param path the path from the top
 */
public record MapNode(Map<String, Entry> entries, Position at, String path) implements Node {
    /**
     * Copies the entries, in order.
     *
     * @throws IllegalArgumentException if a key holds a lone surrogate
     */
    public MapNode {
        entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(path, "path");
        for (String key : entries.keySet()) {
            Texts.requireWellFormed(key);
        }
    }

    /**
     * One value with the position of its key.
     *
     * @param keyAt where the key stands
     * @param value the value
     */
    public record Entry(Position keyAt, Node value) {
        /** Checks that nothing is missing. */
        public Entry {
            Objects.requireNonNull(keyAt, "keyAt");
            Objects.requireNonNull(value, "value");
        }
    }

    /**
     * Looks a value up.
     *
     * @param key the key
     * @return its value, or empty if there is no such key
     */
    public Optional<Node> get(String key) {
        return Optional.ofNullable(entries.get(key)).map(Entry::value);
    }

    /** Returns the keys in the order in which they were written. */
    public List<String> keys() {
        return List.copyOf(entries.keySet());
    }

    /**
     * Returns where a key stands.
     *
     * @param key the key
     * @return its position, or that of the map if there is no such key
     */
    public Position keyAt(String key) {
        Entry entry = entries.get(key);
        return entry == null ? at : entry.keyAt();
    }

    @Override
    public String phrase() {
        return "a map";
    }
}
