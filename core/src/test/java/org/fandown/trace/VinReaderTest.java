package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class VinReaderTest {
    private static final String PRESSURE = "(0.0) can0 18FEAE31#FFFF6E6EFFFFFFFF\n";

    /** A made-up number that is often used as an example, with its star. */
    private static final String VIN =
            PRESSURE
                    + "(0.1) can0 1CECFF00#20120003FFECFE00\n"
                    + "(0.2) can0 1CEBFF00#01314D3847444D39\n"
                    + "(0.3) can0 1CEBFF00#0241584B50303432\n"
                    + "(0.4) can0 1CEBFF00#033738382AFFFFFF\n";

    private static List<VehicleNumber> read(String log, boolean asked) {
        TraceLog trace =
                new TraceLog("log", CandumpReader.Times.AS_WRITTEN, (channel, s, value) -> {});
        if (asked) {
            trace.readVin();
        }
        byte[] bytes = log.getBytes(StandardCharsets.US_ASCII);
        trace.accept(bytes, 0, bytes.length);
        trace.finish();
        return trace.vins();
    }

    @Test
    void number_is_put_together_from_its_packets() {
        assertThat(read(VIN, true)).containsExactly(new VehicleNumber("1M8GDM9AXKP042788", 0));
        assertThat(read(VIN + VIN, true)).hasSize(1);
    }

    @Test
    void number_is_passed_over_unless_asked_for() {
        assertThat(read(VIN, false)).isEmpty();
    }

    @Test
    void packets_of_two_senders_may_come_in_turn() {
        String other = VIN.replace("FF00#", "FF0B#").replace(PRESSURE, "");
        String[] one = VIN.split("\n", -1);
        String[] two = other.split("\n", -1);
        StringBuilder both = new StringBuilder(PRESSURE);
        for (int i = 0; i < 4; i++) {
            both.append(one[i + 1]).append('\n').append(two[i]).append('\n');
        }
        assertThat(read(both.toString(), true)).hasSize(1);
    }

    @Test
    void missing_packet_other_group_and_absurd_size_give_nothing() {
        assertThat(read(VIN.replaceFirst("\\(0.3\\)[^\n]*\n", ""), true)).isEmpty();
        assertThat(read(VIN.replace("FFECFE00", "FFEBFE00"), true)).isEmpty();
        assertThat(read(VIN.replace("#20120003", "#20FFFFFF"), true)).isEmpty();
        assertThat(read(VIN.replace("#20120003", "#10120003"), true)).isEmpty();
        assertThat(read(VIN.replace("314D38", "31FF38"), true)).isEmpty();
        assertThat(read(VIN.replace("2AFFFFFF", "2A"), true)).isEmpty();
    }

    @Test
    void form_and_check_digit_are_told() {
        assertThat(new VehicleNumber("1M8GDM9AXKP042788", 0).remark()).contains("is right");
        assertThat(new VehicleNumber("1M8GDM9A1KP042788", 0).remark()).contains("not right");
        assertThat(new VehicleNumber("1M8GDM9AXKPO42788", 0).remark()).contains("form of a VIN");
        assertThat(new VehicleNumber("4711", 0).remark()).contains("form of a VIN");
    }
}
