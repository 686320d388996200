package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class BecauseTest {
    @Test
    void wheels_with_the_same_reason_are_named_together() {
        List<String> because =
                List.of(
                        "Major defect: Stroke at 2L",
                        "Major defect: Lining at 3R",
                        "Major defect: Stroke at 4R");

        assertThat(Because.grouped(because))
                .containsExactly("Major defect: Stroke at 2L, 4R", "Major defect: Lining at 3R");
    }

    @Test
    void wheels_in_brackets_are_named_together_where_the_end_is_the_same() {
        List<String> because =
                List.of(
                        "Stroke (4L): spoiled",
                        "Stroke (4R): spoiled",
                        "Stroke (5L): undetermined");

        assertThat(Because.grouped(because))
                .containsExactly("Stroke (4L, 4R): spoiled", "Stroke (5L): undetermined");
    }

    @Test
    void several_major_defects_are_called_so_once() {
        assertThat(Because.text(List.of("Major defect: A", "Major defect: B at 1L"), 4))
                .isEqualTo("Major defects: A \u00b7 B at 1L.");
        assertThat(Because.text(List.of("Major defect: A"), 4)).isEqualTo("Major defect: A.");
    }

    @Test
    void long_list_is_cut_and_says_how_many_are_left() {
        assertThat(Because.text(List.of("a", "b", "c", "d", "e."), 2))
                .isEqualTo("a \u00b7 b \u00b7 and 3 more, see below.");
        assertThat(Because.text(List.of("a", "b", "c."), 2)).isEqualTo("a \u00b7 b \u00b7 c.");
    }
}
