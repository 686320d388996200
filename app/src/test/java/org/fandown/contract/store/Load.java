package org.fandown.contract.store;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.fandown.app.files.DocumentFiles;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;

/**
 * Many clients that send one inspection after the other to one server, which is killed in the
 * middle and started again. A client that gets no answer sends the same again.
 */
final class Load {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final String ID = "ID-OF-THE-RECORD";
    private static final String PLATE = "QRK 552";
    private static final int VEHICLES = 40;
    private static final Duration AGAIN = Duration.ofMillis(50);

    private final HttpClient http = HttpClient.newHttpClient();
    private final Queue<String> kept = new ConcurrentLinkedQueue<>();
    private final Queue<Long> waits = new ConcurrentLinkedQueue<>();
    private final Queue<String> odd = new ConcurrentLinkedQueue<>();
    private final String template = template();
    private final ServerProcess server;
    private volatile boolean ended;

    Load(ServerProcess server) {
        this.server = server;
    }

    /**
     * What came of it.
     *
     * @param kept ids of all records that the server has answered for
     * @param waits how long each answer took, ms, in rising order; without those that had to be
     *     sent again
     * @param odd answers that are none of those which are to be expected
     * @param down how long the server was away, ms
     */
    record Outcome(List<String> kept, List<Long> waits, List<String> odd, long down) {
        /** What so many of a hundred answers took at most, ms. */
        long within(int percent) {
            return waits.get((int) ((waits.size() - 1L) * percent / 100));
        }
    }

    /** Runs it for a time, with the kill in the middle. */
    Outcome run(int clients, Duration time) throws IOException, InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(clients);
        for (int i = 0; i < clients; i++) {
            int which = i;
            threads.execute(() -> sendUntilEnded(which));
        }
        Thread.sleep(time.toMillis() / 2);
        long killed = System.nanoTime();
        server.kill();
        server.startAgain();
        long down = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - killed);
        Thread.sleep(Math.max(0, time.toMillis() / 2 - down));
        ended = true;
        threads.shutdown();
        if (!threads.awaitTermination(2, TimeUnit.MINUTES)) {
            odd.add("clients that never ended");
        }
        List<Long> sorted = waits.stream().sorted().toList();
        return new Outcome(List.copyOf(kept), sorted, List.copyOf(odd), down);
    }

    private void sendUntilEnded(int client) {
        try {
            for (int i = 0; !ended; i++) {
                send(UUID.randomUUID().toString(), "FD " + (client + i) % VEHICLES);
            }
        } catch (InterruptedException | RuntimeException e) {
            odd.add(e.toString());
        }
    }

    private void send(String id, String plate) throws InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(server.records())
                        .header("Content-Type", "application/json")
                        .POST(
                                HttpRequest.BodyPublishers.ofString(
                                        template.replace(ID, id).replace(PLATE, plate)))
                        .build();
        for (int tries = 0; ; tries++) {
            long began = System.nanoTime();
            try {
                HttpResponse<String> answer =
                        http.send(request, HttpResponse.BodyHandlers.ofString());
                note(id, answer, tries);
                if (tries == 0) {
                    waits.add(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began));
                }
                return;
            } catch (IOException e) {
                if (ended) {
                    return;
                }
                Thread.sleep(AGAIN.toMillis());
            }
        }
    }

    private void note(String id, HttpResponse<String> answer, int tries) {
        boolean fresh = answer.body().contains("\"kept\":\"new\"");
        boolean before = answer.body().contains("\"kept\":\"before\"");
        if (fresh || (before && tries > 0)) {
            kept.add(id);
        } else {
            odd.add(answer.statusCode() + " " + answer.body());
        }
    }

    private static String template() {
        Path file = EXAMPLES.resolve("inspections/ontario-truck-in-order.yaml");
        Node vehicle = DocumentFiles.read(EXAMPLES.resolve("vehicles/straight-truck.yaml"));
        Tree.MapBuilder inspection = Tree.map();
        ((MapNode) DocumentFiles.read(file))
                .entries()
                .forEach(
                        (key, entry) ->
                                inspection.put(
                                        key, key.equals("vehicle") ? vehicle : entry.value()));
        Tree.MapBuilder record =
                Tree.map()
                        .put("format", "fandown-record/1")
                        .put("id", ID)
                        .put("kind", "inspection")
                        .put("made", "2026-11-30T06:40:00-05:00")
                        .put("inspection", inspection);
        return Json.writeCompact(Tree.map().put("records", Tree.list().add(record)).build());
    }
}
