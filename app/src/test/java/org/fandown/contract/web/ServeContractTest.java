package org.fandown.contract.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fandown.app.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages as people start them: a program of its own that is stopped by a signal. */
class ServeContractTest {
    private static final String SAYS = "Fandown is at ";

    @TempDir private Path folder;

    private Process start(List<String> verb) throws Exception {
        List<String> command =
                new java.util.ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Duser.home=" + folder,
                                "-cp",
                                System.getProperty("java.class.path"),
                                Main.class.getName()));
        command.addAll(verb);
        return new ProcessBuilder(command).start();
    }

    @Test
    void it_prints_its_address_answers_and_stops_in_good_order() throws Exception {
        Process serve = start(List.of("serve", "--port", "0"));
        try (BufferedReader out = serve.inputReader(StandardCharsets.UTF_8)) {
            String line = out.readLine();
            assertThat(line).startsWith(SAYS);
            URI health = URI.create(line.substring(SAYS.length()) + "api/health");
            HttpResponse<String> answer =
                    HttpClient.newHttpClient()
                            .send(
                                    HttpRequest.newBuilder(health).build(),
                                    HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(out.readLine()).contains(folder.toString());
            serve.toHandle().destroy();
            assertThat(serve.waitFor(20, TimeUnit.SECONDS)).isTrue();
        } finally {
            serve.destroyForcibly();
        }
    }

    @Test
    void port_in_use_is_refused_with_what_to_do() throws Exception {
        try (var taken =
                new java.net.ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
            Process serve = start(List.of("serve", "--port", String.valueOf(taken.getLocalPort())));
            try (BufferedReader err = serve.errorReader(StandardCharsets.UTF_8)) {
                assertThat(err.lines().toList())
                        .anySatisfy(line -> assertThat(line).contains("--port"));
            }
            assertThat(serve.waitFor()).isEqualTo(2);
        }
    }
}
