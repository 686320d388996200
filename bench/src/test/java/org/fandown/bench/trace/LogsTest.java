package org.fandown.bench.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fandown.trace.CandumpReader;
import org.fandown.trace.Channel;
import org.fandown.trace.Recognised;
import org.fandown.trace.TraceLog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogsTest {
    private static final int LINES = 10_000;

    private static TraceLog read(byte[] bytes) {
        TraceLog log = new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (c, s, v) -> {});
        log.accept(bytes, 0, bytes.length);
        log.finish();
        return log;
    }

    @ParameterizedTest
    @ValueSource(strings = {"captures", "busy", "table"})
    void each_log_is_sound_and_as_long_as_it_says(String name) {
        TraceLog log = read(Logs.of(name, LINES));

        assertThat(log.lines()).isEqualTo(LINES);
        assertThat(log.notes()).isEmpty();
        assertThat(log.channels()).containsKeys(Channel.PRIMARY, Channel.SECONDARY);
        assertThat(log.isTable()).isEqualTo(name.equals("table"));
    }

    @Test
    void captures_go_on_in_time() {
        // 2490 lines of each of two, and 620 of the third, take 93 s.
        TraceLog log = read(Logs.of("captures", 5600));

        assertThat(log.seconds()).isBetween(62.0, 93.0);
    }

    @Test
    void busy_network_is_busy_and_the_same_each_time() {
        byte[] first = new BusyBus(new ColdStart()).second();
        byte[] again = new BusyBus(new ColdStart()).second();

        assertThat(again).isEqualTo(first);
        assertThat(new String(first, StandardCharsets.US_ASCII).lines().count())
                .isBetween(800L, 1100L);
    }

    @Test
    void tests_of_the_example_are_done_on_the_busy_network() {
        BusyBus bus = new BusyBus(new ColdStart());
        TraceLog log = new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (c, s, v) -> {});
        for (int second = 0; second < new ColdStart().seconds() + 20; second++) {
            byte[] bytes = bus.second();
            log.accept(bytes, 0, bytes.length);
        }
        log.finish();

        assertThat(log.lines()).isEqualTo(bus.lines());
        List<Recognised.Kind> kinds = log.recognised().stream().map(Recognised::kind).toList();
        assertThat(kinds)
                .contains(
                        Recognised.Kind.BUILD_UP,
                        Recognised.Kind.CUT_OUT,
                        Recognised.Kind.CUT_IN,
                        Recognised.Kind.LOSS_RELEASED,
                        Recognised.Kind.LOSS_APPLIED,
                        Recognised.Kind.PARKING_CLOSED,
                        Recognised.Kind.APPLICATIONS);
    }
}
