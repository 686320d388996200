package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.trace.OperatorMark.Clock;
import org.fandown.trace.Recognised.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OperatorMarksTest {
    /** Samples ten times a second and moments of half a second leave this much open, psi. */
    private static final double SAMPLING = 0.2;

    /** A circuit that falls by 1 psi a second from 100 psi, ten samples a second. */
    private static String falling(String head, String mark, int markedAt) {
        StringBuilder table = new StringBuilder("time s,primary psi" + head + "\n");
        for (int i = 0; i <= 800; i++) {
            String cell = head.isEmpty() ? "" : i == 10 * markedAt ? "," + mark : ",";
            double tenths = 1000 - i;
            table.append(i / 10.0).append(',').append(tenths / 10).append(cell).append('\n');
        }
        return table.toString();
    }

    private static TraceLog read(String log, OperatorMarks marks) {
        TraceLog trace =
                new TraceLog("log.csv", CandumpReader.Times.AS_WRITTEN, (channel, s, value) -> {});
        trace.mark(marks);
        byte[] bytes = log.getBytes(StandardCharsets.US_ASCII);
        trace.accept(bytes, 0, bytes.length);
        trace.finish();
        return trace;
    }

    private static OperatorMarks marks(String at, String word) {
        return MarksReader.read(
                Json.read(
                        "marks.json",
                        "{\"marks\":[{\"at\":\"" + at + "\",\"mark\":\"" + word + "\"}]}"));
    }

    @ParameterizedTest
    @CsvSource({
        "low-air-warning, WARNING",
        "parking-knob-out, PARKING_CLOSED",
        "trailer-knob-out, TRAILER_CLOSED"
    })
    void point_is_the_pressure_just_before_the_mark_and_its_doubt_holds_the_reaction(
            String word, Kind kind) {
        Recognised found = read(falling("", "", 0), marks("40 s", word)).recognised().get(0);

        // The mark came up to 1.5 s late: the mean is 0.75 s before it, of even law 1.5 s wide.
        assertThat(found.kind()).isEqualTo(kind);
        assertThat(found.value()).isEqualTo(100 - 40 + 0.75, within(SAMPLING));
        assertThat(found.uncertainty())
                .isEqualTo(Math.sqrt(1.5 * 1.5 / 12 + 0.5 * 0.5), within(0.05));
        assertThat(found.from()).isEqualTo(38.5);
        assertThat(found.to()).isEqualTo(40);
    }

    @Test
    void column_of_a_table_marks_as_a_file_does_and_a_word_in_two_rows_is_one_mark() {
        String table = falling(",mark", "Low-Air Warning", 40);
        TraceLog log = read(table, OperatorMarks.NONE);

        assertThat(log.recognised())
                .isEqualTo(read(falling("", "", 0), marks("40 s", "low-air-warning")).recognised());
        String held = table.replace("40.1,59.9,", "40.1,59.9,low air warning");
        assertThat(read(held, OperatorMarks.NONE).recognised()).isEqualTo(log.recognised());
    }

    @Test
    void pedal_by_mark_tells_which_loss_it_was() {
        StringBuilder table = new StringBuilder("time s,primary psi,mark\n");
        for (int t = 0; t <= 250; t++) {
            String word =
                    t == 2
                            ? "begin-air-loss-released"
                            : t == 100
                                    ? "end-air-loss"
                                    : t == 110 ? "foot-on" : t == 240 ? "foot-off" : "";
            double psi = t < 110 ? 120 - t / 60.0 : 110 - t / 30.0;
            table.append(t).append(',').append(Math.round(psi * 10) / 10.0);
            table.append(',').append(word).append('\n');
        }
        TraceLog log = read(table.toString(), OperatorMarks.NONE);

        assertThat(log.recognised())
                .extracting(Recognised::kind)
                .containsExactly(Kind.LOSS_RELEASED, Kind.LOSS_APPLIED);
        assertThat(log.recognised().get(0).value()).isEqualTo(1, within(0.3));
        assertThat(log.recognised().get(0).to()).isBetween(98.0, 101.0);
        assertThat(log.recognised().get(1).value()).isEqualTo(2, within(0.3));
        assertThat(log.marks()).hasSize(4);
    }

    @ParameterizedTest
    @CsvSource({
        "40 s, TRACE, 40",
        "0:40.5, TRACE, 40.5",
        "2 min, TRACE, 120",
        "1543532003.5, LOG, 1543532003.5",
        "1970-01-02T00:00:01+00:00, LOG, 86401",
        "1970-01-01T02:00:01.5+02:00, LOG, 1.5"
    })
    void times_are_those_of_the_trace_or_of_the_log(String at, Clock clock, double seconds) {
        assertThat(marks(at, "foot-on").marks())
                .containsExactly(new OperatorMark(MarkWord.FOOT_ON, clock, seconds));
    }

    @Test
    void time_of_the_log_is_found_whatever_its_clock_began_with() {
        String log = falling("", "", 0).replaceAll("(?m)^(\\d)", "15$1");
        String first = log.lines().skip(1).findFirst().orElseThrow().split(",", -1)[0];
        double begin = Double.parseDouble(first);
        assertThat(begin).isEqualTo(150);
        String dated =
                falling("", "", 0)
                        .replace("time s", "time")
                        .replaceAll("(?m)^(\\d)\\.(\\d),", "2026-11-25T06:40:0$1.$2-05:00,")
                        .replaceAll("(?m)^([1-5]\\d)\\.(\\d),", "2026-11-25T06:40:$1.$2-05:00,")
                        .replaceAll("(?m)^(\\d+\\.\\d),.*\\n", "");
        TraceLog trace = read(dated, marks("2026-11-25T06:40:40-05:00", "low-air-warning"));

        assertThat(trace.recognised()).hasSize(1);
        assertThat(trace.recognised().get(0).to()).isEqualTo(40, within(0.01));
    }

    @ParameterizedTest
    @EnumSource(MarkWord.class)
    void mark_of_what_the_log_tells_is_left_out_and_that_is_told(MarkWord word) {
        String table =
                "time s,primary psi,low-air lamp,parking switch,trailer valve shut,pedal %\n";
        StringBuilder rows = new StringBuilder(table);
        for (int t = 0; t < 60; t++) {
            rows.append(t).append(',').append(100 - t).append(",0,0,0,0\n");
        }
        TraceLog log = read(rows.toString(), marks("40 s", word.id()));

        boolean ends = word == MarkWord.END_AIR_LOSS;
        assertThat(log.marks()).hasSize(ends ? 1 : 0);
        assertThat(log.notes()).hasSize(ends ? 0 : 1);
        assertThat(log.recognised()).isEmpty();
    }

    @Test
    void marks_that_say_nothing_are_told() {
        String steady = falling("", "", 0).replaceAll("(?m),\\d.*$", ",80");
        assertThat(kinds(read(steady, marks("40 s", "low-air-warning"))))
                .containsExactly("mark-says-nothing");
        assertThat(kinds(read(steady, marks("400 s", "low-air-warning"))))
                .containsExactly("mark-outside");
        assertThat(kinds(read(falling("", "", 0), marks("3 s", "low-air-warning"))))
                .containsExactly("mark-says-nothing");
    }

    private static List<String> kinds(TraceLog log) {
        return log.notes().stream().map(TraceNote::kind).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"lamp", "foot on the floor", "begin-build-up", "?"})
    void unknown_word_is_refused_with_what_is_allowed(String word) {
        assertThatThrownBy(() -> marks("40 s", word))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("low-air-warning, parking-knob-out");
        assertThatThrownBy(() -> read(falling(",mark", word, 40), OperatorMarks.NONE))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("low-air-warning, parking-knob-out")
                .hasMessageContaining("log.csv:402");
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "12:xx", "40 psi", "-"})
    void what_is_no_time_is_refused(String at) {
        assertThatThrownBy(() -> marks(at, "foot-on"))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("This is not a time");
    }

    @Test
    void reaction_can_be_named() {
        OperatorMarks slow =
                MarksReader.read(
                        Json.read(
                                "marks.json",
                                "{\"reaction\":\"4 s\",\"marks\":[{\"at\":\"40 s\","
                                        + "\"mark\":\"low-air-warning\"}]}"));
        Recognised found = read(falling("", "", 0), slow).recognised().get(0);

        assertThat(found.value()).isEqualTo(62, within(SAMPLING));
        assertThatThrownBy(
                        () ->
                                MarksReader.read(
                                        Json.read("m.json", "{\"reaction\":\"1 h\",\"marks\":[]}")))
                .hasMessageContaining("0 s to 10 s");
    }
}
