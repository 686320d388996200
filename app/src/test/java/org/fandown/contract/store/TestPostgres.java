package org.fandown.contract.store;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * A real PostgreSQL server in a temporary folder, at a free port, one for all tests of a Java
 * machine. It ends with it, however that ends, since it then loses its standard input.
 */
public final class TestPostgres {
    private static final String PASSWORD = "only-for-tests";
    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static final String NOT_THERE = "initdb of PostgreSQL is not installed";

    /** Makes a cluster, runs it until nothing can be read any more, and removes it. */
    private static final String RUN =
            "set -eu; umask 077; bin=$1; port=$2; folder=$(mktemp -d); trap 'rm -rf \"$folder\"' EXIT;"
                    + " printf %s "
                    + PASSWORD
                    + " >\"$folder/password\";"
                    + " \"$bin/initdb\" -D \"$folder/data\" -U postgres -E UTF8 --locale=C.UTF-8 -A"
                    + " scram-sha-256 --pwfile=\"$folder/password\" >\"$folder/log\" 2>&1 || { cat"
                    + " \"$folder/log\"; exit 1; };"
                    + " \"$bin/postgres\" -D \"$folder/data\" -p \"$port\" -h 127.0.0.1 -k"
                    + " \"$folder\" >\"$folder/log\" 2>&1 & server=$!;"
                    + " until \"$bin/pg_isready\" -q -h 127.0.0.1 -p \"$port\"; do kill -0 $server ||"
                    + " { cat \"$folder/log\"; exit 1; }; sleep 0.1; done;"
                    + " echo ready; read end || true; kill -INT $server; wait $server || true";

    private static @Nullable TestPostgres running;

    private final int port;
    private final Process process;

    private TestPostgres(int port, Process process) {
        this.port = port;
        this.process = process;
    }

    /** The JDBC URL of a new, empty database. The test is left out where there is no PostgreSQL. */
    public static String database() {
        TestPostgres server = server();
        String name = "test" + DATABASES.incrementAndGet();
        try (Connection by = DriverManager.getConnection(server.url("postgres"));
                var statement = by.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return server.url(name);
    }

    private static synchronized TestPostgres server() {
        TestPostgres server = running;
        if (server == null || !server.process.isAlive()) {
            server = start(programs());
            running = server;
        }
        return server;
    }

    private String url(String name) {
        return "jdbc:postgresql://127.0.0.1:"
                + port
                + "/"
                + name
                + "?user=postgres&password="
                + PASSWORD;
    }

    /** The folder of its programs: on the path, or where Debian puts them. */
    private static Path programs() {
        List<Path> folders = new ArrayList<>();
        for (String folder : System.getenv("PATH").split(":", -1)) {
            folders.add(Path.of(folder));
        }
        for (int version = 20; version >= 13; version--) {
            folders.add(Path.of("/usr/lib/postgresql/" + version + "/bin"));
        }
        for (Path folder : folders) {
            if (Files.isExecutable(folder.resolve("initdb"))) {
                return real(folder.resolve("initdb")).getParent();
            }
        }
        assumeTrue(false, NOT_THERE);
        throw new IllegalStateException(NOT_THERE);
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TestPostgres start(Path programs) {
        try {
            int port = freePort();
            List<String> command = new ArrayList<>();
            if (System.getProperty("user.name").equals("root")) {
                // PostgreSQL refuses to run as root; its package brings a user of its own.
                command.addAll(List.of("runuser", "-u", "postgres", "--"));
            }
            command.addAll(List.of("sh", "-c", RUN, "sh", programs.toString(), "" + port));
            Process process =
                    new ProcessBuilder(command)
                            .directory(Path.of("/").toFile())
                            .redirectError(ProcessBuilder.Redirect.INHERIT)
                            .start();
            awaitReady(process);
            return new TestPostgres(port, process);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void awaitReady(Process process) throws IOException {
        BufferedReader words = process.inputReader(StandardCharsets.UTF_8);
        StringBuilder said = new StringBuilder();
        String line = words.readLine();
        while (line != null && !line.equals("ready")) {
            said.append(line).append('\n');
            line = words.readLine();
        }
        if (line == null) {
            throw new IllegalStateException("PostgreSQL did not start:\n" + said);
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
