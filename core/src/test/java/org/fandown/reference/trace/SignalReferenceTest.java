package org.fandown.reference.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.trace.Absence;
import org.fandown.trace.CanFrame;
import org.fandown.trace.CandumpReader;
import org.fandown.trace.FrameListener;
import org.fandown.trace.Heard;
import org.fandown.trace.Signal;
import org.fandown.units.GaugePressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SignalReferenceTest {
    private static final String READ = "2026-11-25";
    private static final String FRAMES = "Messages recorded on real trucks, decoded by hand";
    private static final String RECORDINGS = "Recordings of a research truck, examples/recordings";
    private static final String COMMIT = "commit 9e72a74 of the origin named in SOURCE.md";

    /** Resolutions are exact in binary, or a value divided once. */
    private static final double EXACT = 1e-12;

    /** The expected value is printed to hundredths. */
    private static final double PRINTED_TO_HUNDREDTHS = 0.005;

    @Source(
            work = "SAE J1939 identifiers, worked by hand",
            edition = "as open decoders read them",
            where = "priority, group, destination and source, row by row",
            kind = Kind.OTHER_PROGRAM,
            accessed = READ)
    @ParameterizedTest(name = "{5}")
    @CsvSource({
        "18FEAE31, 6, 65198, 255, 49, AIR1 of a cab controller",
        "0CF00400, 3, 61444, 255, 0, EEC1 of the engine",
        "18EA31F9, 6, 59904, 49, 249, request of a service tool"
    })
    void identifiers(
            String id, int priority, int group, int destination, int source, String where) {
        List<Integer> found = new ArrayList<>();
        FrameListener listener =
                (CanFrame frame) -> {
                    found.add(frame.priority());
                    found.add(frame.group());
                    found.add(frame.destination());
                    found.add(frame.source());
                };
        byte[] line =
                ("(0.0) can0 " + id + "#").getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        CandumpReader reader = new CandumpReader(listener);
        reader.accept(line, 0, line.length);
        reader.finish();

        assertThat(found).containsExactly(priority, group, destination, source);
    }

    @Source(
            work = FRAMES,
            edition = "public recordings",
            where = "row by row; two lines are as recorded",
            kind = Kind.MEASUREMENT,
            accessed = READ)
    @ParameterizedTest(name = "{4}")
    @CsvSource({
        "(1543532003.573924) can1 18FEAE31#FFFF6E6EFFFFFFFF, CIRCUIT_1, 880, 1543532003.573924, circuit 1",
        "(1543532003.573924) can1 18FEAE31#FFFF6E6EFFFFFFFF, CIRCUIT_2, 880, 1543532003.573924, circuit 2",
        "' (037.605481)  can1  18FEAE31   [8]  FF FF 0F 01 FF FF FF FF', CIRCUIT_1, 120, 37.605481, low circuit 1",
        "' (037.605481)  can1  18FEAE31   [8]  FF FF 0F 01 FF FF FF FF', CIRCUIT_2, 8, 37.605481, low circuit 2",
        "(0.0) can0 18FEFA31#FF7B02FFFFFFFFFF, PRIMARY, 492, 0, PGN 65274 byte 2",
        "(0.0) can0 18FEFA31#FF7B02FFFFFFFFFF, SECONDARY, 8, 0, PGN 65274 byte 3",
        "(0.0) can0 18FEAE31#FFFF3E01FFFFFFFF, CIRCUIT_1, 496, 0, PGN 65198 byte 3 of the same moment",
        "(0.0) can0 0CF00400#11A1A19C3E000FA1, ENGINE_SPEED, 2003.5, 0, EEC1 bytes 4 and 5",
        "(0.0) can0 18FEF500#AAFFFF4E25FFFFFF, BAROMETER, 85.0, 0, AMB byte 1",
        "(0.0) can0 18FEF500#AAFFFF4E25FFFFFF, AIR_TEMPERATURE, 25.4375, 0, AMB bytes 4 and 5",
        "(0.0) can0 18FEF131#F7FFFFC3CCFFFFF0, PARKING_SWITCH, 1, 0, CCVS1 byte 1 bits 3 and 4",
        "(0.0) can0 18FEF131#F7FFFFC3CCFFFFF0, BRAKE_SWITCH, 0, 0, CCVS1 byte 4 bits 5 and 6"
    })
    void messages_have_the_values_that_were_worked_out(
            String line, Signal signal, double value, double seconds, String where) {
        Heard heard = Heard.of(line);

        assertThat(heard.of(signal)).hasSize(1);
        assertThat(heard.of(signal).get(0).value()).isCloseTo(value, within(EXACT));
        assertThat(heard.of(signal).get(0).seconds()).isEqualTo(seconds);
    }

    @Source(
            work = FRAMES,
            edition = "public recordings",
            where = "row by row",
            kind = Kind.MEASUREMENT,
            accessed = READ)
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "18FEAE31#FFFF6E6EFFFFFFFF, SUPPLY, NOT_AVAILABLE, supply is not sent",
        "18FEAE31#FFFF6E6EFFFFFFFF, PARKING, NOT_AVAILABLE, parking circuit is not sent",
        "18FEAE30#FFFFFEFEFFFFFFFF, CIRCUIT_1, ERROR, 'error, not 2032 kPa'",
        "18FEAE30#FFFFFEFEFFFFFFFF, CIRCUIT_2, ERROR, 'error, not 2032 kPa'",
        "18FEF131#F7FFFFC3CCFFFFF0, SPEED, NOT_AVAILABLE, 'not 255.996 km/h'",
        "18F00131#FFFFFF3F00FFFFFF, PEDAL, NOT_AVAILABLE, 'not 102 percent'",
        "0CF00400#11A1A1FFFF000FA1, ENGINE_SPEED, NOT_AVAILABLE, 'not 8191.875 rpm'",
        "18FEF100#FF000000FF6800CF, PARKING_SWITCH, NOT_AVAILABLE, switch of another sender"
    })
    void codes_that_are_no_values_never_become_values(
            String message, Signal signal, Absence why, String where) {
        Heard heard = Heard.of("(0.0) can0 " + message);

        assertThat(heard.of(signal)).isEmpty();
        assertThat(heard.missing)
                .filteredOn(missing -> missing.signal() == signal)
                .extracting(Heard.Missing::why)
                .containsExactly(why);
    }

    @Source(
            work = FRAMES,
            edition = "public recordings",
            where = "880 kPa is 127.63 psi; raw 51 and 52 on each side of 60 psi",
            kind = Kind.CLOSED_FORM,
            accessed = READ)
    @Test
    void kilopascals_become_psi_by_the_exact_factor() {
        assertThat(GaugePressure.ofKilopascals(880).inPsi())
                .isCloseTo(127.63, within(PRINTED_TO_HUNDREDTHS));
        Heard heard = Heard.of("(0.0) can0 18FEAE31#FFFF3334FFFFFFFF");

        assertThat(heard.of(Signal.CIRCUIT_1).get(0).value()).isEqualTo(408);
        assertThat(GaugePressure.ofKilopascals(408).inPsi()).isLessThan(60);
        assertThat(heard.of(Signal.CIRCUIT_2).get(0).value()).isEqualTo(416);
        assertThat(GaugePressure.ofKilopascals(416).inPsi()).isGreaterThan(60);
    }

    @Source(
            work = RECORDINGS,
            edition = COMMIT,
            where = "SOURCE.md, and first and last lines decoded by hand, row by row",
            kind = Kind.MEASUREMENT,
            accessed = READ)
    @ParameterizedTest(name = "{0}: {9}")
    @CsvSource({
        "normal, 2489, CIRCUIT_1, 30, 0.793159, 808, 29.791921, 800, 800, falls by one step",
        "normal, 2489, CIRCUIT_2, 30, 0.793159, 808, 29.791921, 808, 808, holds",
        "normal, 2489, PRIMARY, 30, 0.800115, 804, 29.796587, 804, 804, 4 kPa below circuit 1",
        "normal, 2489, SPEED, 300, 0.011063, 23.203125, 29.915046, 54.390625, 23.203125, 23 to 55 km/h",
        "normal, 2489, ENGINE_SPEED, 1499, 0.017118, 1531.625, 29.981469, 1526.375, 1147.25, 1147 to 1786 rpm",
        "normal, 2489, BRAKE_SWITCH, 300, 0.087448, 0, 29.987, 0, 0, no braking",
        "tsc1, 2490, CIRCUIT_1, 30, 0.922365, 768, 29.921033, 744, 744, braking",
        "tsc1, 2490, CIRCUIT_2, 30, 0.922365, 768, 29.921033, 752, 752, braking",
        "tsc1, 2490, ENGINE_SPEED, 1500, 0.012688, 1416.625, 29.995234, 1033.25, 710.875, slows down",
        "dos_1ms, 660, CIRCUIT_1, 30, 0.19956, 848, 29.198835, 840, 840, falls by one step",
        "dos_1ms, 660, CIRCUIT_2, 30, 0.19956, 848, 29.198835, 848, 848, holds",
        "dos_1ms, 660, SPEED, 300, 0.00341, 0, 29.907082, 0, 0, stands"
    })
    void recordings_of_real_trucks(
            String file,
            int lines,
            Signal signal,
            int count,
            double firstAt,
            double first,
            double lastAt,
            double last,
            double least,
            String where)
            throws IOException {
        Heard heard = Heard.of(Path.of("..", "examples", "recordings", file + ".log"));
        List<Heard.Value> values = heard.of(signal);

        assertThat(heard.frames).hasSize(lines);
        assertThat(heard.others).isEmpty();
        assertThat(values).hasSize(count);
        assertThat(values.get(0).seconds()).isEqualTo(firstAt);
        assertThat(values.get(0).value()).isEqualTo(first);
        assertThat(values.get(count - 1).seconds()).isCloseTo(lastAt, within(0.1));
        assertThat(values.get(count - 1).value()).isEqualTo(last);
        assertThat(values.stream().mapToDouble(Heard.Value::value).min()).hasValue(least);
    }

    @Source(
            work = RECORDINGS,
            edition = COMMIT,
            where = "SOURCE.md: braking between 18 and 26 s; lines decoded by hand",
            kind = Kind.MEASUREMENT,
            accessed = READ)
    @Test
    void the_brake_switch_tells_when_the_truck_braked() throws IOException {
        Heard heard = Heard.of(Path.of("..", "examples", "recordings", "tsc1.log"));
        List<Double> braked =
                heard.of(Signal.BRAKE_SWITCH).stream()
                        .filter(value -> value.value() == 1)
                        .map(Heard.Value::seconds)
                        .toList();

        assertThat(braked).hasSize(95);
        assertThat(braked.get(0)).isEqualTo(17.017725);
        assertThat(braked.get(94)).isBetween(26.3, 26.517557);
    }
}
