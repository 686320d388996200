package org.fandown.contract.serve;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.Main;

/** {@code fandown serve} as a process of its own, and what it prints. */
final class ServeProcess {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Process process;
    private final BufferedReader printed;
    private final String address;

    private ServeProcess(Process process, BufferedReader printed, String address) {
        this.process = process;
        this.printed = printed;
        this.address = address;
    }

    /** Starts one with a store in a folder, and waits until it says where it is. */
    static ServeProcess start(Path folder, String... options) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of("serve", "--port", "0", "--data", folder.toString()));
        command.addAll(List.of(options));
        Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        BufferedReader printed = process.inputReader(StandardCharsets.UTF_8);
        String line = String.valueOf(printed.readLine());
        String address = line.substring(line.indexOf("http"));
        return new ServeProcess(process, printed, address);
    }

    URI uri(String path) {
        return URI.create(address + path);
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return CLIENT.send(
                HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, String json) throws IOException, InterruptedException {
        return CLIENT.send(
                HttpRequest.newBuilder(uri(path))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(json))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** SIGKILL: nothing is tidied up. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    /** SIGTERM. */
    void terminate() {
        process.toHandle().destroy();
    }

    /** What it printed since, once it has ended. */
    List<String> rest() {
        return printed.lines().toList();
    }

    int exit() throws InterruptedException {
        return process.waitFor();
    }
}
