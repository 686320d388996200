package org.fandown.property.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.document.Tree;

class JsonPropertyTest {
    @Property
    void what_is_written_is_read_back_equal(@ForAll("documents") Node document) {
        String compact = Json.writeCompact(document);

        assertThat(Json.writeCompact(Json.read("a.json", compact))).isEqualTo(compact);
        assertThat(Json.writeCompact(Json.read("a.json", Json.write(document)))).isEqualTo(compact);
        assertThat(compact).doesNotContain("\n");
    }

    @Property
    void text_is_read_back_as_it_was(@ForAll("texts") String text) {
        Node read = Json.read("a.json", Json.write(Tree.text(text)));

        assertThat(((ScalarNode) read).text()).isEqualTo(text);
    }

    @Property(tries = 10_000)
    void any_text_is_read_or_refused_in_the_documented_way(@ForAll String text) {
        assertReadOrRefused(text);
    }

    @Property(tries = 10_000)
    void any_text_that_looks_like_json_is_read_or_refused_in_the_documented_way(
            @ForAll("nearlyJson") String text) {
        assertReadOrRefused(text);
    }

    @Property(tries = 2_000)
    void a_document_with_one_character_changed_is_read_or_refused_in_the_documented_way(
            @ForAll("documents") Node document, @ForAll int place, @ForAll char character) {
        StringBuilder text = new StringBuilder(Json.write(document));
        text.setCharAt(Math.floorMod(place, text.length()), character);

        assertReadOrRefused(text.toString());
    }

    private static void assertReadOrRefused(String text) {
        try {
            Node read = Json.read("a.json", text);
            String compact = Json.writeCompact(read);
            assertThat(Json.writeCompact(Json.read("a.json", compact))).isEqualTo(compact);
        } catch (DocumentException e) {
            assertThat(e.file()).isEqualTo("a.json");
            assertThat(e.line()).isPositive();
            assertThat(e.column()).isPositive();
            assertThat(e.problem()).isNotBlank();
            assertThat(e.getMessage()).doesNotContain("\n");
        }
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings().all().ofMaxLength(20).filter(ScalarNode::isText);
    }

    @Provide
    Arbitrary<String> nearlyJson() {
        Arbitrary<String> parts =
                Arbitraries.of(
                        "{", "}", "[", "]", ",", ":", "\"", "\"a\"", "\"b\":", "\\", "\\u00",
                        "\\ud83d", "\\n", "0", "1", "-", ".", "e", "+", "true", "false", "null",
                        "nul", " ", "\n", "\r", "\t", "\u0000", "\ud800", "\u00e9", "//");
        return parts.list().ofMaxSize(12).map(list -> String.join("", list));
    }

    @Provide
    Arbitrary<Node> documents() {
        return documents(3);
    }

    private Arbitrary<Node> documents(int depth) {
        Arbitrary<Node> scalars =
                Arbitraries.oneOf(
                        texts().map(Tree::text),
                        Arbitraries.longs().map(Tree::number),
                        Arbitraries.doubles()
                                .between(-1e9, 1e9)
                                .ofScale(9)
                                .map(number -> Tree.number(number, 9)),
                        Arbitraries.of(true, false).map(Tree::truth),
                        Arbitraries.just(Tree.nothing()));
        if (depth == 0) {
            return scalars;
        }
        Arbitrary<Node> lists =
                Arbitraries.lazy(() -> documents(depth - 1))
                        .list()
                        .ofMaxSize(4)
                        .map(JsonPropertyTest::listOf);
        Arbitrary<Node> maps =
                Arbitraries.maps(texts(), Arbitraries.lazy(() -> documents(depth - 1)))
                        .ofMaxSize(4)
                        .map(JsonPropertyTest::mapOf);
        return Arbitraries.oneOf(scalars, lists, maps);
    }

    private static Node listOf(List<Node> items) {
        Tree.ListBuilder list = Tree.list();
        items.forEach(list::add);
        return list.build();
    }

    private static Node mapOf(Map<String, Node> entries) {
        Tree.MapBuilder map = Tree.map();
        entries.forEach(map::put);
        return map.build();
    }
}
