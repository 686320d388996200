package org.fandown.reference.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.document.ScalarNode.Kind;
import org.fandown.document.Values;
import org.fandown.reference.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonReferenceTest {
    private static final String WORK =
            "RFC 8259, The JavaScript Object Notation (JSON) Data Interchange Format";
    private static final String EDITION = "December 2017";
    private static final String ACCESSED = "2026-11-25";

    @Source(
            work = WORK,
            edition = EDITION,
            where = "section 13, first example",
            kind = Source.Kind.STANDARD,
            accessed = ACCESSED)
    @Test
    void the_object_of_the_examples_is_read() {
        String text =
                """
                {
                  "Image": {
                      "Width":  800,
                      "Height": 600,
                      "Title":  "View from 15th Floor",
                      "Thumbnail": {
                          "Url":    "http://www.example.com/image/481989943",
                          "Height": 125,
                          "Width":  100
                      },
                      "Animated" : false,
                      "IDs": [116, 943, 234, 38793]
                    }
                }
                """;

        Fields image = Fields.of(Json.read("example.json", text)).fields("Image");

        assertThat(image.integer("Width", 0, 1000)).isEqualTo(800);
        assertThat(image.text("Title")).isEqualTo("View from 15th Floor");
        assertThat(image.fields("Thumbnail").integer("Height", 0, 1000)).isEqualTo(125);
        assertThat(image.truth("Animated")).isFalse();
        assertThat(image.list("IDs"))
                .extracting(node -> Values.integer(node, 0, 100_000))
                .containsExactly(116, 943, 234, 38793);
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "section 13, three small texts that hold only values",
            kind = Source.Kind.STANDARD,
            accessed = ACCESSED)
    @ParameterizedTest(name = "{2}")
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "\"Hello world!\", TEXT, first",
                "42, NUMBER, second",
                "true, TRUTH, third",
            })
    void a_document_may_be_a_single_value(String text, Kind kind, String where) {
        Node node = Json.read("example.json", text);

        assertThat(node).isInstanceOf(ScalarNode.class);
        assertThat(((ScalarNode) node).kind()).isEqualTo(kind);
        assertThat(Json.writeCompact(node)).as(where).isEqualTo(text);
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "section 7 and section 8.3, escapes",
            kind = Source.Kind.STANDARD,
            accessed = ACCESSED)
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "\"\\u005C\",       5c,    'section 7, a reverse solidus by its code'",
        "\"\\\\\",          5c,    'section 7, a reverse solidus in short'",
        "\"\\uD834\\uDD1E\", 1d11e, 'section 7, the G clef'",
    })
    void escapes_stand_for_the_characters_named(String text, String codePoint, String where) {
        String read = Values.text(Json.read("example.json", text));

        assertThat(read).as(where).isEqualTo(Character.toString(Integer.parseInt(codePoint, 16)));
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "section 6, grammar of numbers, and two numbers beyond a double",
            kind = Source.Kind.STANDARD,
            accessed = ACCESSED)
    @ParameterizedTest
    @CsvSource({
        "1E400,                             section 6",
        "3.141592653589793238462643383279,  section 6",
        "-122.026020,                       section 13",
    })
    void numbers_keep_the_text_in_which_they_were_written(String text, String where) {
        assertThat(Json.writeCompact(Json.read("example.json", text))).as(where).isEqualTo(text);
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "section 8.2, a single unpaired surrogate, of which behaviour is unpredictable",
            kind = Source.Kind.STANDARD,
            accessed = ACCESSED)
    @Test
    void an_unpaired_surrogate_is_refused() {
        assertThatThrownBy(() -> Json.read("example.json", "\"\\uDEAD\""))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("half a surrogate pair");
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "section 3, the literal names are in lower case; section 6, no leading zeros",
            kind = Source.Kind.STANDARD,
            accessed = ACCESSED)
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({
        "True,      section 3",
        "NULL,      section 3",
        "Infinity,  section 6",
        "NaN,       section 6",
        "01,        section 6",
        "1.,        section 6",
        ".5,        section 6",
        "+1,        section 6",
        "1e,        section 6",
        "-,         section 6",
    })
    void what_the_grammar_excludes_is_refused(String text, String where) {
        assertThatThrownBy(() -> Json.read("example.json", text))
                .as(where)
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("This is not a value of JSON");
    }
}
