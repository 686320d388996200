package org.fandown.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fandown.plot.Shape.Label;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Trail;
import org.fandown.plot.TraceView.Figure;
import org.fandown.plot.TraceView.Focus;
import org.fandown.plot.TraceView.Panel;
import org.fandown.plot.TraceView.Span;
import org.fandown.plot.TraceView.Strip;
import org.junit.jupiter.api.Test;

class TraceChartTest {
    /** Places are worked out in doubles. */
    private static final double ROUNDING = 1e-6;

    @Test
    void everything_known_is_named_with_its_unit() {
        Drawing drawing = TraceChart.of("A trace", view(100, List.of()), ChartSize.SCREEN);

        assertThat(texts(drawing))
                .contains("primary", "secondary", "psi", "kPa", "engine, rpm", "parking brake set")
                .contains(
                        "0",
                        "120",
                        "800",
                        "0:00",
                        "minutes and seconds since the start of the log");
    }

    @Test
    void line_is_broken_where_nothing_was_recorded() {
        Curve curve = new Curve("primary");
        for (int i = 0; i < 100; i++) {
            curve.add(i < 50 ? i : i + 40, 100);
        }
        Drawing drawing = TraceChart.of("A gap", of(curve, 140), ChartSize.SCREEN);
        List<Trail> pieces = trails(drawing, Ink.FIRST);

        // One is the sample in the legend.
        assertThat(pieces).hasSize(3);
        assertThat(pieces.get(2).points().get(0).x() - end(pieces.get(1))).isGreaterThan(100);
    }

    private static double end(Trail trail) {
        return trail.points().get(trail.points().size() - 1).x();
    }

    @Test
    void slow_log_has_no_gaps_for_being_slow() {
        Curve curve = new Curve("primary");
        for (int i = 0; i < 100; i++) {
            curve.add(i * 60.0, 100);
        }

        assertThat(trails(TraceChart.of("Slow", of(curve, 6000), ChartSize.SCREEN), Ink.FIRST))
                .hasSize(2);
    }

    @Test
    void small_loss_fills_the_scale_of_its_own_picture() {
        Curve curve = new Curve("primary");
        for (int i = 0; i <= 60; i++) {
            curve.add(i, 108.5 - i / 60.0);
        }
        TraceView view =
                new TraceView(
                        0,
                        60,
                        false,
                        List.of(curve),
                        List.of(),
                        List.of(),
                        List.of(),
                        Figure.none(),
                        new Focus(0, 60));
        Drawing drawing = TraceChart.of("A loss", view, ChartSize.PAPER);
        Trail line = trails(drawing, Ink.FIRST).get(1);
        double drop = line.points().get(line.points().size() - 1).y() - line.points().get(0).y();

        assertThat(drop).isGreaterThan(ChartSize.PAPER.height() / 8);
        assertThat(texts(drawing)).contains("106", "110").doesNotContain("0", "140");
    }

    @Test
    void measured_value_stands_at_its_figure_with_its_doubt() {
        Curve curve = new Curve("primary");
        curve.add(0, 100);
        curve.add(60, 110);
        Curve value = new Curve("measured");
        value.add(30, 105);
        TraceView view =
                new TraceView(
                        0,
                        60,
                        false,
                        List.of(curve),
                        List.of(),
                        List.of(),
                        List.of(),
                        new Figure(value, 2, false),
                        new Focus(0, 60));
        Drawing drawing = TraceChart.of("A value", view, ChartSize.PAPER);
        List<Trail> lines = trails(drawing, Ink.MARK);
        double top = lines.get(0).points().get(0).y();
        double bottom = lines.get(0).points().get(1).y();
        Trail needle = trails(drawing, Ink.FIRST).get(1);
        double psi = (needle.points().get(0).y() - needle.points().get(1).y()) / 10;

        assertThat(lines).hasSize(3);
        assertThat(bottom - top).isEqualTo(4 * psi, within(ROUNDING));
    }

    @Test
    void what_is_outside_of_the_scale_is_cut_off_and_not_drawn_along_its_edge() {
        Curve curve = new Curve("primary");
        for (int i = 0; i <= 100; i++) {
            curve.add(i, i < 60 ? 108 - i / 60.0 : 60);
        }
        TraceView view =
                new TraceView(
                        0,
                        100,
                        false,
                        List.of(curve),
                        List.of(),
                        List.of(),
                        List.of(),
                        Figure.none(),
                        new Focus(0, 59));
        Drawing drawing = TraceChart.of("A drop", view, ChartSize.PAPER);
        List<Trail> pieces = trails(drawing, Ink.FIRST);
        double width = ChartSize.PAPER.width();

        assertThat(pieces).hasSize(2);
        assertThat(end(pieces.get(1))).isBetween(0.5 * width, 0.7 * width);
    }

