package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed while it writes loses nothing that it had answered for. */
class KilledWriterContractTest {
    private static final int KILLS = 3;
    private static final int ANSWERED = 150;

    /** A line without it was cut off by the kill. */
    private static final String END = ";";

    @TempDir private Path folder;

    @Test
    void everything_acknowledged_before_kill_9_is_there_afterwards() throws Exception {
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged.addAll(writeUntilKilled(kill));
        }
        try (Store opened = Store.inFolder(folder)) {
            RecordStore store = opened.records();
            for (String id : acknowledged) {
                assertThat(store.byId(id)).as(id).isPresent();
            }
            assertThat(store.check().problem()).isEmpty();
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS * ANSWERED);
    }

    private List<String> writeUntilKilled(int round) throws IOException, InterruptedException {
        Process writer =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Writer.class.getName(),
                                folder.toString(),
                                "round" + round)
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader answers = writer.inputReader(StandardCharsets.UTF_8)) {
            String line = answers.readLine();
            while (line != null) {
                if (line.endsWith(END)) {
                    acknowledged.add(line.substring(0, line.length() - END.length()));
                }
                if (acknowledged.size() == ANSWERED) {
                    writer.toHandle().destroyForcibly();
                }
                line = answers.readLine();
            }
        }
        writer.waitFor();
        return acknowledged;
    }

    /** Writes records without end, and prints the id of each once it is kept. */
    static final class Writer {
        private Writer() {}

        /** Takes the folder of the store and a name of the round. */
        public static void main(String[] args) {
            RecordStore store = Store.inFolder(Path.of(args[0])).records();
            for (int i = 0; ; i++) {
                String id = args[1] + "-" + i;
                store.keep(Arrivals.of(id, "Truck " + i % 7));
                System.out.println(id + END);
            }
        }
    }
}
