package org.fandown.app.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnector;
import org.fandown.app.files.RulePacks;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.StoreState;
import org.fandown.document.Json;
import org.fandown.document.Tree;

/** The running web server. */
public final class SiteServer implements AutoCloseable {
    /** The one address it listens on. */
    public static final String HOST = "127.0.0.1";

    private static final String OWN = "default-src 'self'; ";
    private static final String CLOSED =
            "base-uri 'none'; form-action 'none'; frame-ancestors 'none'; object-src 'none'";

    /** Pages run their own scripts alone; styles may be set by them; drawn pictures are data. */
    private static final String PAGE =
            OWN + "img-src 'self' data: blob:; style-src 'self' 'unsafe-inline'; " + CLOSED;

    /** The runtime of the core makes its functions from texts, which only the worker may. */
    private static final String WORKER = OWN + "script-src 'self' 'unsafe-eval'; " + CLOSED;

    /** The most a device sends at once, with photos: 32 MiB. */
    private static final long MOST_BYTES = 32L * 1024 * 1024;

    private static final String WORKER_PATH = "/js/worker.js";

    /** How long requests in work may take when the server stops. */
    private static final Duration LAST_WORK = Duration.ofSeconds(20);

    private static final Duration LOOK_AGAIN = Duration.ofMillis(20);

    private static final String LENGTH = "length";

    private final SiteFiles files;
    private final RecordStore store;
    private final RecordApi records;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final AtomicInteger inWork = new AtomicInteger();
    private final Javalin server;

    private SiteServer(RulePacks packs, RecordStore store, Supplier<SiteKey> key) {
        files = SiteFiles.with(packs);
        this.store = store;
        records = new RecordApi(store, packs, key);
        server = Javalin.create(this::configure);
    }

    /**
     * Starts a server.
     *
     * @param port the port, 0 for any that is free
     * @param packs the rule packs it shows
     * @param store where records are kept
     * @param key by what reports are signed; asked for when the first one is printed
     * @throws PortTakenException if the port is in use
     */
    public static SiteServer start(
            int port, RulePacks packs, RecordStore store, Supplier<SiteKey> key) {
        SiteServer made = new SiteServer(packs, store, key);
        try {
            made.server.start(HOST, port);
        } catch (RuntimeException e) {
            throw new PortTakenException(port, e);
        }
        EventLog.event("started", "port", made.server.port());
        return made;
    }

    /** The address to open. */
    public String address() {
        return "http://" + HOST + ":" + server.port() + "/";
    }

    /** Lets requests in work end, and stops. */
    @Override
    public void close() {
        if (stopped.getAndSet(true)) {
            return;
        }
        letWorkEnd();
        server.stop();
        EventLog.event("stopped");
    }

    /** Lets nobody new in, and waits for the requests in work, also those still on their way. */
    private void letWorkEnd() {
        for (Connector connector : server.jettyServer().server().getConnectors()) {
            if (connector instanceof NetworkConnector listening) {
                listening.close();
            }
        }
        long until = System.nanoTime() + LAST_WORK.toNanos();
        while (inWork.get() > 0 && System.nanoTime() < until) {
            LockSupport.parkNanos(LOOK_AGAIN.toNanos());
        }
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.routes.before(ctx -> inWork.incrementAndGet());
        config.routes.before(SiteServer::protect);
        config.routes.before("/api/*", SiteServer::requireOwnPage);
        config.routes.get("/api/health", this::health);
        config.http.maxRequestSize = MOST_BYTES;
        config.routes.after(SiteServer::measure);
        config.requestLogger.http(this::note);
        records.addTo(config.routes);
        VehicleApi.addTo(config.routes);
        config.routes.get("/", ctx -> send("/index.html", ctx));
        files.all().keySet().forEach(path -> config.routes.get(path, ctx -> send(path, ctx)));
    }

    /** Notes how long the answer is while it is still there. */
    private static void measure(Context ctx) throws IOException {
        InputStream answer = ctx.resultInputStream();
        ctx.attribute(LENGTH, answer == null ? 0L : (long) answer.available());
    }

    private void note(Context ctx, float ms) {
        inWork.decrementAndGet();
        Long length = ctx.attribute(LENGTH);
        EventLog.request(
                ctx.method().name(),
                ctx.path(),
                ctx.statusCode(),
                Math.round(ms),
                length == null ? 0 : length);
    }

    private static void protect(Context ctx) {
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "no-referrer");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        boolean worker = ctx.path().equals(WORKER_PATH);
        ctx.header("Content-Security-Policy", worker ? WORKER : PAGE);
    }

    /** Another page that is open in the same browser can neither write here nor use our name. */
    private static void requireOwnPage(Context ctx) {
        String host = Optional.ofNullable(ctx.header(Header.HOST)).orElse("");
        String origin = ctx.header(Header.ORIGIN);
        boolean local = host.startsWith(HOST + ":") || host.startsWith("localhost:");
        if (!local || (origin != null && !origin.equals("http://" + host))) {
            throw new ForbiddenResponse("Only pages of this server may ask.");
        }
    }

    private void health(Context ctx) {
        StoreState state = store.state();
        ctx.status(state.works() ? HttpStatus.OK : HttpStatus.SERVICE_UNAVAILABLE);
        ctx.contentType("application/json");
        ctx.result(
                Json.write(
                        Tree.map()
                                .put("status", state.works() ? "up" : "down")
                                .put("site", files.version())
                                .put(
                                        "store",
                                        Tree.map()
                                                .put("status", state.works() ? "works" : "fails")
                                                .put("records", state.records()))
                                .build()));
    }

    private void send(String path, Context ctx) {
        SiteFile file = Optional.ofNullable(files.all().get(path)).orElseThrow();
        ctx.header(Header.ETAG, file.tag());
        ctx.header(Header.CACHE_CONTROL, "no-cache");
        ctx.header(Header.VARY, "Accept-Encoding");
        if (file.tag().equals(ctx.header(Header.IF_NONE_MATCH))) {
            ctx.status(HttpStatus.NOT_MODIFIED);
            return;
        }
        String accepts = Optional.ofNullable(ctx.header(Header.ACCEPT_ENCODING)).orElse("");
        boolean packed = file.isPacked() && accepts.contains("gzip");
        ctx.contentType(file.type());
        if (packed) {
            ctx.header(Header.CONTENT_ENCODING, "gzip");
        }
        ctx.result(packed ? file.packed() : file.bytes());
    }
}
