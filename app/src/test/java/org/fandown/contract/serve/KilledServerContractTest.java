package org.fandown.contract.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The server is killed with SIGKILL while several clients send records. After a restart every
 * record that it had acknowledged is there as it was sent, none is there in part, and sending all
 * again does no harm.
 */
class KilledServerContractTest {
    private static final int CLIENTS = 4;
    private static final int KILLS = 2;
    private static final int ACKNOWLEDGED = 40;

    @TempDir private Path folder;

    private final Map<String, String> sent = new ConcurrentHashMap<>();
    private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();

    @Test
    void acknowledged_records_outlive_kill_9_whole_and_once() throws Exception {
        for (int kill = 1; kill <= KILLS; kill++) {
            sendUntilKilled(kill * ACKNOWLEDGED);
        }
        ServeProcess again = ServeProcess.start(folder);
        try {
            for (String id : acknowledged) {
                assertThat(again.get("api/records/" + id).body()).isEqualTo(sent.get(id));
            }
            for (Map.Entry<String, String> record : sent.entrySet()) {
                String kept = again.post("api/records", Records.body(record.getValue())).body();
                assertThat(kept).containsPattern("\"kept\":\"(new|before)\"");
                assertThat(again.get("api/records/" + record.getKey()).body())
                        .isEqualTo(record.getValue());
            }
            assertThat(again.get("api/records").body()).contains("\"count\":" + sent.size() + ",");
            assertThat(again.get("api/health").body()).contains("\"works\"");
        } finally {
            again.kill();
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS * ACKNOWLEDGED);
        assertThat(acknowledged).doesNotHaveDuplicates();
    }

    private void sendUntilKilled(int enough) throws Exception {
        ServeProcess server = ServeProcess.start(folder);
        List<Thread> clients = new ArrayList<>();
        for (int i = 0; i < CLIENTS; i++) {
            Thread client = new Thread(() -> sendUntilGone(server));
            client.start();
            clients.add(client);
        }
        while (acknowledged.size() < enough) {
            Thread.sleep(5);
        }
        server.kill();
        for (Thread client : clients) {
            client.join();
        }
    }

    private void sendUntilGone(ServeProcess server) {
        try {
            while (true) {
                String id = UUID.randomUUID().toString();
                String record = Records.record(id);
                sent.put(id, record);
                if (server.post("api/records", Records.body(record))
                        .body()
                        .contains("\"kept\":\"new\"")) {
                    acknowledged.add(id);
                }
            }
        } catch (IOException e) {
            // The server is gone.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
