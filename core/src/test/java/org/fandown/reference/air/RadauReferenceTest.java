package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.StepControl;
import org.fandown.air.TractorTrailer;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.TimeSpan;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A tractor and semitrailer against a general solver of stiff differential equations: an
 * application held with a leak, the release, a fan down by full applications, and a rebuild.
 */
class RadauReferenceTest {
    private static final String DATA = "radau/tractor-trailer.csv";
    private static final String WORK = "SciPy solve_ivp, method Radau, relative tolerance 1e-8";
    private static final String EDITION = "script and versions in SOURCE.md beside the data";
    private static final String READ = "2026-11-25";

    /** The error allowed in a reservoir at any time, psi. */
    private static final double RESERVOIR = 0.1;

    /** The same for a chamber at rest: what the solver of the data itself is sure of, 20 times. */
    private static final double CHAMBER_AT_REST = 0.01;

    /**
     * The same while it fills or empties, psi. A chamber rises by some 600 psi/s, and the signal of
     * a relay valve comes a step late: two steps of half a millisecond are 0.6 psi.
     */
    private static final double CHAMBER_MOVING = 0.6;

    /** Air in the primary reservoir, K: about what a tenth of a psi comes with. */
    private static final double WARMTH = 0.1;

    private static final double STEP = 0.0005;

    private static final String[] RESERVOIRS = {"supply", "primary", "secondary", "trailer"};
    private static final String[] CHAMBERS = {
        "front chamber 0", "rear chamber 0", "behind chamber 0", "spring 0"
    };

    /** One row: the expected values, and what the engine has. */
    private static final class Row {
        private final double time;
        private final double[] expected;
        private final double[] found;

        private Row(double time, double[] expected, double[] found) {
            this.time = time;
            this.expected = expected;
            this.found = found;
        }
    }

    private static List<Row> rows = List.of();

    @BeforeAll
    static void run() throws IOException {
        TractorTrailer vehicle = new TractorTrailer();
        AirState state = vehicle.charged();
        AirStepper stepper = new AirStepper(vehicle.network);
        StepControl steps = StepControl.fixed(TimeSpan.ofSeconds(STEP));
        List<Row> run = new ArrayList<>();
        double now = 0;
        for (double[] line : data()) {
            for (double act : acts(now, line[0])) {
                double pedal = pedal(now);
                state.setInflow(vehicle.compressor, now >= 90 ? 0.006 : 0);
                vehicle.work(state, pedal);
                stepper.advance(state, act, steps, (s, seconds) -> vehicle.work(s, pedal));
                now = act;
            }
            run.add(new Row(now, line, found(vehicle, state)));
        }
        rows = run;
    }

    /** Returns the moments up to a time at which the pedal may move, and the time itself. */
    private static List<Double> acts(double from, double to) {
        List<Double> moments = new ArrayList<>();
        for (int half = (int) Math.floor(from * 2) + 1; half / 2.0 < to; half++) {
            moments.add(half / 2.0);
        }
        moments.add(to);
        return moments;
    }

    /** What is done from a moment on, psi; as in the script. */
    private static double pedal(double time) {
        if (time >= 0.5 && time < 30.5) {
            return 80;
        }
        if (time < 34 || time >= 90) {
            return 0;
        }
        return (int) Math.floor((time - 34) / 2) % 2 == 0 ? 150 : 0;
    }

    private static double[] found(TractorTrailer vehicle, AirState state) {
        double[] found = new double[1 + RESERVOIRS.length + CHAMBERS.length + 1];
        int next = 1;
        for (String[] names : new String[][] {RESERVOIRS, CHAMBERS}) {
            for (String name : names) {
                AirNode node = vehicle.network.node(name).orElseThrow();
                found[next++] = state.gauge(node).inPsi();
            }
        }
        found[next] = state.temperature(vehicle.primary).kelvins();
        return found;
    }

    private static List<double[]> data() throws IOException {
        List<double[]> lines = new ArrayList<>();
        try (InputStream in = RadauReferenceTest.class.getResourceAsStream(DATA)) {
            String text =
                    new String(
                            Objects.requireNonNull(in).readAllBytes(), StandardCharsets.US_ASCII);
            for (String line : text.split("\n", -1)) {
                if (!line.isEmpty() && !line.startsWith("time")) {
                    String[] cells = line.split(",", -1);
                    double[] values = new double[cells.length];
                    for (int i = 0; i < cells.length; i++) {
                        values[i] = Double.parseDouble(cells[i]);
                    }
                    lines.add(values);
                }
            }
        }
        return lines;
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "columns supply, primary, secondary, trailer: all times",
            kind = Kind.OTHER_PROGRAM,
            accessed = READ)
    @Test
    void reservoirs_agree_over_application_fan_down_and_rebuild() {
        assertThat(rows).hasSizeGreaterThan(250);
        for (Row row : rows) {
            for (int i = 1; i <= RESERVOIRS.length; i++) {
                assertThat(row.found[i])
                        .as("%s at %s s", RESERVOIRS[i - 1], row.time)
                        .isCloseTo(row.expected[i], within(RESERVOIR));
            }
        }
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "columns front, rear, behind, spring: all times",
            kind = Kind.OTHER_PROGRAM,
            accessed = READ)
    @Test
    void chambers_agree_while_they_fill_and_empty_and_at_rest() {
        for (Row row : rows) {
            for (int i = 0; i < CHAMBERS.length; i++) {
                int column = 1 + RESERVOIRS.length + i;
                double allowed = moving(row.time) ? CHAMBER_MOVING : CHAMBER_AT_REST;
                assertThat(row.found[column])
                        .as("%s at %s s", CHAMBERS[i], row.time)
                        .isCloseTo(row.expected[column], within(allowed));
            }
        }
    }

    /** Whether the pedal moved within the last second and a half. */
    private static boolean moving(double time) {
        for (double before = 0; before <= 1.5; before += 0.25) {
            if (pedal(time - before - 1e-9) != pedal(time - 1e-9)) {
                return true;
            }
        }
        return false;
    }

    @Source(
            work = WORK,
            edition = EDITION,
            where = "column primary K: all times",
            kind = Kind.OTHER_PROGRAM,
            accessed = READ)
    @Test
    void the_air_of_a_reservoir_cools_and_warms_alike() {
        double coldest = 400;
        for (Row row : rows) {
            int column = row.expected.length - 1;
            coldest = Math.min(coldest, row.expected[column]);
            assertThat(row.found[column])
                    .as("primary at %s s", row.time)
                    .isCloseTo(row.expected[column], within(WARMTH));
        }
        assertThat(coldest).isLessThan(285);
    }
}
