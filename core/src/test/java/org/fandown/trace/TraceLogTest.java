package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.fandown.document.DocumentException;
import org.fandown.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TraceLogTest {
    private static final String FRAME = " can0 18FEAE31#FFFF6E6EFFFFFFFF\n";

    /** One step of 8 kPa, and 1 psi is 6.894757 kPa. */
    private static final double ROUNDING = 1e-6;

    private static TraceLog read(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        TraceLog log = new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (c, s, v) -> {});
        log.accept(bytes, 0, bytes.length);
        log.finish();
        return log;
    }

    @Test
    void form_is_told_by_the_content() {
        TraceLog candump = read("\n(0.0)" + FRAME + "(1.0)" + FRAME);
        TraceLog table = read("\n\ntime s,primary psi\n0,100\n2,101\n");

        assertThat(candump.isTable()).isFalse();
        assertThat(candump.lines()).isEqualTo(3);
        assertThat(candump.channels())
                .containsEntry(Channel.PRIMARY, 2L)
                .containsEntry(Channel.SECONDARY, 2L)
                .hasSize(2);
        assertThat(table.isTable()).isTrue();
        assertThat(table.lines()).isEqualTo(5);
        assertThat(table.seconds()).isEqualTo(2);
        assertThat(table.channels()).containsExactly(java.util.Map.entry(Channel.PRIMARY, 2L));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void lines_may_end_as_on_any_machine(String end) {
        TraceLog candump = read(end + "(0.0)" + FRAME.strip() + end + "(1.0)" + FRAME.strip());
        TraceLog table = read(end + "time s,primary psi" + end + "0,100" + end + "2,101" + end);

        assertThat(candump.channels()).containsEntry(Channel.PRIMARY, 2L);
        assertThat(candump.lines()).isEqualTo(3);
        assertThat(candump.notes()).isEmpty();
        assertThat(table.channels()).containsEntry(Channel.PRIMARY, 2L);
        assertThat(table.lines()).isEqualTo(4);
        assertThat(table.notes()).isEmpty();
    }

    @Test
    void instruments_are_as_fine_as_the_trace() {
        TraceLog table = read("time s,primary kPa\n0,800\n2,808\n4,800\n");

        assertThat(table.instruments().step(Unit.KPA)).isEqualTo(8, within(ROUNDING));
        assertThat(table.instruments().step(Unit.SECOND)).isEqualTo(2);
        assertThat(read("time s,primary psi\n0,800\n").instruments().step(Unit.PSI)).isEqualTo(1);
    }

    @Test
    void damaged_lines_are_counted_once_for_each_kind() {
        TraceLog log = read("(0.0)" + FRAME + "junk\nmore junk\n(1.0) can0 12345678#1\n");

        assertThat(log.notes()).hasSize(2);
        assertThat(log.notes())
                .anySatisfy(
                        note -> {
                            assertThat(note.kind()).isEqualTo("not-candump");
                            assertThat(note.line()).isEqualTo(2);
                            assertThat(note.times()).isEqualTo(2);
                            assertThat(note.sentence()).endsWith(" 2 times in all.");
                        })
                .anySatisfy(note -> assertThat(note.kind()).isEqualTo("bad-data"));
    }

    @Test
    void lost_messages_and_columns_not_read_are_noted() {
        TraceLog candump = read("(0.0)" + FRAME + "DROPCOUNT: dropped 7 CAN frames\n");
        TraceLog table = read("time s,primary psi,a,b,c,d,e,f,g,h\n0,1\n");

        assertThat(candump.notes().get(0).sentence()).contains("Line 2", "lost 7 messages");
        assertThat(table.notes().get(0).sentence())
                .isEqualTo("Columns not read: a, b, c, d, e, f and 2 more.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n\n\n",
                "\u0000\u0001\u00ff\u0000",
                "no log at all\n",
                "(0.0) can0 18F00400#FFFFFF6813FFFFFF\n",
                "time s,primary psi\n",
                "time s,primary psi\nx,y\n"
            })
    void log_without_a_pressure_is_refused_with_what_would_do(String text) {
        TraceLog log = read(text);

        assertThat(log.recognised()).isEmpty();
        assertThatThrownBy(log::requirePressure)
                .isInstanceOf(DocumentException.class)
                .hasMessageStartingWith("log: ")
                .hasMessageContaining("Allowed: a candump log of an SAE J1939 network, or CSV")
                .hasMessageContaining("Next: ");
    }

    @Test
    void line_of_many_megabytes_takes_no_room_and_is_noted() {
        TraceLog log = new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (c, s, v) -> {});
        byte[] piece = "x".repeat(1 << 16).getBytes(StandardCharsets.US_ASCII);
        for (int i = 0; i < 500; i++) {
            log.accept(piece, 0, piece.length);
        }
        byte[] good = ("\n(0.0)" + FRAME).getBytes(StandardCharsets.US_ASCII);
        log.accept(good, 0, good.length);
        log.finish();

        log.requirePressure();
        assertThat(log.notes()).extracting(TraceNote::kind).containsExactly("too-long");
        assertThat(log.lines()).isEqualTo(2);
    }

    /** Ten million lines of junk of all kinds. */
    private static void junk(TraceLog log) {
        String lines = "junk\n\n(0.1) can0 junk\n(9) c 1#\n1,2\n,,,\n#\u0001\u00ff\n;\n  x\n(\n";
        byte[] piece = lines.repeat(1000).getBytes(StandardCharsets.ISO_8859_1);
        for (int i = 0; i < 1000; i++) {
            log.accept(piece, 0, piece.length);
        }
    }

    @Test
    void ten_million_lines_of_junk_are_counted_and_refused() {
        TraceLog log = new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (c, s, v) -> {});
        junk(log);
        log.finish();

        assertThat(log.lines()).isEqualTo(10_000_000);
        assertThat(log.notes()).hasSizeLessThan(LineKind.values().length);
        assertThatThrownBy(log::requirePressure)
                .hasMessageContaining("No line can be used of the log's 10000000; line 1: this");
    }

    @ParameterizedTest
    @ValueSource(strings = {"(0.0)" + FRAME, "time s,primary psi,x\n0,100,\n"})
    void ten_million_lines_of_junk_do_not_hide_what_is_good(String good) {
        TraceLog log = new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (c, s, v) -> {});
        byte[] bytes = good.getBytes(StandardCharsets.US_ASCII);
        log.accept(bytes, 0, bytes.length);
        junk(log);
        log.finish();

        log.requirePressure();
        assertThat(log.lines()).isGreaterThan(10_000_000);
        assertThat(log.notes()).isNotEmpty().hasSizeLessThan(10);
    }
}
