package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.units.Decimals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvReaderTest {
    private final List<String> samples = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();

    private CsvReader read(String table) {
        return read(table.getBytes(StandardCharsets.UTF_8), Integer.MAX_VALUE);
    }

    private CsvReader read(byte[] table, int piece) {
        CsvReader reader = new CsvReader("t.csv", this::sample, remarks::add);
        int from = 0;
        while (from < table.length) {
            int to = piece < table.length - from ? from + piece : table.length;
            reader.accept(table, from, to);
            from = to;
        }
        reader.finish();
        return reader;
    }

    private void sample(Channel channel, double seconds, double value) {
        samples.add(
                channel
                        + " "
                        + Decimals.formatShort(seconds, 3)
                        + " "
                        + Decimals.formatShort(value, 3));
    }

    @Test
    void columns_as_drive_writes_them_become_channels() {
        CsvReader reader =
                read(
                        """
                        time s,primary needle psi,primary psi,park line psi,engine rpm,foot brake %,\
                        low-air lamp,parking knob in,trailer knob in,key
                        0.00,99,100.5,99,700,0,0,1,0,1
                        0.10,99,100.25,99,700,50,1,0,1,1
                        """);

        assertThat(samples)
                .containsExactly(
                        "PRIMARY 0 100.5",
                        "PARKING 0 99",
                        "ENGINE_SPEED 0 700",
                        "PEDAL 0 0",
                        "WARNING 0 0",
                        "PARKING_SWITCH 0 0",
                        "TRAILER_SHUT 0 1",
                        "PRIMARY 0.1 100.25",
                        "PARKING 0.1 99",
                        "ENGINE_SPEED 0.1 700",
                        "PEDAL 0.1 50",
                        "WARNING 0.1 1",
                        "PARKING_SWITCH 0.1 1",
                        "TRAILER_SHUT 0.1 0");
        assertThat(reader.ignored()).containsExactlyInAnyOrder("primary needle psi", "key");
        assertThat(reader.lines()).isEqualTo(3);
        assertThat(remarks).isEmpty();
    }

    /** 1 bar is 100 kPa; 1 psi is 6.894757 kPa. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "primary psi|100|100",
                "primary (psi)|100|100",
                "PRIMARY [psi]|1e2|",
                "primary kPa|689.4757|100",
                "primary bar|6.894757|100",
                "primary psi|-0.5|-0.5",
                "primary psi|+7|7",
                "primary psi|.5|0.5",
                "primary psi|'\"12\"'|12",
                "primary psi|0x10|",
                "primary psi|NaN|",
                "primary psi|1.2.3|",
                "primary psi|-|",
                "primary psi|123456789012345678901234567890|"
            })
    void pressure_is_read_in_its_unit_or_left_out(String head, String cell, String psi) {
        read("time s," + head + "\n0," + cell + "\n");

        if (psi == null) {
            assertThat(samples).isEmpty();
            assertThat(remarks)
                    .extracting(Remark::kind)
                    .containsExactly(Remark.Kind.CELLS_LEFT_OUT);
        } else {
            assertThat(samples).containsExactly("PRIMARY 0 " + psi);
            assertThat(remarks).isEmpty();
        }
    }

    @Test
    void decimal_comma_goes_with_the_semicolon() {
        read("time s;primary bar;speed mph\r\n0,5;6,894757;10\r\n1,5;6.894757;\r\n");

        assertThat(samples).containsExactly("PRIMARY 0 100", "SPEED 0 16.093", "PRIMARY 1 100");
    }

    @Test
    void time_may_be_a_moment_with_or_without_an_offset() {
        read(
                """
                time,primary psi
                2026-11-25T06:40:00Z,1
                2026-11-25T07:40:00.5+01:00,2
                2026-11-25 01:40:01-0500,3
                2026-11-25T06:40:01.25,4
                """);

        assertThat(samples)
                .containsExactly("PRIMARY 0 1", "PRIMARY 0.5 2", "PRIMARY 1 3", "PRIMARY 1.25 4");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "noon",
                "2026-13-01T00:00:00",
                "2026-11-25",
                "2026-11-25T00:00:00+1",
                "1e5",
                "99999999999999"
            })
    void row_without_a_time_is_left_out_and_counted(String time) {
        read("time,primary psi\n" + time + ",1\n" + time + ",2\n3,4\n");

        assertThat(samples).containsExactly("PRIMARY 0 4");
        assertThat(remarks).hasSize(1);
        assertThat(remarks.get(0).sentence())
                .isEqualTo(
                        "Line 2: rows left out because their time cannot be read: 2, this is the"
                                + " first.");
    }

    @Test
    void pressures_no_gauge_shows_are_left_out_and_point_to_the_unit() {
        read("time s,primary psi\n0,100\n1,850\n2,-20\n3,300\n");

        assertThat(samples).containsExactly("PRIMARY 0 100", "PRIMARY 3 300");
        assertThat(remarks).hasSize(1);
        assertThat(remarks.get(0).sentence()).startsWith("Line 3: pressures").contains("unit", "2");
    }

    @Test
    void clock_that_goes_back_and_gaps_are_remarked_as_in_other_logs() {
        read("time s,primary psi\n100,1\n104,2\n50,3\n");

        assertThat(remarks)
                .extracting(Remark::kind)
                .containsExactly(Remark.Kind.GAP, Remark.Kind.CLOCK_WENT_BACK);
    }

    @Test
    void circuits_named_the_other_way_round_by_other_columns_are_noticed() {
        read(
                """
                time s,primary psi,secondary psi,primary needle kPa,secondary needle kPa
                0,100,100,690,690
                1,90,100,690,621
                2,80,100,690,552
                """);

        assertThat(samples).hasSize(6);
        assertThat(remarks)
                .extracting(Remark::sentence)
                .containsExactly(
                        "Line 3: two messages or columns name the circuits the other way round (at"
                                + " 1 s of the trace).");
    }

    @Test
    void columns_that_differ_for_long_are_remarked_and_those_that_lag_are_not() {
        String head = "time s,primary reservoir psi,primary psi\n";
        read(head + "0,90,100\n4,90,100\n4.5,100,100\n5,90,100\n9,,100\n11,90,100\n13.5,90,100\n");
        assertThat(remarks).extracting(Remark::kind).doesNotContain(Remark.Kind.CIRCUITS_DISAGREE);

        read(head + "0,90,100\n2.5,90,100\n5,90,100\n");
        assertThat(remarks)
                .filteredOn(r -> r.kind() == Remark.Kind.CIRCUITS_DISAGREE)
                .extracting(Remark::line, Remark::size)
                .containsExactly(org.assertj.core.api.Assertions.tuple(4L, 10.0));
    }

    @Test
    void switches_may_be_words_and_nothing_else() {
        read("time s,primary psi,brake switch\n0,1,on\n1,1,No\n2,1,TRUE\n3,1,2\n4,1,maybe\n");

        assertThat(samples)
                .contains("BRAKE_SWITCH 0 1", "BRAKE_SWITCH 1 0", "BRAKE_SWITCH 2 1")
                .noneMatch(s -> s.startsWith("BRAKE_SWITCH 3") || s.startsWith("BRAKE_SWITCH 4"));
        assertThat(remarks.get(0).line()).isEqualTo(5);
        assertThat(remarks.get(0).size()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 4096})
    void how_the_table_is_cut_does_not_matter(int piece) {
        String table = "\n\ntime s,\"primary psi\",x\r\n0,1,2\r\n\r\n1,2,3";
        read(table.getBytes(StandardCharsets.UTF_8), piece);

        assertThat(samples).containsExactly("PRIMARY 0 1", "PRIMARY 1 2");
    }

    @Test
    void byte_order_mark_and_letters_beyond_ascii_do_no_harm() {
        CsvReader reader = read("\ufefftime s,primary psi,\u00d6ldruck\n0,1,2\n");

        assertThat(samples).containsExactly("PRIMARY 0 1");
        assertThat(reader.ignored()).containsExactly("?ldruck");
    }

    @Test
    void row_longer_than_any_is_left_out() {
        read("time s,primary psi\n0,1\n" + "9".repeat(70_000) + "\n1,2\n");

        assertThat(samples).containsExactly("PRIMARY 0 1", "PRIMARY 1 2");
        assertThat(remarks).extracting(Remark::kind).containsExactly(Remark.Kind.ROWS_LEFT_OUT);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "primary psi,secondary psi|no column holds the time|a column 'time s'",
                "time s,engine rpm|no column holds the pressure of a brake circuit|primary psi",
                "time ms,primary psi|this unit of time is not read|time s",
                "time s,time,primary psi|two columns hold the time|one",
                "time s,primary|the unit is missing|psi, kPa, bar",
                "time s,primary hPa|this unit is not read|psi, kPa, bar",
                "time s,primary psi,speed (knots)|this unit is not read|km/h, mph, m/s",
                "time s,primary psi,engine [Hz]|this unit is not read|rpm",
                "time s,primary psi,primary kPa|two columns hold the same|one column for each"
            })
    void head_that_cannot_be_used_is_refused_with_its_line(
            String head, String problem, String allowed) {
        assertThatThrownBy(() -> read("\n" + head + "\n0,1,2\n"))
                .isInstanceOfSatisfying(
                        DocumentException.class,
                        e -> {
                            assertThat(e.line()).isEqualTo(2);
                            assertThat(e.file()).isEqualTo("t.csv");
                            assertThat(e.problem()).isEqualTo(problem);
                            assertThat(e.allowed()).contains(allowed);
                            assertThat(e.nextStep()).contains("time s,primary psi");
                        });
    }
}
