package org.fandown.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.fandown.plot.Shape.Label;
import org.fandown.plot.Shape.Plate;
import org.fandown.plot.Shape.Point;
import org.fandown.plot.Shape.Trail;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class PressureChartTest {
    /** Widths are estimated on the safe side; a rounding may add up to this. */
    private static final double ROUNDING = 0.01;

    @Test
    void both_needles_are_drawn_with_their_names_and_axes() {
        Drawing drawing = PressureChart.of("A run", "of a truck", curves(60), List.of());

        assertThat(texts(drawing))
                .contains("A run", "of a truck", "primary", "secondary", "psi", "kPa")
                .contains("0", "20", "120", "200", "800", "0:00", "1:00");
        assertThat(drawing.shapes().stream().filter(s -> isCurve(s, Ink.FIRST))).hasSize(2);
        assertThat(drawing.shapes().stream().filter(s -> isCurve(s, Ink.SECOND))).hasSize(2);
    }

    @Test
    void a_needle_stands_where_its_figure_stands() {
        Curve needle = new Curve("primary");
        needle.add(0, 100);
        needle.add(60, 0);
        Drawing drawing = PressureChart.of("A run", "", List.of(needle), List.of());
        List<Trail> curves =
                drawing.shapes().stream()
                        .filter(s -> isCurve(s, Ink.FIRST))
                        .map(Trail.class::cast)
                        .toList();
        List<Point> points = curves.get(curves.size() - 1).points();

        assertThat(points).hasSize(2);
        assertThat(points.get(0).y()).isEqualTo(gridAt(drawing, "100"));
        assertThat(points.get(1).y()).isEqualTo(gridAt(drawing, "0"));
    }

    @Test
    void a_peak_between_many_samples_is_not_lost() {
        Curve needle = new Curve("primary");
        for (int i = 0; i < 100_000; i++) {
            needle.add(i, i == 54_321 ? 119 : 30);
        }
        List<Point> points = Thinned.of(needle, time -> time / 200, psi -> psi);

        assertThat(points).hasSizeLessThan(4100).anyMatch(point -> point.y() == 119);
    }

    @Test
    void marks_that_would_touch_share_a_number_and_each_is_listed() {
        List<Mark> marks =
                List.of(
                        new Mark(1, "first", Mark.Weight.PLAIN),
                        new Mark(1.5, "second", Mark.Weight.STRONG),
                        new Mark(40, "third", Mark.Weight.HAZARD));
        Drawing drawing = PressureChart.of("A run", "", curves(60), marks);

        assertThat(texts(drawing))
                .contains("first", "second", "Danger: third", "0:01.0", "0:01.5", "0:40.0");
        assertThat(texts(drawing).stream().filter("2"::equals)).hasSize(2);
        assertThat(texts(drawing)).doesNotContain("3");
    }

    @Test
    void equal_marks_of_a_group_are_counted() {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            marks.add(new Mark(10 + 0.1 * i, "pedal down", Mark.Weight.PLAIN));
        }

        assertThat(texts(PressureChart.of("A run", "", curves(60), marks)))
                .contains("pedal down, 5 times until 0:10.4");
    }

    @Property(tries = 300)
    void everything_stays_inside_and_no_number_covers_another(
            @ForAll @Size(max = 60) List<@DoubleRange(min = 0, max = 4000) Double> times,
            @ForAll @StringLength(max = 200) String text,
            @ForAll @DoubleRange(min = 0, max = 250) double psi)
            throws Exception {
        Drawing drawing = drawing(times, text, psi);

        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Label label) {
                assertInside(drawing, label);
            } else if (shape instanceof Plate plate) {
                assertThat(plate.corner().x()).isBetween(0.0, 600 - plate.width());
            } else if (shape instanceof Trail trail) {
                assertThat(trail.points())
                        .allMatch(p -> p.x() >= 0 && p.x() <= drawing.width())
                        .allMatch(p -> p.y() >= 0 && p.y() <= drawing.height());
            }
        }
        assertApart(drawing);
        assertThat(xml(SvgText.of(drawing)).getDocumentElement().getTagName()).isEqualTo("svg");
    }

    private static Drawing drawing(List<Double> times, String text, double psi) {
        Curve primary = new Curve("primary needle");
        Curve secondary = new Curve("secondary needle");
        for (int i = 0; i <= 100; i++) {
            primary.add(40 * i, psi);
            secondary.add(40 * i, psi / 2);
        }
        List<Mark> marks =
                times.stream()
                        .sorted()
                        .map(time -> new Mark(time, text + time, Mark.Weight.STRONG))
                        .toList();
        return PressureChart.of("T" + text, text, List.of(primary, secondary), marks);
    }

    /** The numbered plates above the graph do not touch. */
    private static void assertApart(Drawing drawing) {
        List<Plate> plates =
                drawing.shapes().stream()
                        .filter(Plate.class::isInstance)
                        .map(Plate.class::cast)
                        .toList();
        for (Plate one : plates) {
            for (Plate other : plates) {
                boolean apart =
                        one.equals(other)
                                || Math.abs(one.corner().x() - other.corner().x()) >= one.width()
                                || Math.abs(one.corner().y() - other.corner().y()) >= one.height();
                assertThat(apart).as("%s and %s", one, other).isTrue();
            }
        }
    }

    private static void assertInside(Drawing drawing, Label label) {
        double width = Wrap.width(label.text(), label.look().size());
        double left =
                switch (label.align()) {
                    case START -> label.at().x();
                    case MIDDLE -> label.at().x() - width / 2;
                    case END -> label.at().x() - width;
                };
        assertThat(left).as(label.text()).isGreaterThanOrEqualTo(-ROUNDING);
        assertThat(left + width).as(label.text()).isLessThanOrEqualTo(drawing.width() + ROUNDING);
        assertThat(label.at().y()).isBetween(label.look().size(), drawing.height() - 3);
    }

    @Test
    void signs_of_xml_and_control_characters_do_no_harm() throws Exception {
        String nasty = "<a href=\"x\"> & ]]> \u0001 \ud83d\ude9a \ud800";
        Drawing drawing =
                PressureChart.of(
                        nasty, nasty, curves(60), List.of(new Mark(1, nasty, Mark.Weight.PLAIN)));

        assertThat(xml(SvgText.of(drawing)).getElementsByTagName("a").getLength()).isZero();
    }

    @Test
    void svg_has_a_title_and_a_dark_side() throws Exception {
        String svg = SvgText.of(PressureChart.of("A run", "", curves(60), List.of()));

        assertThat(xml(svg).getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("A run");
        assertThat(svg).contains("prefers-color-scheme:dark").contains("viewBox=\"0 0 600 ");
    }

    private static Document xml(String text) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(text)));
    }

    private static List<Curve> curves(int seconds) {
        Curve primary = new Curve("primary");
        Curve secondary = new Curve("secondary");
        for (int i = 0; i <= seconds; i++) {
            primary.add(i, 2 * i);
            secondary.add(i, 118 - i);
        }
        return List.of(primary, secondary);
    }

    private static boolean isCurve(Shape shape, Ink ink) {
        return shape instanceof Trail trail && trail.ink() == ink;
    }

    private static double gridAt(Drawing drawing, String figure) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .filter(label -> label.text().equals(figure) && label.align() == Shape.Align.END)
                .mapToDouble(label -> label.at().y() - 5)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(shape -> ((Label) shape).text())
                .toList();
    }
}
