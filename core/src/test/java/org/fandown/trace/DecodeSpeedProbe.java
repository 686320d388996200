package org.fandown.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Prints how fast logs are read and decoded, beside counting their lines alone. Run by hand: {@code
 * java -cp core/target/classes:core/target/test-classes org.fandown.trace.DecodeSpeedProbe}, in the
 * folder {@code core}.
 */
public final class DecodeSpeedProbe {
    private static final int COPIES = 400;
    private static final int ROUNDS = 8;

    private DecodeSpeedProbe() {}

    /** Counts what it is told, so that nothing is optimised away. */
    private static final class Sum implements SignalListener {
        private double sum;

        @Override
        public void value(Signal signal, CanFrame frame, double value) {
            sum += value;
        }
    }

    /** Runs the probe. */
    public static void main(String[] args) throws IOException {
        byte[] console = Files.readAllBytes(Path.of("..", "examples", "recordings", "tsc1.log"));
        byte[] compact =
                new String(console, java.nio.charset.StandardCharsets.US_ASCII)
                        .replaceAll("\\)  (\\S+)  (\\S+)   \\[8]  ", ") $1 $2#")
                        .replaceAll("(?<=[0-9A-F]{2}) (?=[0-9A-F]{2})", "")
                        .getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        measure("console form", many(console));
        measure("compact form", many(compact));
    }

    private static byte[] many(byte[] once) {
        byte[] all = Arrays.copyOf(once, once.length * COPIES);
        for (int i = 1; i < COPIES; i++) {
            System.arraycopy(once, 0, all, i * once.length, once.length);
        }
        return all;
    }

    private static void measure(String name, byte[] log) {
        for (int round = 0; round < ROUNDS; round++) {
            Sum sum = new Sum();
            CandumpReader reader = new CandumpReader(new SignalDecoder(sum));
            long start = System.nanoTime();
            for (int from = 0; from < log.length; from += 65_536) {
                reader.accept(log, from, Math.min(log.length, from + 65_536));
            }
            reader.finish();
            double seconds = (System.nanoTime() - start) / 1e9;
            start = System.nanoTime();
            int lines = 0;
            for (byte b : log) {
                lines += b == '\n' ? 1 : 0;
            }
            double counting = (System.nanoTime() - start) / 1e9;
            System.out.printf(
                    "%s: %.2f million lines/s (lines alone %.1f), sum %.0f, lines %d%n",
                    name, reader.lines() / seconds / 1e6, lines / counting / 1e6, sum.sum, lines);
        }
    }
}
