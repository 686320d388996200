package org.fandown.document;

import java.util.List;
import java.util.Objects;

/**
 * Values in order.
 *
 * @param items the values
 * @param at where the list begins
 * @param path the path from the top
 */
public record ListNode(List<Node> items, Position at, String path) implements Node {
    /** Copies the items. */
    public ListNode {
        items = List.copyOf(items);
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(path, "path");
    }

    @Override
    public String phrase() {
        return "a list";
    }
}
