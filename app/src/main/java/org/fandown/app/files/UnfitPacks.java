package org.fandown.app.files;

import java.util.List;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.rulebook.UnfitPackException;

/** Says where in its file a pack does not fit the others. */
final class UnfitPacks {
    private UnfitPacks() {}

    /**
     * The refusal of a pack's document.
     *
     * @param problem what does not fit
     * @param document the document of the pack at fault
     */
    static DocumentException refusal(UnfitPackException problem, Node document) {
        Node at = entry(problem, document).orElse(document);
        return new DocumentException(
                at.at(),
                at.path(),
                problem.value(),
                problem.problem(),
                problem.allowed(),
                problem.nextStep());
    }

    private static Optional<Node> entry(UnfitPackException problem, Node document) {
        Optional<Node> holder =
                problem.rule().isEmpty() ? Optional.of(document) : rule(document, problem.rule());
        Optional<Node> entry = holder.flatMap(h -> get(h, problem.key()));
        return entry.flatMap(e -> get(e, "with")).or(() -> entry.map(e -> item(e, problem)));
    }

    private static Optional<Node> rule(Node document, String id) {
        return get(document, "rules").stream()
                .flatMap(rules -> items(rules).stream())
                .filter(rule -> get(rule, "id").filter(node -> says(node, id)).isPresent())
                .findFirst();
    }

    private static Node item(Node entry, UnfitPackException problem) {
        return items(entry).stream()
                .filter(node -> says(node, problem.value()))
                .findFirst()
                .orElse(entry);
    }

    private static Optional<Node> get(Node node, String key) {
        return node instanceof MapNode map ? map.get(key) : Optional.empty();
    }

    private static List<Node> items(Node node) {
        return node instanceof ListNode list ? list.items() : List.of();
    }

    private static boolean says(Node node, String text) {
        return node instanceof ScalarNode scalar && scalar.text().equals(text);
    }
}
