package org.fandown.bench.trace;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a log of a busy network as long as one likes, the same bytes each time. */
public final class LongLog {
    private static final long MEGABYTE = 1_000_000;

    private LongLog() {}

    /**
     * Writes the log.
     *
     * @param args the least length in megabytes, and the file
     * @throws IOException if the file cannot be written
     */
    public static void main(String... args) throws IOException {
        long least = Long.parseLong(args[0]) * MEGABYTE;
        BusyBus bus = new BusyBus(new ColdStart());
        long written = 0;
        long seconds = 0;
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])))) {
            while (written < least) {
                byte[] second = bus.second();
                out.write(second);
                written += second.length;
                seconds++;
            }
        }
        System.out.printf(
                "%,d bytes, %,d lines, %,d s of a busy network%n", written, bus.lines(), seconds);
    }
}
