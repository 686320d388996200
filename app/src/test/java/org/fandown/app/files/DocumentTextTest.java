package org.fandown.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Position;
import org.fandown.units.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentTextTest {
    private static final String FILE = "run.yaml";

    @Test
    void reads_a_document_as_people_write_it() {
        Node node =
                DocumentText.yaml(
                        FILE,
                        """
                        # an inspection
                        place: CA-BC
                        readings:
                          build-up: {time: 1:14 min, engine: 1100 rpm}
                          strokes:
                            - left: 1 3/8 in
                              right: 1 3/8"
                        wet: no
                        abs: true
                        axles: 3
                        share: -0.5
                        notes: |
                          first line
                          second line
                        none:
                        """);

        assertThat(Json.writeCompact(node))
                .isEqualTo(
                        "{\"place\":\"CA-BC\","
                                + "\"readings\":{\"build-up\":{\"time\":\"1:14 min\",\"engine\":\"1100"
                                + " rpm\"},"
                                + "\"strokes\":[{\"left\":\"1 3/8 in\",\"right\":\"1 3/8\\\"\"}]},"
                                + "\"wet\":\"no\",\"abs\":true,\"axles\":3,\"share\":-0.5,"
                                + "\"notes\":\"first line\\nsecond line\\n\",\"none\":null}");
    }

    @Test
    void every_node_knows_its_place_and_path() {
        MapNode top = (MapNode) DocumentText.yaml(FILE, "a: 1\naxles:\n  - brake: drum\n");
        ListNode axles = (ListNode) top.get("axles").orElseThrow();
        MapNode axle = (MapNode) axles.items().get(0);
        Node brake = axle.get("brake").orElseThrow();

        assertThat(top.keyAt("axles")).isEqualTo(new Position(FILE, 2, 1));
        assertThat(axle.at()).isEqualTo(new Position(FILE, 3, 5));
        assertThat(brake.at()).isEqualTo(new Position(FILE, 3, 12));
        assertThat(brake.path()).isEqualTo("axles[0].brake");
    }

    @Test
    void a_wrong_value_is_refused_at_its_line() {
        Fields fields = Fields.of(DocumentText.yaml(FILE, "place: GB\ntime: 92 psi\n"));

        DocumentException refusal = refusal(() -> fields.quantity("time", Dimension.TIME));

        assertThat(refusal)
                .hasMessage(
                        "run.yaml:2:7: time: 'psi' is a pressure, not a time (value '92 psi')."
                                + " Allowed: a time in s, min, h, d. Next: Write it like '74 s'.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    007      | "007"
                    0x1F     | "0x1F"
                    0o17     | "0o17"
                    +5       | "+5"
                    .5       | ".5"
                    .inf     | ".inf"
                    .nan     | ".nan"
                    1_000    | "1_000"
                    12:30:45 | "12:30:45"
                    2026-11-25 | "2026-11-25"
                    NO       | "NO"
                    yes      | "yes"
                    on       | "on"
                    '5'      | "5"
                    "true"   | "true"
                    5        | 5
                    -0.5     | -0.5
                    1e3      | 1e3
                    True     | true
                    FALSE    | false
                    ~        | null
                    Null     | null
                    """)
    void only_plain_numbers_and_the_words_of_the_core_schema_are_more_than_text(
            String yaml, String json) {
        assertThat(Json.writeCompact(DocumentText.yaml(FILE, yaml))).isEqualTo(json);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    ``                   | 1 | the file is empty
                    `# only a comment\\n`| 2 | the file is empty
                    `a: 1\\na: 2`        | 2 | the key stands twice
                    `a: 1\\n\"a\": 2`    | 2 | the key stands twice
                    `{a: 1, a: 2}`       | 1 | the key stands twice
                    `a: &x 1`            | 1 | an anchor stands here
                    `a: &x\\n  b: 1`     | 1 | an anchor stands here
                    `a: *x`              | 1 | an alias stands here
                    `<<: 1`              | 1 | a merge key stands here
                    `a: !!str 1`         | 1 | a tag stands here
                    `a: ! 1`             | 1 | a tag stands here
                    `!!map {a: 1}`       | 1 | a tag stands here
                    `!!str a: 1`         | 1 | a tag stands here
                    `&k a: 1`            | 1 | this cannot be a key
                    `? [a]\\n: 1`        | 1 | this cannot be a key
                    `? {a: 1}\\n: 1`     | 1 | this cannot be a key
                    `*a : 1`             | 1 | this cannot be a key
                    `a: 1\\n---\\nb: 2`  | 2 | a second document begins
                    `%YAML 1.1\\n---\\na: 1` | 1 | a directive stands here
                    `%TAG ! x:\\n---\\na: 1` | 1 | a directive stands here
                    `a:\\n\\tb: 1`       | 2 | a tab stands where YAML allows only spaces
                    `\\ta: 1`            | 1 | a tab stands where YAML allows only spaces
                    `a: b: c`            | 1 | a colon stands where no key can be
                    `a: 1\\n b: 2`       | 2 | a colon stands where no key can be
                    `a: 'x`              | 1 | a text in quotes does not end
                    `a: [1, 2`           | 1 | a bracket is not closed
                    `a: {b: 1`           | 1 | a bracket is not closed
                    `a: @x`              | 1 | a value cannot begin with this character
                    `a: 1\\n- b`         | 2 | the line does not fit the ones above it
                    `a: - b`             | 1 | a list cannot begin here
                    `a: "\\q"`           | 1 | the escape is unknown
                    `a: "\\ud800"`       | 1 | the text holds half a surrogate pair
                    `"\\ud800": 1`       | 1 | the text holds half a surrogate pair
                    `a: "\\UFFFFFFFF"`   | 1 | this cannot be read as YAML
                    `a: ]`               | 1 | this cannot be read as YAML
                    `x\\n\\u0000`        | 2 | a character that no text may hold stands here: code 0
                    """)
    void what_two_readers_could_read_differently_is_refused_at_its_line(
            String text, int line, String problem) {
        String yaml = text.replace("\\n", "\n").replace("\\t", "\t").replace("\\u0000", "\0");

        DocumentException refusal = refusal(() -> DocumentText.yaml(FILE, yaml));

        assertThat(refusal.problem()).isEqualTo(problem);
        assertThat(refusal.file()).isEqualTo(FILE);
        assertThat(refusal.line()).isEqualTo(line);
        assertThat(refusal.allowed()).isNotEmpty();
        assertThat(refusal.nextStep()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "- ", "{a: ", "? "})
    void nesting_ends_at_64_levels(String opening) {
        DocumentException refusal =
                refusal(() -> DocumentText.yaml(FILE, opening.repeat(1000) + "x"));

        assertThat(refusal.line()).isEqualTo(1);
    }

    @Test
    void sixty_four_levels_are_allowed() {
        assertThat(DocumentText.yaml(FILE, "[".repeat(64) + "]".repeat(64)))
                .isInstanceOf(ListNode.class);
        assertThat(refusal(() -> DocumentText.yaml(FILE, "[".repeat(65) + "]".repeat(65))))
                .hasMessageContaining("at most 64 levels");
    }

    @Test
    void bytes_must_be_utf_8_and_the_line_of_the_first_that_is_not_is_named() {
        byte[] bytes = {'a', ':', ' ', '1', '\r', '\n', '#', '\n', 'b', ':', ' ', (byte) 0xe9};

        DocumentException refusal = refusal(() -> DocumentText.of(FILE, bytes));

        assertThat(refusal).hasMessageStartingWith("run.yaml:3: The bytes here are not UTF-8");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.yaml", "a.yml", "a.json", "A.JSON"})
    void a_byte_order_mark_at_the_start_is_dropped(String file) {
        byte[] bytes = "\ufeff{\"a\": \"\u00e9\"}".getBytes(StandardCharsets.UTF_8);

        assertThat(Json.writeCompact(DocumentText.of(file, bytes))).isEqualTo("{\"a\":\"\u00e9\"}");
    }

    @Test
    void json_is_held_to_the_rules_of_json() {
        byte[] bytes = "{a: 1}".getBytes(StandardCharsets.UTF_8);

        assertThat(Json.writeCompact(DocumentText.of("a.yaml", bytes))).isEqualTo("{\"a\":1}");
        assertThat(refusal(() -> DocumentText.of("a.json", bytes)).problem())
                .isEqualTo("unexpected character");
    }

    @Test
    void a_large_list_is_read() {
        String yaml = "- 1234567\n".repeat(100_000);

        assertThat(((ListNode) DocumentText.yaml(FILE, yaml)).items()).hasSize(100_000);
    }

    private static DocumentException refusal(ThrowingCallable action) {
        return catchThrowableOfType(DocumentException.class, action);
    }
}