    @Test
    void line_of_a_loss_runs_through_the_circuit_that_falls_fastest() {
        Curve slow = new Curve("primary");
        Curve fast = new Curve("secondary");
        for (int i = 0; i <= 120; i++) {
            slow.add(i, 100 - i / 120.0);
            fast.add(i, 110 - 4 * i / 120.0);
        }
        Curve line = SlopeLine.of(List.of(slow, fast), 0, 120, 4.0 / 120);

        assertThat(line.size()).isEqualTo(2);
        assertThat(line.value(0)).isEqualTo(110, within(ROUNDING));
        assertThat(line.value(1)).isEqualTo(106, within(ROUNDING));
        assertThat(SlopeLine.of(List.of(slow), 500, 600, 1).size()).isZero();
    }

    @Test
    void switch_is_a_bar_while_it_is_on() {
        Curve lamp = new Curve("w");
        for (int i = 0; i <= 100; i++) {
            lamp.add(i, i >= 20 && i < 60 ? 1 : 0);
        }
        List<double[]> bars = Pieces.on(lamp, x -> x);

        assertThat(bars).hasSize(1);
        assertThat(bars.get(0)).containsExactly(20, 60);
    }

    @Property(tries = 300)
    void numbers_never_cover_each_other_and_all_are_there(
            @ForAll @IntRange(min = 0, max = 400) int count, @ForAll long seed) {
        Random random = new Random(seed);
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            times.add(random.nextDouble() * 1000);
        }
        times.sort(Comparator.naturalOrder());
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double to = Math.min(1000, times.get(i) + random.nextDouble() * 100);
            spans.add(new Span(i + 1, times.get(i), to));
        }
        ChartSize size = random.nextBoolean() ? ChartSize.SCREEN : ChartSize.PAPER;
        Drawing drawing = TraceChart.of("Many", view(1000, spans), size);
        List<Plate> plates =
                drawing.shapes().stream()
                        .filter(s -> s instanceof Plate p && p.ink() == Ink.MARK)
                        .map(Plate.class::cast)
                        .toList();

        for (int i = 0; i < plates.size(); i++) {
            Plate a = plates.get(i);
            assertThat(a.corner().x()).isGreaterThanOrEqualTo(0);
            assertThat(a.corner().x() + a.width()).isLessThanOrEqualTo(size.width());
            assertThat(a.corner().y()).isGreaterThanOrEqualTo(0);
            for (int k = 0; k < i; k++) {
                assertThat(areApart(a, plates.get(k))).isTrue();
            }
        }
        assertThat(numbers(drawing)).isEqualTo(count);
    }

    private static boolean areApart(Plate a, Plate b) {
        return a.corner().x() + a.width() <= b.corner().x() + ROUNDING
                || b.corner().x() + b.width() <= a.corner().x() + ROUNDING
                || a.corner().y() + a.height() <= b.corner().y() + ROUNDING
                || b.corner().y() + b.height() <= a.corner().y() + ROUNDING;
    }

    /** How many numbers the plates name together. */
    private static int numbers(Drawing drawing) {
        int sum = 0;
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Label label && label.look().onPlate()) {
                String[] ends = label.text().split("\u2013", -1);
                int first = Integer.parseInt(ends[0]);
                int last = Integer.parseInt(ends[ends.length - 1]);
                sum += last - first + 1;
            }
        }
        return sum;
    }

    private static TraceView of(Curve curve, double end) {
        return new TraceView(
                0,
                end,
                true,
                List.of(curve),
                List.of(),
                List.of(),
                List.of(),
                Figure.none(),
                new Focus(0, end));
    }

    private static TraceView view(double end, List<Span> spans) {
        Curve primary = new Curve("primary");
        Curve secondary = new Curve("secondary");
        Curve engine = new Curve("engine");
        Curve parking = new Curve("parking");
        for (int i = 0; i <= 100; i++) {
            double seconds = i * end / 100;
            primary.add(seconds, 120 - i / 10.0);
            secondary.add(seconds, 118 - i / 10.0);
            engine.add(seconds, i < 50 ? 700 : 0);
            parking.add(seconds, i < 30 ? 1 : 0);
        }
        return new TraceView(
                0,
                end,
                true,
                List.of(primary, secondary),
                List.of(new Panel("engine, rpm", engine, 2000)),
                List.of(new Strip("parking brake set", parking)),
                spans,
                Figure.none(),
                new Focus(0, end));
    }

    private static List<Trail> trails(Drawing drawing, Ink ink) {
        return drawing.shapes().stream()
                .filter(s -> s instanceof Trail t && t.ink() == ink)
                .map(Trail.class::cast)
                .toList();
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(s -> ((Label) s).text())
                .toList();
    }
}
