package org.fandown.browser;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Optional;
import org.fandown.app.files.RulePacks;
import org.fandown.app.keys.SiteKeyFile;
import org.fandown.app.store.Store;
import org.fandown.app.web.Listening;
import org.fandown.app.web.SiteServer;

/** The real server with a store in a folder, and a plain HTTP client for it. */
public final class RunningSite implements AutoCloseable {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final SiteServer server;

    private RunningSite(SiteServer server) {
        this.server = server;
    }

    /** Starts one at any free port. */
    public static RunningSite in(Path folder) {
        return in(folder, 0);
    }

    /** Starts one at a port, such as that of one that was closed. */
    public static RunningSite in(Path folder, int port) {
        return in(folder, Listening.here(port));
    }

    /** Starts one that listens elsewhere, or has a public address. */
    public static RunningSite in(Path folder, Listening at) {
        return new RunningSite(
                SiteServer.start(
                        at,
                        RulePacks.builtIn(),
                        Store.inFolder(folder),
                        () -> SiteKeyFile.openOrMake(folder, "Demo yard", Optional.empty())));
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    /** The address on this machine, ending with a slash. */
    public String address() {
        return "http://127.0.0.1:" + port() + "/";
    }

    /** Asks for something. */
    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(request(path).GET());
    }

    /** Sends something as JSON. */
    public HttpResponse<String> post(String path, String json)
            throws IOException, InterruptedException {
        return send(
                request(path)
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(json)));
    }

    /** Begins a request of any kind. */
    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address() + path));
    }

    /** Sends a request. */
    public HttpResponse<String> send(HttpRequest.Builder request)
            throws IOException, InterruptedException {
        return send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a request and takes the answer in any form. */
    public <T> HttpResponse<T> send(
            HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler)
            throws IOException, InterruptedException {
        return CLIENT.send(request.build(), handler);
    }

    @Override
    public void close() {
        server.close();
    }
}
