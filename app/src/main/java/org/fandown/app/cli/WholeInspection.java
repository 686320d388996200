package org.fandown.app.cli;

import java.util.Set;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.document.Tree;
import org.fandown.evidence.VehicleSource;

/**
 * An inspection as it goes into a record: its vehicle written out where it was named, and what
 * people are called as text. A plate {@code 12.50} that was written without quotes would else be
 * kept as the number 12.5.
 */
final class WholeInspection {
    private static final String VEHICLE = "vehicle";

    /** What is under these keys is called so, wherever they stand. */
    private static final Set<String> NAMES = Set.of("report", "notes", "name", "id");

    private WholeInspection() {}

    /**
     * The whole of it.
     *
     * @param written the inspection as it was written
     * @param vehicles where a vehicle that is named is found
     */
    static Node of(MapNode written, VehicleSource vehicles) {
        Tree.MapBuilder whole = Tree.map();
        written.entries()
                .forEach(
                        (key, entry) -> {
                            boolean named =
                                    key.equals(VEHICLE) && entry.value() instanceof ScalarNode;
                            Node value =
                                    named
                                            ? vehicles.fetch(((ScalarNode) entry.value()).text())
                                            : entry.value();
                            whole.put(key, texts(value, NAMES.contains(key)));
                        });
        return whole.build();
    }

    private static Node texts(Node node, boolean named) {
        if (node instanceof MapNode map) {
            Tree.MapBuilder copy = Tree.map();
            map.entries()
                    .forEach(
                            (key, entry) ->
                                    copy.put(
                                            key,
                                            texts(entry.value(), named || NAMES.contains(key))));
            return copy.build();
        }
        if (node instanceof ListNode list) {
            Tree.ListBuilder copy = Tree.list();
            list.items().forEach(item -> copy.add(texts(item, named)));
            return copy.build();
        }
        boolean number =
                node instanceof ScalarNode scalar && scalar.kind() == ScalarNode.Kind.NUMBER;
        return named && number ? Tree.text(((ScalarNode) node).text()) : node;
    }
}
