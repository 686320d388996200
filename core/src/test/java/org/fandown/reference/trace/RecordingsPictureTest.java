package org.fandown.reference.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSetup.Defect;
import org.fandown.air.AirSystem;
import org.fandown.air.AirVehicles;
import org.fandown.generated.Generated;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.trace.Heard;
import org.fandown.trace.Signal;
import org.fandown.units.GaugePressure;
import org.junit.jupiter.api.Test;

/**
 * The recordings of a real truck beside a simulated tractor: the shape alike, nothing fitted. Run
 * with {@code -Dfandown.write-docs=true} to draw the picture anew.
 */
class RecordingsPictureTest {
    private static final Path FOLDER = Path.of("..", "examples", "recordings");
    private static final Path PICTURE = Path.of("..", "docs", "pictures", "recordings.svg");
    private static final double END = 30;
    private static final double STEP = 0.25;

    /** One message of pressures is one step of its resolution, kPa. */
    private static final double RESOLUTION = 8;

    /** A light brake application: nothing in the recording says how hard the pedal was pressed. */
    private static final double TRAVEL = 0.2;

    /**
     * The compressor does not pump in the recordings, between its cut-out and its cut-in, so it is
     * held unloaded here.
     */
    private static final AirSetup SETUP = AirSetup.SOUND.with(Defect.GOVERNOR_STUCK_UNLOADED);

    /** One recording with what the model does at the same times. */
    private static final class Panel {
        private final String title;
        private final Heard heard;
        private final List<double[]> model = new ArrayList<>();

        private Panel(String file, String title) throws IOException {
            this.title = title;
            heard = Heard.of(FOLDER.resolve(file));
            AirSystem system = AirSystem.of(AirVehicles.tractor(), SETUP);
            system.fill(GaugePressure.ofKilopascals(of(Signal.CIRCUIT_1).get(0).value()));
            for (double time = 0; time <= END; time += STEP) {
                system.advance(time - system.state().time());
                double primary = system.pressure("primary").inKilopascals();
                double secondary = system.pressure("secondary").inKilopascals();
                model.add(new double[] {time, primary, secondary});
                system.control(system.controls().withFoot(brakingAt(time) ? TRAVEL : 0));
            }
        }

        private List<Heard.Value> of(Signal signal) {
            return heard.of(signal);
        }

        private boolean brakingAt(double time) {
            boolean braking = false;
            for (Heard.Value value : of(Signal.BRAKE_SWITCH)) {
                if (value.seconds() <= time) {
                    braking = value.value() == 1;
                }
            }
            return braking;
        }

        private double recordedFall(Signal circuit) {
            List<Heard.Value> values = of(circuit);
            return values.get(0).value() - values.get(values.size() - 1).value();
        }

        private double modelledFall(int column) {
            return model.get(0)[column] - model.get(model.size() - 1)[column];
        }
    }

    private static List<Panel> panels() throws IOException {
        return List.of(
                new Panel("normal.log", "driving, no braking (normal.log)"),
                new Panel("tsc1.log", "driving, braking from 17 to 26.5 s (tsc1.log)"),
                new Panel("dos_1ms.log", "standing (dos_1ms.log)"));
    }

    @Source(
            work = "Recordings of a research truck, examples/recordings",
            edition = "commit 9e72a74 of the origin named in SOURCE.md",
            where = "circuits 1 and 2 of all three logs",
            kind = Kind.MEASUREMENT,
            accessed = "2026-11-25",
            note =
                    "shape, not fit: size of the truck, leak and pedal are assumptions; the model falls"
                            + " no further than the recording and three of its steps, and more when"
                            + " braking")
    @Test
    void a_simulated_tractor_loses_air_when_the_recorded_truck_does() throws IOException {
        List<Panel> panels = panels();
        for (Panel panel : panels) {
            assertThat(panel.modelledFall(1))
                    .as(panel.title)
                    .isBetween(0.0, panel.recordedFall(Signal.CIRCUIT_1) + 3 * RESOLUTION);
            assertThat(panel.modelledFall(2))
                    .as(panel.title)
                    .isBetween(0.0, panel.recordedFall(Signal.CIRCUIT_2) + 3 * RESOLUTION);
        }
        Panel braking = panels.get(1);
        assertThat(braking.modelledFall(1)).isGreaterThan(5 * panels.get(0).modelledFall(1));
        assertThat(braking.recordedFall(Signal.CIRCUIT_1))
                .isGreaterThan(panels.get(0).recordedFall(Signal.CIRCUIT_1));

        Generated.check(PICTURE, svg(panels));
    }

