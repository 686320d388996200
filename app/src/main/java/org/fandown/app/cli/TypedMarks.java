package org.fandown.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import org.jspecify.annotations.Nullable;

/** What a person types while a log is followed, a word on each line. */
final class TypedMarks {
    private static final int WAITING = 100;

    private final BlockingQueue<String> lines = new ArrayBlockingQueue<>(WAITING);

    /** Begins to listen. The thread ends with the program or with its input. */
    TypedMarks(InputStream in) {
        Thread reader = new Thread(() -> read(in), "typed marks");
        reader.setDaemon(true);
        reader.start();
    }

    private void read(InputStream in) {
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        try {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                lines.put(line);
            }
        } catch (IOException e) {
            // Nobody can type any more; what was typed stays.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The next line that was typed, null while there is none. */
    @Nullable String next() {
        return lines.poll();
    }
}
