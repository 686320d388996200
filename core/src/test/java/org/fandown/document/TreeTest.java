package org.fandown.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.units.Quantity;
import org.junit.jupiter.api.Test;

class TreeTest {
    private enum Verdict {
        NOT_PROVEN
    }

    @Test
    void builds_a_document_for_output() {
        Node node =
                Tree.map()
                        .put("verdict", Verdict.NOT_PROVEN)
                        .put("axles", 3)
                        .put("share", 0.1 + 0.2)
                        .put("rate", 2.0 / 3, 2)
                        .put("simulated", false)
                        .put("limit", Quantity.parse("1 3/8 in"))
                        .putIfPresent("note", null)
                        .putIfPresent("why", "because")
                        .put("none", Tree.nothing())
                        .put("list", Tree.list().add("x").add(1).add(0.5).add(Tree.map()))
                        .put("map", Tree.map().put("a", "b"))
                        .build();

        assertThat(Json.writeCompact(node))
                .isEqualTo(
                        "{\"verdict\":\"not-proven\",\"axles\":3,\"share\":0.3,\"rate\":0.67,"
                                + "\"simulated\":false,\"limit\":{\"value\":1.375,\"unit\":\"in\"},"
                                + "\"why\":\"because\",\"none\":null,"
                                + "\"list\":[\"x\",1,0.5,{}],\"map\":{\"a\":\"b\"}}");
        assertThat(node.at()).isEqualTo(Position.NONE);
    }

    @Test
    void a_key_can_be_put_once_only() {
        Tree.MapBuilder map = Tree.map().put("a", 1);

        assertThatThrownBy(() -> map.put("a", 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The key 'a' is there already.");
    }

    @Test
    void a_number_that_is_not_finite_cannot_be_written() {
        assertThatThrownBy(() -> Tree.number(Double.NaN, 2))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void nodes_do_not_change_when_what_they_were_made_from_does() {
        List<Node> items = new ArrayList<>(List.of(Tree.text("a")));
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
        entries.put("k", new MapNode.Entry(Position.NONE, Tree.text("a")));
        ListNode list = new ListNode(items, Position.NONE, "");
        MapNode map = new MapNode(entries, Position.NONE, "");

        items.clear();
        entries.clear();

        assertThat(list.items()).hasSize(1);
        assertThat(map.keys()).containsExactly("k");
        assertThatThrownBy(() -> map.entries().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }
}
