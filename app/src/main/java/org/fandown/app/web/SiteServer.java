package org.fandown.app.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.time.Duration;
import java.time.InstantSource;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnector;
import org.fandown.app.files.RulePacks;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.store.People;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreState;
import org.fandown.document.Json;
import org.fandown.document.Tree;

/** The running web server. */
public final class SiteServer implements AutoCloseable {
    private static final String OWN = "default-src 'self'; ";
    private static final String CLOSED =
            "base-uri 'none'; form-action 'none'; frame-ancestors 'none'; object-src 'none'";

    /** Pages run their own scripts alone; styles may be set by them; drawn pictures are data. */
    private static final String PAGE =
            OWN + "img-src 'self' data: blob:; style-src 'self' 'unsafe-inline'; " + CLOSED;

    /** The runtime of the core makes its functions from texts, which only the worker may. */
    private static final String WORKER = OWN + "script-src 'self' 'unsafe-eval'; " + CLOSED;

    private static final String WORKER_PATH = "/js/worker.js";

    /** How long requests in work may take when the server stops. */
    private static final Duration LAST_WORK = Duration.ofSeconds(20);

    private static final Duration LOOK_AGAIN = Duration.ofMillis(20);

    private static final String LENGTH = "length";
    private static final String ROOT = "/";
    private static final InstantSource CLOCK = InstantSource.system();

    private final SiteFiles files;
    private final Listening at;
    private final RecordStore store;
    private final People people;
    private final RecordApi records;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final AtomicInteger inWork = new AtomicInteger();
    private final Javalin server;

    private SiteServer(Listening at, RulePacks packs, Store store, Supplier<SiteKey> key) {
        files = SiteFiles.with(packs);
        this.at = at;
        this.store = store.records();
        people = store.people(CLOCK);
        records = new RecordApi(this.store, people.audit(), packs, key);
        server = Javalin.create(this::configure);
    }

    /**
     * Starts a server.
     *
     * @param at where it listens
     * @param packs the rule packs it shows
     * @param store where records and people are kept
     * @param key by what reports are signed; asked for when the first one is printed
     * @throws PortTakenException if the port is in use
     * @throws OpenSiteException if others could come to it and there is no account of a site
     *     manager
     */
    public static SiteServer start(
            Listening at, RulePacks packs, Store store, Supplier<SiteKey> key) {
        SiteServer made = new SiteServer(at, packs, store, key);
        if (at.isBeyondThisMachine() && !made.people.accounts().any()) {
            throw new OpenSiteException(at);
        }
        try {
            made.server.start(at.address().getHostAddress(), at.port());
        } catch (RuntimeException e) {
            throw new PortTakenException(at.port(), e);
        }
        EventLog.event("started", "port", made.server.port());
        return made;
    }

    /** The address to open. */
    public String address() {
        return at.publicUrl().map(URI::toString).orElseGet(this::ownAddress) + "/";
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    private String ownAddress() {
        String host = at.address().getHostAddress();
        boolean six = host.contains(":");
        return "http://" + (six ? "[" + host + "]" : host) + ":" + server.port();
    }

    /** The requests it answers, each by its method and the pattern of its path. */
    List<String> routes() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .filter(found -> found.endpoint.method.isHttpMethod())
                .map(found -> found.endpoint.method.name() + " " + found.endpoint.path)
                .toList();
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
        new Guard(access(), at, people, CLOCK).addTo(config.routes);
        config.routes.get("/api/health", this::health);
        config.http.maxRequestSize = (long) Bodies.MOST;
        config.routes.after(SiteServer::measure);
        config.requestLogger.http(this::note);
        records.addTo(config.routes);
        VehicleApi.addTo(config.routes);
        new LogInApi(people, new SessionCookie(at.isSecure()), CLOCK).addTo(config.routes);
        new AccountApi(people).addTo(config.routes);
        new AuditApi(people.audit()).addTo(config.routes);
        config.routes.get(ROOT, ctx -> send("/index.html", ctx));
        files.all().keySet().forEach(path -> config.routes.get(path, ctx -> send(path, ctx)));
    }

    /** Who may ask for what of this server. */
    Access access() {
        Set<String> open = new HashSet<>(files.all().keySet());
        open.add(ROOT);
        return new Access(open);
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
