package org.fandown.record;

import java.util.Optional;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.judgement.Allowed;
import org.fandown.judgement.Edge;
import org.fandown.judgement.Measurement;
import org.fandown.rulebook.Bound;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.NumericLimit;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * A limit as a document: its words, and its edges as quantities with whether the figure itself
 * passes.
 */
final class LimitDocument {
    private LimitDocument() {}

    /** The limit as the rule prints it. */
    static MapNode printed(Limit limit) {
        Tree.MapBuilder map = Tree.map().put("text", limit.toString());
        if (limit instanceof Limit.Numeric numeric) {
            edge(map, "least", numeric.edges().lower());
            edge(map, "most", numeric.edges().upper());
        }
        return map.build();
    }

    private static void edge(Tree.MapBuilder map, String key, Optional<NumericLimit.Edge> edge) {
        if (edge.isPresent() && edge.get().bound() instanceof Bound.Figure figure) {
            map.put(key, edge(figure.printed().own(), edge.get().passes()));
        }
    }

    /** The limit as it was compared with the measured value. */
    static MapNode compared(Limit limit, Measurement measured, Allowed allowed) {
        Tree.MapBuilder map = Tree.map().put("text", limit.toString());
        allowed.lower().ifPresent(e -> map.put("least", edge(e, measured.unit())));
        allowed.upper().ifPresent(e -> map.put("most", edge(e, measured.unit())));
        return map.build();
    }

    private static MapNode edge(Edge edge, Unit unit) {
        return edge(Quantity.of(edge.value(), unit), edge.passes());
    }

    private static MapNode edge(Quantity figure, boolean passes) {
        return Tree.map()
                .put("value", figure.value())
                .put("unit", figure.unit().symbol())
                .put("passes", passes)
                .build();
    }
}
