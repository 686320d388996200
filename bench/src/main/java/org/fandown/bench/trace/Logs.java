package org.fandown.bench.trace;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.fandown.trace.Channel;

/** Logs in memory, each of the same number of lines. */
final class Logs {
    private static final String[] CAPTURES = {"normal.log", "tsc1.log", "dos_1ms.log"};

    private static final List<Channel> PRESSURES =
            List.of(Channel.PRIMARY, Channel.SECONDARY, Channel.SUPPLY, Channel.PARKING);

    private static final List<Channel> OTHERS =
            List.of(Channel.ENGINE_SPEED, Channel.PEDAL, Channel.PARKING_SWITCH, Channel.WARNING);

    /** Each capture is of less than this, s. */
    private static final int CAPTURED = 31;

    private static final int BYTES_OF_A_LINE = 64;

    private final int lines;
    private final ByteArrayOutputStream bytes;

    private Logs(int lines) {
        this.lines = lines;
        bytes = new ByteArrayOutputStream(lines * BYTES_OF_A_LINE);
    }

    /**
     * Makes a log.
     *
     * @param name {@code captures}: the recordings one after the other, their times made to go on;
     *     {@code busy}: a busy network; {@code table}: CSV of nine columns, ten rows a second
     * @param lines how many lines
     */
    static byte[] of(String name, int lines) {
        Logs logs = new Logs(lines);
        switch (name) {
            case "captures" -> logs.captures();
            case "busy" -> logs.busy();
            case "table" -> logs.table();
            default -> throw new IllegalArgumentException("There is no log '" + name + "'.");
        }
        return logs.bytes.toByteArray();
    }

    private void write(String line) {
        bytes.writeBytes(line.getBytes(StandardCharsets.US_ASCII));
    }

    private void captures() {
        String[][] captures = new String[CAPTURES.length][];
        for (int i = 0; i < captures.length; i++) {
            byte[] capture = ColdStart.example("recordings", CAPTURES[i]);
            captures[i] = new String(capture, StandardCharsets.US_ASCII).split("\n", -1);
        }
        int made = 0;
        for (int copy = 0; made < lines; copy++) {
            for (String line : captures[copy % captures.length]) {
                if (made < lines && !line.isEmpty()) {
                    write(later(line, copy * CAPTURED) + '\n');
                    made++;
                }
            }
        }
    }

    /** The same line with a time in brackets that is later. */
    private static String later(String line, int seconds) {
        int from = line.indexOf('(') + 1;
        int to = line.indexOf('.');
        int when = Integer.parseInt(line.substring(from, to)) + seconds;
        return String.format(
                Locale.ROOT, "%s%03d%s", line.substring(0, from), when, line.substring(to));
    }

    private void busy() {
        BusyBus bus = new BusyBus(new ColdStart());
        int made = 0;
        while (made < lines) {
            byte[] second = bus.second();
            int from = 0;
            for (int i = 0; i < second.length && made < lines; i++) {
                if (second[i] == '\n') {
                    made++;
                    from = i + 1;
                }
            }
            bytes.writeBytes(Arrays.copyOf(second, from));
        }
    }

    private void table() {
        ColdStart drive = new ColdStart();
        write("time s,primary psi,secondary psi,supply psi,park line psi,engine rpm,foot brake %,");
        write("parking switch,low-air warning\n");
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < lines - 1; i++) {
            row.setLength(0);
            tenths(row, i);
            for (Channel pressure : PRESSURES) {
                tenths(row.append(','), Math.round(10 * drive.at(pressure, i / 10.0)));
            }
            for (Channel other : OTHERS) {
                row.append(',').append(Math.round(drive.at(other, i / 10.0)));
            }
            write(row.append('\n').toString());
        }
    }

    private static void tenths(StringBuilder row, long tenths) {
        row.append(tenths / 10).append('.').append(tenths % 10);
    }
}
