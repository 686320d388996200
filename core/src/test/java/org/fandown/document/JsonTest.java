package org.fandown.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {
    private static final String FILE = "run.json";

    @Test
    void every_node_knows_its_place_and_path() {
        MapNode top =
                (MapNode) Json.read(FILE, "{\n  \"axles\": [\n    {\"brake\": \"drum\"}\n  ]\n}");
        ListNode axles = (ListNode) top.get("axles").orElseThrow();
        MapNode axle = (MapNode) axles.items().get(0);
        Node brake = axle.get("brake").orElseThrow();

        assertThat(top.at()).isEqualTo(new Position(FILE, 1, 1));
        assertThat(top.path()).isEmpty();
        assertThat(top.keyAt("axles")).isEqualTo(new Position(FILE, 2, 3));
        assertThat(axles.at()).isEqualTo(new Position(FILE, 2, 12));
        assertThat(axle.at()).isEqualTo(new Position(FILE, 3, 5));
        assertThat(brake.at()).isEqualTo(new Position(FILE, 3, 15));
        assertThat(brake.path()).isEqualTo("axles[0].brake");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[\n1, x]", "[\r\n1, x]", "[\r1, x]"})
    void all_three_kinds_of_line_ends_count_as_one_line(String text) {
        DocumentException refusal = refusal(text);

        assertThat(refusal.line()).isEqualTo(2);
        assertThat(refusal.column()).isEqualTo(4);
    }

    @Test
    void a_character_beyond_the_first_plane_is_one_column() {
        assertThat(refusal("[\"\ud83d\ude9b\", x]").column()).isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    ``              | 1 | 1 | the file ends too early
                    `  `            | 1 | 3 | the file ends too early
                    {               | 1 | 2 | the file ends too early
                    {"a"            | 1 | 5 | the file ends too early
                    {"a" 1}         | 1 | 6 | unexpected character
                    {"a":}          | 1 | 6 | unexpected character
                    {"a":1          | 1 | 7 | the file ends too early
                    {"a":1,}        | 1 | 8 | unexpected character
                    {a:1}           | 1 | 2 | unexpected character
                    {'a':1}         | 1 | 2 | unexpected character
                    {"a":1 "b":2}   | 1 | 8 | unexpected character
                    {"a":1,"a":2}   | 1 | 8 | the key stands twice
                    [1,]            | 1 | 4 | unexpected character
                    [1 2]           | 1 | 4 | unexpected character
                    [1              | 1 | 3 | the file ends too early
                    ]               | 1 | 1 | unexpected character
                    {} {}           | 1 | 4 | unexpected character
                    1 // one        | 1 | 3 | unexpected character
                    tru             | 1 | 1 | this is not a value of JSON
                    yes             | 1 | 1 | this is not a value of JSON
                    0x1F            | 1 | 1 | this is not a value of JSON
                    "abc            | 1 | 1 | the text does not end
                    "a\\qb"         | 1 | 4 | the escape is unknown or not complete
                    "a\\u12G4"      | 1 | 7 | the escape is unknown or not complete
                    "a\\            | 1 | 4 | the escape is unknown or not complete
                    "\\ud800x"      | 1 | 1 | the text holds half a surrogate pair
                    "\\udc00\\ud800"| 1 | 1 | the text holds half a surrogate pair
                    """)
    void broken_text_is_refused_at_its_place(String text, int line, int column, String problem) {
        DocumentException refusal = refusal(text);

        assertThat(refusal.problem()).isEqualTo(problem);
        assertThat(refusal.file()).isEqualTo(FILE);
        assertThat(refusal.line()).isEqualTo(line);
        assertThat(refusal.column()).isEqualTo(column);
        assertThat(refusal.allowed()).isNotEmpty();
        assertThat(refusal.nextStep()).isNotEmpty();
    }

    @Test
    void control_characters_and_byte_order_marks_are_refused() {
        assertThat(refusal("\"a\tb\"").problem()).isEqualTo("a control character stands in a text");
        assertThat(refusal("\"a\nb\"").problem()).isEqualTo("a control character stands in a text");
        assertThat(refusal("\ufeff1").problem()).isEqualTo("unexpected character");
    }

    @Test
    void a_repeated_key_is_named_by_its_path() {
        DocumentException refusal = refusal("{\"a\": {\"b\": 1, \"b\": 2}}");

        assertThat(refusal.path()).isEqualTo("a.b");
        assertThat(refusal.value()).isEqualTo("b");
    }

    @Test
    void nesting_ends_at_64_levels() {
        assertThat(Json.read(FILE, "[".repeat(64) + "]".repeat(64))).isInstanceOf(ListNode.class);
        assertThat(refusal("[".repeat(65) + "]".repeat(65)).problem())
                .isEqualTo("the document is nested too deeply");
        assertThat(refusal("[".repeat(1_000_000)).problem())
                .isEqualTo("the document is nested too deeply");
        assertThat(refusal("{\"a\":".repeat(65)).allowed()).isEqualTo("at most 64 levels");
    }

    @Test
    void writes_pretty_and_compact() {
        Node node =
                Json.read(
                        FILE, "{\"a\":[1,{\"b\":\"x\"}],\"e\":[],\"m\":{},\"t\":true,\"n\":null}");

        assertThat(Json.write(node))
                .isEqualTo(
                        """
                        {
                          "a": [
                            1,
                            {
                              "b": "x"
                            }
                          ],
                          "e": [],
                          "m": {},
                          "t": true,
                          "n": null
                        }""");
        assertThat(Json.writeCompact(node))
                .isEqualTo("{\"a\":[1,{\"b\":\"x\"}],\"e\":[],\"m\":{},\"t\":true,\"n\":null}");
    }

    @Test
    void writes_escapes_only_where_they_are_needed() {
        assertThat(Json.writeCompact(Tree.text("\"\\\n\r\t\b\u0001\u007f/\u00e9\ud83d\ude9b")))
                .isEqualTo("\"\\\"\\\\\\n\\r\\t\\u0008\\u0001\\u007f/\u00e9\ud83d\ude9b\"");
    }

    @Test
    void the_message_has_one_line_with_place_path_value_allowed_and_next_step() {
        assertThatThrownBy(() -> Json.read(FILE, "{\"a\": [01]}"))
                .hasMessage(
                        "run.json:1:8: a[0]: This is not a value of JSON (value '01'). Allowed: a"
                                + " text in double quotes, a number, true, false, null, '{' or '['."
                                + " Next: Put a text in quotes.");
    }

    @Test
    void a_megabyte_on_one_line_is_read_without_delay() {
        String text = "[" + "1234567,".repeat(125_000) + "0]";

        assertThat(((ListNode) Json.read(FILE, text)).items()).hasSize(125_001);
    }

    @Test
    void nodes_refuse_what_no_document_can_hold() {
        List<String> halves = List.of("\ud800", "\udc00x", "a\ud800\ud800\udc00");
        for (String half : halves) {
            assertThatThrownBy(() -> Tree.text(half)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Tree.map().put(half, 1).build())
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new ScalarNode("012", ScalarNode.Kind.NUMBER, Position.NONE, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The text does not stand for a number.");
    }

    private static DocumentException refusal(String text) {
        return catchThrowableOfType(DocumentException.class, () -> Json.read(FILE, text));
    }
}
