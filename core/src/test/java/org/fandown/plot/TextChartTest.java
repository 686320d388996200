package org.fandown.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TextChartTest {
    private static final int TERMINAL = 80;

    @Test
    void a_rising_needle_goes_from_the_lower_left_to_the_upper_right() {
        Curve needle = new Curve("primary needle");
        for (int i = 0; i <= 100; i++) {
            needle.add(i, 1.2 * i);
        }
        List<String> lines = new TextChart(List.of(needle), List.of()).lines();

        assertThat(lines.get(0)).isEqualTo("  psi  * primary needle");
        assertThat(lines.get(1)).startsWith(" 120 +").endsWith("*");
        assertThat(lines.get(17)).startsWith("   0 +*");
        assertThat(lines.get(19)).contains("0:00", "0:20", "1:40");
    }

    @Test
    void needles_on_one_another_are_shown_as_both() {
        Curve one = level("one", 50);
        Curve other = level("other", 50);

        assertThat(new TextChart(List.of(one, other), List.of()).lines())
                .anyMatch(line -> line.contains("##########"));
    }

    @Property(tries = 300)
    void no_line_is_wider_than_a_terminal_and_each_group_has_its_number(
            @ForAll @Size(max = 80) List<@DoubleRange(min = 0, max = 86_400) Double> times,
            @ForAll @DoubleRange(min = 0, max = 250) double psi) {
        List<Mark> marks =
                times.stream()
                        .sorted()
                        .map(time -> new Mark(time, "something", Mark.Weight.PLAIN))
                        .toList();
        Curve needle = new Curve("needle");
        needle.add(0, psi);
        needle.add(86_400, psi / 2);
        TextChart chart = new TextChart(List.of(needle), marks);

        assertThat(chart.lines()).allMatch(line -> line.length() <= TERMINAL);
        String numbers = chart.lines().get(chart.lines().size() - 1);
        if (!marks.isEmpty()) {
            assertThat(numbers.strip().split(" +")).hasSize(chart.groups().size());
        }
    }

    @Test
    void curve_refuses_time_that_goes_backwards() {
        Curve needle = level("needle", 50);

        assertThatThrownBy(() -> needle.add(1, 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("backwards");
        assertThatThrownBy(() -> needle.add(99, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Curve level(String name, double psi) {
        Curve curve = new Curve(name);
        for (int i = 0; i <= 60; i++) {
            curve.add(i, psi);
        }
        return curve;
    }
}
