package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fandown.app.files.DocumentText;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;

class FilesPropertyTest {
    private static final String INSPECTION =
            """
            place: CA-BC
            moment: 2026-11-25T08:15:00-08:00
            readings:
              - check: build-up
                time: 74 s
                engine: 1100 rpm
              - {check: applied-stroke, left: 1 3/8 in, right: "1 1/2 in"}
            notes: >
              two lines
              of text
            """;

    @Property(tries = 10_000)
    void any_yaml_text_is_read_or_refused_in_the_documented_way(@ForAll String text) {
        assertReadOrRefused(() -> DocumentText.yaml("a.yaml", text));
    }

    @Property(tries = 10_000)
    void any_text_that_looks_like_yaml_is_read_or_refused_in_the_documented_way(
            @ForAll("nearlyYaml") String text) {
        assertReadOrRefused(() -> DocumentText.yaml("a.yaml", text));
    }

    @Property(tries = 10_000)
    void an_inspection_with_a_part_cut_out_or_put_in_is_read_or_refused_in_the_documented_way(
            @ForAll int from, @ForAll int length, @ForAll("nearlyYaml") String instead) {
        int start = Math.floorMod(from, INSPECTION.length());
        int end = Math.min(INSPECTION.length(), start + Math.floorMod(length, 12));
        String text = INSPECTION.substring(0, start) + instead + INSPECTION.substring(end);

        assertReadOrRefused(() -> DocumentText.yaml("a.yaml", text));
    }

    @Property(tries = 10_000)
    void any_bytes_are_read_or_refused_in_the_documented_way(
            @ForAll byte[] bytes, @ForAll boolean json) {
        assertReadOrRefused(() -> DocumentText.of(json ? "a.json" : "a.yaml", bytes));
    }

    @Property
    void what_is_written_as_json_reads_the_same_as_yaml(@ForAll("printable") List<String> texts) {
        Tree.MapBuilder map = Tree.map();
        for (int i = 0; i < texts.size(); i++) {
            map.put("k" + i, Tree.list().add(texts.get(i)).add(i).add(Tree.nothing()));
        }
        String json = Json.writeCompact(map.build());

        assertThat(Json.writeCompact(DocumentText.yaml("a.yaml", json))).isEqualTo(json);
    }

    private interface Reading {
        Node read();
    }

    private static void assertReadOrRefused(Reading reading) {
        try {
            String json = Json.writeCompact(reading.read());
            assertThat(Json.writeCompact(Json.read("a.json", json))).isEqualTo(json);
        } catch (DocumentException e) {
            assertThat(e.file()).startsWith("a.");
            assertThat(e.line()).isPositive();
            assertThat(e.problem()).isNotBlank();
            assertThat(e.getMessage()).doesNotContain("\n");
        }
    }

    @Provide
    Arbitrary<String> nearlyYaml() {
        Arbitrary<String> parts =
                Arbitraries.of(
                        "a: ",
                        "b:\n",
                        "- ",
                        "\n",
                        "  ",
                        "\"",
                        "'",
                        "|",
                        "|+2",
                        "> -1",
                        "[",
                        "]",
                        "{",
                        "}",
                        ", ",
                        ": ",
                        "? ",
                        "#",
                        "---\n",
                        "...\n",
                        "%YAML 1.2\n",
                        "%TAG ! x\n",
                        "!!str",
                        "!<",
                        "&a ",
                        "*a",
                        "<<: ",
                        "\\x41",
                        "\\U0011FFFF",
                        "\\u12",
                        "\t",
                        "\r",
                        "1",
                        "~",
                        "\u00e9",
                        "\u2028",
                        "\ud83d\ude9b",
                        "@",
                        "`",
                        "\u0000");
        return parts.list().ofMaxSize(12).map(list -> String.join("", list));
    }

    @Provide
    Arbitrary<List<String>> printable() {
        return Arbitraries.strings()
                .withCharRange(' ', '~')
                .withChars("\u00e9\u00b0\n\t")
                .ofMaxLength(12)
                .list()
                .ofMaxSize(5);
    }
}
