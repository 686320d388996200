package org.fandown.bench.trace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.trace.Channel;
import org.fandown.trace.CsvReader;

/**
 * The example trace, a cold start with all tests in the cab, over and over: what each channel shows
 * at any time.
 */
final class ColdStart {
    private static final int CHANNELS = Channel.values().length;

    private final List<double[]> rows = new ArrayList<>();

    /** Reads the example, whichever directory of ours this runs in. */
    ColdStart() {
        byte[] table = example("traces", "cold-start.csv");
        double[] row = new double[CHANNELS];
        double[] time = {0};
        CsvReader reader =
                new CsvReader(
                        "cold-start.csv",
                        (channel, seconds, value) -> {
                            if (seconds > time[0]) {
                                rows.add(row.clone());
                                time[0] = seconds;
                            }
                            row[List.of(Channel.values()).indexOf(channel)] = value;
                        },
                        remark -> {
                            throw new IllegalStateException(remark.sentence());
                        });
        reader.accept(table, 0, table.length);
        reader.finish();
        rows.add(row);
    }

    /** Reads a file of the examples. */
    static byte[] example(String folder, String name) {
        Path here = Path.of("examples", folder, name);
        try {
            return Files.readAllBytes(Files.exists(here) ? here : Path.of("..").resolve(here));
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + here, e);
        }
    }

    /** Returns how long it takes once, s: its rows are a second apart. */
    int seconds() {
        return rows.size();
    }

    /** Returns what a channel shows, pressures between two rows as on a straight line. */
    double at(Channel channel, double seconds) {
        int whole = (int) Math.floor(seconds);
        int index = List.of(Channel.values()).indexOf(channel);
        double before = rows.get(whole % rows.size())[index];
        if (channel.unit().isEmpty() || whole % rows.size() == rows.size() - 1) {
            return before;
        }
        double after = rows.get(whole % rows.size() + 1)[index];
        return before + (seconds - whole) * (after - before);
    }
}
