package org.fandown.contract.store;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fandown.app.Main;
import org.jspecify.annotations.Nullable;

/** The program as people start it, in a process of its own that can be killed. */
final class ServerProcess implements AutoCloseable {
    private static final long PATIENCE = TimeUnit.SECONDS.toNanos(120);
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Path data;
    private final @Nullable String database;
    private final int port;
    private Process process;

    /** Starts it, and returns once it answers; with its records in the folder or the database. */
    ServerProcess(Path data, @Nullable String database) throws IOException, InterruptedException {
        this.data = data;
        this.database = database;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        process = start();
    }

    /** Where records are sent to. */
    URI records() {
        return URI.create("http://127.0.0.1:" + port + "/api/records");
    }

    /** Ends it as a failing machine would. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    /** Starts it again at the same address. */
    void startAgain() throws IOException, InterruptedException {
        process = start();
    }

    private Process start() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        // As the launcher does.
        command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(Main.class.getName(), "serve", "--port", "" + port));
        command.addAll(List.of("--data", data.toString()));
        ProcessBuilder builder = new ProcessBuilder(command);
        if (database != null) {
            builder.environment().put("FANDOWN_DATABASE", database);
        }
        Process started =
                builder.redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        awaitAnswer(started);
        return started;
    }

    private void awaitAnswer(Process started) throws InterruptedException {
        HttpRequest health = HttpRequest.newBuilder(records().resolve("/api/health")).build();
        long until = System.nanoTime() + PATIENCE;
        while (System.nanoTime() < until && started.isAlive()) {
            try {
                if (CLIENT.send(health, HttpResponse.BodyHandlers.discarding()).statusCode()
                        == 200) {
                    return;
                }
            } catch (IOException e) {
                Thread.sleep(Duration.ofMillis(50).toMillis());
            }
        }
        started.destroyForcibly();
        throw new IllegalStateException("The server does not answer.");
    }

    /** Stops it in good order. */
    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                process.waitFor();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
