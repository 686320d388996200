package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxleDiagramTest {
    @Test
    void strokes_are_shown_as_entered_beside_the_limit_of_their_chamber() {
        String text = text(Samples.ONTARIO_TRACTOR_TRAILER);

        assertThat(text)
                .containsSubsequence(
                        "Tractor T7, built 2018-05",
                        "1 steer clamp 20 long, auto",
                        "1 1/4 in limit 2 in",
                        "1 5/16 in limit 2 in",
                        "2 drive clamp 30, spring, auto",
                        "\u2717 2 1/4 in limit 2 in",
                        "1 3/4 in limit 2 in",
                        "Semi-trailer B14, built 2016-03",
                        "4 trailer",
                        "1 15/16 in limit 2 in",
                        "? 2 in limit 2 in",
                        "5 trailer",
                        "\u25cb not measured limit 2 in");
    }

    @Test
    void millimetres_stay_millimetres() {
        assertThat(text(Samples.QUEBEC_TRUCK))
                .contains("36 mm limit 44 mm")
                .contains("41 mm limit 51 mm");
    }

    @Test
    void every_unit_of_a_set_of_doubles_is_drawn_in_order() {
        assertThat(text(Samples.US_DOUBLES))
                .containsSubsequence(
                        "Tractor 4401",
                        "1 steer",
                        "2 drive",
                        "Semi-trailer P28-1",
                        "3 trailer",
                        "Dolly D3",
                        "4 trailer",
                        "Semi-trailer P28-2",
                        "5 trailer");
    }

    @Test
    void subtracted_stroke_is_shown_as_a_rule_would_show_it() {
        String yaml =
                Samples.text(Samples.ONTARIO_TRACTOR_TRAILER)
                        .replace(
                                "5L: { applied: 1 3/4 in }",
                                "5L: { released: 2 1/8 in, fully-applied-length: 3 13/16 in }");

        assertThat(PrintedReport.of(Samples.yaml(yaml)).text()).contains("1 11/16 in limit 2 in");
    }

    @Test
    void vehicle_without_push_rods_says_so() {
        String text = PrintedReport.of(Samples.example("us-flat-bed-warning-late.yaml")).text();

        assertThat(text).contains("no push rod").contains("No wheel has a push rod to measure.");
    }

    @Test
    void unbraked_and_unlike_ends_are_named() {
        String yaml =
                Samples.text(Samples.QUEBEC_TRUCK)
                        .replace(
                                "- { position: steer, brake: drum, chamber: clamp 24,"
                                        + " spring-brake: false, adjuster: automatic }",
                                "- { position: steer, brake: drum, chamber: clamp 24,"
                                        + " spring-brake: false, left: { chamber: clamp 20 } }\n"
                                        + "        - { position: tag, brake: none }")
                        .replace("  3L: { applied: 43 mm }\n  3R: { applied: 42 mm }\n", "")
                        .replace("  2L: { applied: 41 mm }\n  2R: { applied: 40 mm }\n", "");

        assertThat(PrintedReport.of(Samples.yaml(yaml)).text())
                .containsSubsequence("1 steer", "L clamp 20", "R clamp 24")
                .containsSubsequence("2 tag", "no brake", "no brake", "no brake");
    }

    @Test
    void bars_are_drawn_as_lines_not_as_pictures() {
        byte[] bytes = PrintedReport.of(Samples.sample(Samples.US_DOUBLES)).bytes();
        String latin = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);

        assertThat(List.of(latin.split("\n", -1))).noneMatch(line -> line.contains("/Image"));
    }

    private static String text(String name) {
        return PrintedReport.of(Samples.sample(name)).text();
    }
}
