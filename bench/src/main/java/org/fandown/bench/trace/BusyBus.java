package org.fandown.bench.trace;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.LongUnaryOperator;
import org.fandown.trace.Channel;

/**
 * A busy network of a truck on which the tests of the example trace are done, as candump writes it
 * in its compact form: some 950 messages a second, of which one in six carries a signal of air,
 * brakes, engine or speed; bytes nobody decodes are drawn by lot. The same each time.
 */
final class BusyBus {
    private static final double KPA = 6.894757;
    private static final long EMPTY = -1;
    private static final long FIRST_SECOND = 1_795_623_227;
    private static final long SEED = 1;

    /** Groups nobody decodes here, with the time between two of each, ms. */
    private static final String OTHERS =
            "0CF00203 10,0C000003 10,18F0090B 10,18FF2103 10,18FF2200 10,18FF310B 10,"
                    + "18FE6E0B 20,0C040B2A 20,0CF00300 50,0CFE6CEE 50,18F00029 100,18FEF200 100,"
                    + "18FEBF0B 100,18FF4021 100,18FF4131 100,18FEDF00 250,18FEEF00 500,"
                    + "18FEEE00 1000,18FEF717 1000,18FDCC21 1000,18FECA00 1000,1CECFF00 1000,"
                    + "1CEBFF00 333";

    private final ColdStart drive;
    private final List<Message> messages = new ArrayList<>();
    private final SplittableRandom lot = new SplittableRandom(SEED);
    private long millis;
    private long lines;

    /** A message that comes again and again. */
    private record Message(String identifier, int period, int phase, LongUnaryOperator data) {}

    BusyBus(ColdStart drive) {
        this.drive = drive;
        for (String other : OTHERS.split(",", -1)) {
            String[] parts = other.split(" ", -1);
            add(parts[0], Integer.parseInt(parts[1]), time -> lot.nextLong());
        }
        add("0CF00400", 20, t -> put(4, 2, 8 * at(Channel.ENGINE_SPEED, t)));
        add("18F0010B", 100, t -> put(2, 1, 2.5 * at(Channel.PEDAL, t)));
        add(
                "18FEF100",
                100,
                t -> put(2, 2, 0) & put(1, 1, 0xF3 + 4 * at(Channel.PARKING_SWITCH, t)));
        add("18FEF521", 1000, t -> put(1, 1, 200) & put(4, 2, 32 * 285));
        add("18FEFA0B", 1000, t -> put(1, 1, 1.5 * at(Channel.PEDAL, t)));
        add(
                "18FEAE30",
                1000,
                t ->
                        put(1, 1, steps(Channel.SUPPLY, t))
                                & put(2, 1, steps(Channel.PARKING, t))
                                & put(3, 1, steps(Channel.PRIMARY, t))
                                & put(4, 1, steps(Channel.SECONDARY, t)));
    }

    private void add(String identifier, int period, LongUnaryOperator data) {
        int phase = 37 * messages.size() % period;
        messages.add(new Message(identifier, period, phase, data));
    }

    private double at(Channel channel, long milliseconds) {
        return drive.at(channel, milliseconds / 1000.0);
    }

    /** In steps of 8 kPa. */
    private double steps(Channel channel, long milliseconds) {
        return at(channel, milliseconds) * KPA / 8;
    }

    /** Eight bytes without a value but for this one, the first byte lowest. */
    private static long put(int first, int bytes, double value) {
        long mask = ((1L << (8 * bytes)) - 1) << (8 * (first - 1));
        long bits = Math.round(value) << (8 * (first - 1));
        return (EMPTY & ~mask) | (bits & mask);
    }

    /** Returns the lines of the next second. */
    byte[] second() {
        StringBuilder text = new StringBuilder();
        for (long end = millis + 1000; millis < end; millis++) {
            int within = 0;
            for (Message message : messages) {
                if (millis % message.period() == message.phase()) {
                    line(text, message, within);
                    within += 25;
                }
            }
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private void line(StringBuilder text, Message message, int micros) {
        lines++;
        long data = Long.reverseBytes(message.data().applyAsLong(millis));
        String fraction = Long.toString(1_000_000 + millis % 1000 * 1000 + micros).substring(1);
        String digits = Long.toHexString(data).toUpperCase(Locale.ROOT);
        text.append('(').append(FIRST_SECOND + millis / 1000).append('.').append(fraction);
        text.append(") can0 ").append(message.identifier()).append('#');
        text.append("0".repeat(16 - digits.length())).append(digits).append('\n');
    }

    /** Returns the number of lines made so far. */
    long lines() {
        return lines;
    }
}
