package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkTraceTest {
    private final List<String> samples = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private double last = -1;

    private NetworkTrace read(String log) {
        return read(log.getBytes(StandardCharsets.US_ASCII));
    }

    private NetworkTrace read(byte[] log) {
        NetworkTrace trace = new NetworkTrace(this::sample, remarks::add);
        CandumpReader reader = new CandumpReader(new SignalDecoder(trace));
        reader.accept(log, 0, log.length);
        reader.finish();
        return trace;
    }

    private void sample(Channel channel, double seconds, double value) {
        assertThat(seconds).isGreaterThanOrEqualTo(last);
        last = seconds;
        samples.add(channel + " " + Math.round(seconds * 10) / 10.0 + " " + Math.round(value));
    }

    @Test
    void time_begins_with_the_first_message_and_circuits_are_in_psi() {
        NetworkTrace trace =
                read(
                        """
                (100.0) can0 18FEAE31#FFFF6E6EFFFFFFFF
                (101.0) can0 18FEAE31#FFFF6E6DFFFFFFFF
                """);

        assertThat(samples)
                .containsExactly(
                        "PRIMARY 0.0 128",
                        "SECONDARY 0.0 128",
                        "PRIMARY 1.0 128",
                        "SECONDARY 1.0 126");
        assertThat(trace.hasPressure()).isTrue();
        assertThat(trace.seconds()).isEqualTo(1);
        assertThat(remarks).isEmpty();
    }

    @Test
    void a_clock_that_goes_back_is_bridged_and_remarked() {
        read(
                """
                (100.0) can0 18FEAE31#FFFF6E6EFFFFFFFF
                (50.0) can0 18FEAE31#FFFF6E6EFFFFFFFF
                (51.0) can0 18FEAE31#FFFF6E6EFFFFFFFF
                """);

        assertThat(samples).contains("PRIMARY 10.0 128", "PRIMARY 11.0 128");
        assertThat(remarks).extracting(Remark::kind).containsExactly(Remark.Kind.CLOCK_WENT_BACK);
        assertThat(remarks.get(0).sentence())
                .isEqualTo("Line 2: the clock goes back by 50 s (at 0 s of the trace).");
    }

    @Test
    void a_gap_an_error_and_saturation_are_remarked() {
        read(
                """
                (0.0) can0 18FEFA31#FFFA02FFFFFFFFFF
                (9.0) can0 18FEFA31#FF7B02FFFFFFFFFF
                (9.1) can0 18FEAE30#FFFFFEFEFFFFFFFF
                """);

        assertThat(remarks)
                .extracting(Remark::kind)
                .containsExactly(Remark.Kind.SATURATED, Remark.Kind.GAP, Remark.Kind.SENSOR_ERROR);
        assertThat(samples).doesNotContain("PRIMARY 9.1 295");
    }

    @Test
    void circuits_named_the_other_way_round_are_noticed() {
        read(
                """
                (0.0) can0 18FEFA31#FF7B32FFFFFFFFFF
                (0.1) can0 18FEAE31#FFFF193DFFFFFFFF
                (1.1) can0 18FEAE31#FFFF193DFFFFFFFF
                """);

        assertThat(remarks).extracting(Remark::kind).containsExactly(Remark.Kind.CIRCUITS_SWAPPED);
    }

    @Test
    void circuit_that_two_messages_tell_differently_is_noticed_when_it_lasts() {
        String fine = ") can0 18FEFA31#FF7D7DFFFFFFFFFF\n";
        String coarse = ") can0 18FEAE31#FFFF3E37FFFFFFFF\n";
        StringBuilder log = new StringBuilder();
        for (int second = 0; second < 7; second++) {
            log.append('(').append(second).append(".0").append(fine);
            log.append('(').append(second).append(".5").append(coarse);
        }
        read(log.toString());

        // 125 x 4 kPa against 55 x 8 kPa: 60 kPa, 8.7 psi.
        assertThat(remarks)
                .extracting(Remark::sentence)
                .containsExactly(
                        "Line 12: two messages or columns differ by 8.7 psi on one circuit (at 5.5 s"
                                + " of the trace).");
    }

    @Test
    void message_that_is_only_late_is_no_disagreement() {
        read(
                """
                (0.0) can0 18FEFA31#FF7D7DFFFFFFFFFF
                (0.5) can0 18FEAE31#FFFF3E3EFFFFFFFF
                (1.0) can0 18FEFA31#FF6E6EFFFFFFFFFF
                (1.5) can0 18FEAE31#FFFF3E3EFFFFFFFF
                (2.5) can0 18FEAE31#FFFF3737FFFFFFFF
                """);

        assertThat(remarks).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"normal", "tsc1", "dos_1ms"})
    void half_a_minute_of_driving_holds_no_test(String name) throws IOException {
        List<Recognised> found = new ArrayList<>();
        TraceWatch watch = new TraceWatch(found::add);
        NetworkTrace trace = new NetworkTrace(watch::sample, remarks::add);
        CandumpReader reader = new CandumpReader(new SignalDecoder(trace));
        Path file = Path.of("..", "examples", "recordings", name + ".log");
        byte[] log = Files.readAllBytes(file);
        reader.accept(log, 0, log.length);
        reader.finish();
        watch.finish();

        assertThat(trace.hasPressure()).isTrue();
        assertThat(trace.seconds()).isBetween(28.0, 31.0);
        assertThat(found).isEmpty();
    }
}
