package org.fandown.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names, paths, positions and the advice on misspelt words. */
class WordsTest {
    private enum Check {
        GOVERNOR_CUT_OUT,
        TYPE_9,
        ABS
    }

    @Test
    void constants_are_named_in_lower_case_with_hyphens() {
        assertThat(Names.byKebab(Check.values()))
                .containsExactly(
                        Map.entry("governor-cut-out", Check.GOVERNOR_CUT_OUT),
                        Map.entry("type-9", Check.TYPE_9),
                        Map.entry("abs", Check.ABS));
    }

    @Test
    void paths_read_like_what_was_written() {
        assertThat(Paths.key("", "axles")).isEqualTo("axles");
        assertThat(Paths.key("readings", "build-up")).isEqualTo("readings.build-up");
        assertThat(Paths.item("axles", 2)).isEqualTo("axles[2]");
        assertThat(Paths.key("a", "x.y")).isEqualTo("a[\"x.y\"]");
        assertThat(Paths.key("a", "")).isEqualTo("a[\"\"]");
        assertThat(Paths.key("a", "q\"\n")).isEqualTo("a[\"q\\\"?\"]");
    }

    @Test
    void positions_leave_out_what_is_unknown() {
        assertThat(new Position("a.yaml", 3, 7)).hasToString("a.yaml:3:7");
        assertThat(new Position("a.yaml", 3, 0)).hasToString("a.yaml:3");
        assertThat(Position.inFile("a.yaml")).hasToString("a.yaml");
        assertThatThrownBy(() -> new Position("a.yaml", -1, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_message_leaves_out_what_is_unknown() {
        assertThat(new DocumentException(Position.NONE, "", "", "it is broken", "", ""))
                .hasMessage("It is broken.");
        assertThat(
                        new DocumentException(
                                Position.NONE, "a", "x\ny".repeat(60), "it is broken", "b", "c"))
                .hasMessageStartingWith("a: It is broken (value 'x?y")
                .hasMessageEndingWith("...'). Allowed: b. Next: C.");
    }

    @ParameterizedTest
    @CsvSource({
        "'', '', 0",
        "a, '', 1",
        "'', abc, 3",
        "time, time, 0",
        "tiem, time, 1",
        "vehcile, vehicle, 1",
        "plase, place, 1",
        "kitten, sitting, 3",
        "ca, abc, 3",
    })
    void counts_the_letters_that_differ(String a, String b, int distance) {
        assertThat(Nearest.distance(a, b)).isEqualTo(distance);
        assertThat(Nearest.distance(b, a)).isEqualTo(distance);
    }

    @Test
    void advises_a_name_only_if_it_is_near() {
        assertThat(Nearest.advice("plce", List.of("vehicle", "place"), "none"))
                .isEqualTo("did you mean 'place'?");
        assertThat(Nearest.advice("colour", List.of("vehicle", "place"), "none")).isEqualTo("none");
        assertThat(Nearest.advice("xy", List.of("ab"), "none")).isEqualTo("none");
    }
}
