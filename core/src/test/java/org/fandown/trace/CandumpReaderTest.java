package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.trace.CandumpReader.Times;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CandumpReaderTest {
    /** The two looks at the counter allocate some bytes; a byte for each line would be 100 000. */
    private static final long MEASURING_ITSELF = 20_000;

    private static final String FRAME = "1 500000000 18FEAE31 FF FF 6E 6E";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "(0.5) can0 18FEAE31#FFFF6E6E",
                "(0.5) can0 18FEAE31#ffff6e6e",
                "(0.5) can0 18FEAE31#FF.FF.6E.6E",
                "(0.5) can0 18FEAE31#FFFF6E6E R",
                "(000.500000)  can0  18FEAE31   [4]  FF FF 6E 6E",
                " (0000000000.500000000)\tcan0\t18FEAE31\t[4]\tFF\tFF\t6E\t6E\t",
                " (000.5)  can0  RX - -  18FEAE31   [4]  FF FF 6E 6E",
                " (000.5)  vcan12  TX B -  18FEAE31   [4]  FF FF 6E 6E",
                " (000.5)  can0  18FEAE31   [4]  FF FF 6E 6E   '..nn'",
                "(0.5) can0 18FEAE31#FFFF6E6E\r"
            })
    void both_forms_and_their_varieties_are_read(String line) {
        Heard heard = Heard.of(line);

        assertThat(heard.others).isEmpty();
        assertThat(heard.frames).containsExactly(FRAME);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "(x) can0 123#00, BAD_TIME",
        "(1) can0 123#00, BAD_TIME",
        "(1.) can0 123#00, BAD_TIME",
        "(1.1234567890) can0 123#00, BAD_TIME",
        "(99999999999.0) can0 123#00, BAD_TIME",
        "(2026-13-01 00:00:00.0) can0 123#00, BAD_TIME",
        "(0.1 can0 123#00, BAD_TIME",
        "(0.1) can0 12#00, BAD_IDENTIFIER",
        "(0.1) can0 123456789#00, BAD_IDENTIFIER",
        "(0.1) can0 FFFFFFFF#00, BAD_IDENTIFIER",
        "(0.1) can0 123#0, BAD_DATA",
        "(0.1) can0 123#001122334455667788, BAD_DATA",
        "(0.1) can0 123#00 what, BAD_DATA",
        "(0.1) can0 123 [2] 00, BAD_DATA",
        "(0.1) can0 123 [9] 00, BAD_DATA",
        "(0.1) can0 123 [1] 00 11, BAD_DATA",
        "(0.1) can0 123 [2] 0011, BAD_DATA",
        "(0.1) can0, NOT_CANDUMP",
        "(0.1), NOT_CANDUMP",
        "hello world, NOT_CANDUMP",
        "'time s,primary psi', NOT_CANDUMP",
        "(0.1) can0 123#R, REMOTE_FRAME",
        "(0.1) can0 123#R8, REMOTE_FRAME",
        "(0.1) can0 123 [8] remote request, REMOTE_FRAME",
        "(0.1) can0 20000004#0000000000000000, ERROR_FRAME",
        "(0.1) can0 123##011, FD_FRAME",
        "(0.1) can0 123 [12] 00 11 22 33 44 55 66 77 88 99 AA BB, FD_FRAME",
        "(0.1) can0 45123#81:00:12345678#11223344, XL_FRAME"
    })
    void what_is_no_message_is_named(String line, LineKind kind) {
        Heard heard = Heard.of(line);

        assertThat(heard.frames).isEmpty();
        assertThat(heard.others).containsExactly("1 " + kind);
    }

    @Test
    void a_problem_says_its_line_what_is_allowed_and_with_what() {
        assertThat(LineKind.BAD_IDENTIFIER.at(12))
                .isEqualTo(
                        "Line 12: the identifier cannot be read; allowed: 3 or 8 hexadecimal"
                                + " digits.");
        for (LineKind kind : LineKind.values()) {
            assertThat(kind.text().contains("allowed: ")).isEqualTo(kind.isProblem());
        }
    }

    @Test
    void lines_are_counted_through_blank_and_damaged_ones() {
        Heard heard = Heard.of("\n\nnothing\n(0.5) can0 7#\n\r\n(0.5) can0 18FEAE31#FFFF6E6E\n");

        assertThat(heard.others).containsExactly("3 NOT_CANDUMP", "4 BAD_IDENTIFIER");
        assertThat(heard.frames).containsExactly("6 500000000 18FEAE31 FF FF 6E 6E");
    }

    @Test
    void lost_messages_are_reported() {
        Heard heard =
                Heard.of(
                        """
                        DROPCOUNT: dropped 17 CAN frames on 'can0' socket (total drops 20)
                        DROPCOUNT: dropped
                        """);

        assertThat(heard.others).containsExactly("1 dropped 17", "2 NOT_CANDUMP");
    }

    @Test
    void a_date_counts_from_1970() {
        Heard heard =
                Heard.of(
                        "(2026-11-25 16:13:47.250000) can0 123#00\n(1970-01-01 00:00:01.0) c 123#");

        assertThat(heard.frames)
                .containsExactly("1 1795623227250000000 123 00", "2 1000000000 123");
    }

    @Test
    void a_line_without_a_time_is_a_message_without_one() {
        assertThat(Heard.of("can0  123   [1]  00").frames).containsExactly("1 untimed 123 00");
    }

    @Test
    void times_since_the_line_before_add_up_over_what_is_left_out() {
        String log = "(000.25) c 123#\n(000.25) c 123#R\n(000.25) c 123#\n";

        assertThat(Heard.of(log, Times.SINCE_LAST).frames)
                .containsExactly("1 250000000 123", "3 750000000 123");
    }

    @Test
    void a_time_of_a_clock_is_none_since_the_line_before() {
        Heard heard =
                Heard.of(
                        "(1795623227.25) c 123#00\n(0.5) c 123#\n(86400.1) c 123#\n(86400.0) c 123#\n",
                        Times.SINCE_LAST);

        assertThat(heard.others).containsExactly("1 NOT_SINCE_LAST", "3 NOT_SINCE_LAST");
        assertThat(heard.frames).containsExactly("2 500000000 123", "4 86400500000000 123");
    }

    @Test
    void a_line_longer_than_any_message_is_left_out_and_the_next_one_read() {
        String log = "(0.5) " + "x".repeat(9000) + " 123#00\n(0.5) can0 18FEAE31#FFFF6E6E\n";
        byte[] bytes = log.getBytes(StandardCharsets.US_ASCII);

        for (int size : new int[] {bytes.length, 100, 8000}) {
            Heard heard = Heard.inPieces(bytes, size, Times.AS_WRITTEN);
            assertThat(heard.others).containsExactly("1 TOO_LONG");
            assertThat(heard.frames).hasSize(1);
        }
    }

    @Test
    void reserved_codes_and_short_messages_give_no_value() {
        Heard heard =
                Heard.of(
                        "(0.1) c 18FEAE31#FBFCFDFE\n(0.1) c 0CF00400#1122331122\n(0.1) c 0CF00400#11223344FB");

        assertThat(heard.missing)
                .extracting(Heard.Missing::why)
                .containsExactly(
                        Absence.RESERVED,
                        Absence.RESERVED,
                        Absence.RESERVED,
                        Absence.ERROR,
                        Absence.RESERVED);
        assertThat(heard.of(Signal.ENGINE_SPEED)).hasSize(1);
        assertThat(Heard.of("(0.1) c 0CF00400#11223344").missing)
                .containsExactly(new Heard.Missing(Signal.ENGINE_SPEED, 0, Absence.TOO_SHORT));
    }

    @Test
    void short_identifiers_are_not_of_this_standard() {
        Heard heard = Heard.of("(0.1) can0 7E8#FFFF6E6E");

        assertThat(heard.frames).hasSize(1);
        assertThat(heard.values).isEmpty();
    }

    @Test
    void each_signal_stands_in_the_message_of_its_group() {
        List<Integer> seen = new ArrayList<>();
        for (Signal signal : Signal.values()) {
            int page = signal.group() >> 8;
            String id = String.format("%X%02X00", 0x1800 + page, signal.group() & 0xFF);
            Heard heard = Heard.of("(0.1) c " + id + "#0000000000000000");
            assertThat(heard.values).extracting(Heard.Value::signal).contains(signal);
            seen.add(signal.number());
        }
        assertThat(seen)
                .containsExactlyInAnyOrder(
                        46, 1086, 1087, 1088, 116, 117, 118, 190, 84, 70, 597, 521, 108, 171);
    }

    @Test
    void reading_and_decoding_allocate_nothing_for_each_line() throws IOException {
        byte[] log = Files.readAllBytes(Path.of("..", "examples", "recordings", "tsc1.log"));
        double[] sum = new double[1];
        SignalListener listener = (signal, frame, value) -> sum[0] += value;
        CandumpReader reader = new CandumpReader(new SignalDecoder(listener));
        reader.accept(log, 0, log.length);
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        for (int i = 0; i < 40; i++) {
            reader.accept(log, 0, log.length);
        }
        long after = threads.getThreadAllocatedBytes(Thread.currentThread().getId());

        assertThat(reader.lines()).isEqualTo(41 * 2490);
        assertThat(sum[0]).isPositive();
        assertThat(after - before).isLessThan(MEASURING_ITSELF);
    }

    @Test
    void a_byte_that_a_message_has_not_is_refused() {
        CanFrame frame = new CanFrame();
        frame.length = 2;

        assertThatThrownBy(() -> frame.dataByte(3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("There is no byte 3; the message has bytes 1 to 2.");
    }
}