    private static final int WIDTH = 640;
    private static final int PANEL = 170;
    private static final double LEFT = 60;
    private static final double RIGHT = 600;
    private static final double GRAPH = 110;
    private static final double SPAN = 60;

    private static String svg(List<Panel> panels) {
        StringBuilder svg = new StringBuilder();
        int height = 40 + PANEL * panels.size();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .append(WIDTH + " " + height + "\" font-family=\"sans-serif\" font-size=\"13\">\n")
                .append("<title>Recorded and simulated circuit pressures</title>\n")
                .append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        text(svg, LEFT, 20, "#0b4f8a", "thick steps: recorded (8 kPa at 1 Hz)");
        text(svg, LEFT + 260, 20, "#0b4f8a", "thin lines: simulated tractor; dashed: circuit 2");
        double top = 40;
        for (Panel panel : panels) {
            draw(svg, panel, top + 20);
            top += PANEL;
        }
        return svg.append("</svg>\n").toString();
    }

    private static void draw(StringBuilder svg, Panel panel, double top) {
        double high = panel.of(Signal.CIRCUIT_1).get(0).value() + 10;
        text(svg, LEFT, top - 4, "#202020", panel.title);
        for (int i = 0; i <= 3; i++) {
            double y = top + GRAPH * i / 3;
            line(svg, "M" + at(LEFT) + " " + at(y) + "H" + at(RIGHT), "#c8c8c8", 1, false);
            text(svg, 8, y + 4, "#505050", at(high - SPAN * i / 3) + " kPa");
        }
        for (int seconds = 0; seconds <= END; seconds += 5) {
            text(svg, x(seconds) - 6, top + GRAPH + 16, "#505050", seconds + " s");
        }
        Signal[] circuits = {Signal.CIRCUIT_1, Signal.CIRCUIT_2};
        for (int i = 0; i < circuits.length; i++) {
            StringBuilder steps = new StringBuilder();
            for (Heard.Value value : panel.of(circuits[i])) {
                double y = y(value.value(), high, top);
                steps.append(steps.isEmpty() ? "M" + at(x(value.seconds())) + " " + at(y) : "")
                        .append("H" + at(x(value.seconds())) + "V" + at(y));
            }
            String ink = i == 0 ? "#0b4f8a" : "#b3541e";
            line(svg, steps.toString(), ink, 4, i == 1);
            StringBuilder path = new StringBuilder();
            for (double[] row : panel.model) {
                path.append(path.isEmpty() ? 'M' : 'L').append(at(x(row[0])));
                path.append(' ').append(at(y(row[1 + i], high, top)));
            }
            line(svg, path.toString(), ink, 1.5, i == 1);
        }
    }

    private static double x(double seconds) {
        return LEFT + (RIGHT - LEFT) * seconds / END;
    }

    private static double y(double kilopascals, double high, double top) {
        return top + GRAPH * (high - kilopascals) / SPAN;
    }

    private static String at(double number) {
        return String.format(Locale.ROOT, "%.0f", number);
    }

    private static void text(StringBuilder svg, double x, double y, String ink, String words) {
        svg.append("<text x=\"" + at(x) + "\" y=\"" + at(y) + "\" fill=\"" + ink + "\">")
                .append(words)
                .append("</text>\n");
    }

    private static void line(
            StringBuilder svg, String path, String ink, double width, boolean dashed) {
        svg.append("<path fill=\"none\" stroke=\"" + ink + "\" stroke-width=\"" + width + "\"")
                .append(dashed ? " stroke-dasharray=\"6 4\"" : "")
                .append(" d=\"" + path + "\"/>\n");
    }
}
