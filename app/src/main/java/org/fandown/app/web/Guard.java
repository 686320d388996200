package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.Header;
import io.javalin.http.TooManyRequestsResponse;
import io.javalin.http.UnauthorizedResponse;
import io.javalin.router.Endpoint;
import java.time.InstantSource;
import java.util.Optional;
import org.fandown.app.store.Account;
import org.fandown.app.store.People;

/**
 * Sees every request before it is worked on, and lets in what {@link Access} allows. While a site
 * has no account, whoever is at this machine may do all that is in the table; from the first
 * account on, nobody may do anything that is not allowed.
 */
final class Guard {
    private static final String API = "/api/";

    /** A page asks a few times when it is opened; a device that comes back sends in batches. */
    private static final double AT_ONCE = 300;

    private static final double A_SECOND = 30;

    private final Access access;
    private final Listening at;
    private final Origins origins;
    private final SessionCookie cookie;
    private final People people;
    private final Pace pace;

    /** Accounts are never deleted: once there is one, there always is. */
    private volatile boolean accounts;

    Guard(Access access, Listening at, People people, InstantSource clock) {
        this.access = access;
        this.at = at;
        this.origins = new Origins(at);
        this.cookie = new SessionCookie(at.isSecure());
        this.people = people;
        this.pace = new Pace(AT_ONCE, A_SECOND, clock);
    }

    void addTo(RoutesConfig routes) {
        routes.before(API + "*", origins::require);
        routes.before(API + "*", ctx -> ctx.header(Header.CACHE_CONTROL, "no-store"));
        routes.beforeMatched(this::check);
    }

    private void check(Context ctx) {
        Endpoint endpoint = ctx.endpoints().matchedHttpEndpoint();
        if (endpoint == null) {
            throw new ForbiddenResponse("Nobody may ask for this.");
        }
        Access.Entry entry =
                access.entry(endpoint.method.name(), endpoint.path)
                        .orElseThrow(() -> new ForbiddenResponse("Nobody may ask for this."));
        if (!endpoint.path.startsWith(API)) {
            return;
        }
        Caller caller = caller(ctx);
        caller.putInto(ctx);
        if (caller.alone()) {
            Origins.requireDirect(ctx);
        } else {
            check(ctx, caller, entry, !endpoint.method.equals(HandlerType.GET));
        }
    }

    private void check(Context ctx, Caller caller, Access.Entry entry, boolean changes) {
        boolean known = caller.account().isPresent();
        if (!pace.lets(known ? caller.token() : Source.counted(caller.source()))) {
            ctx.header(Header.RETRY_AFTER, "1");
            throw new TooManyRequestsResponse("Too many requests. Next: wait a moment.");
        }
        if (!entry.allows(caller.role())) {
            if (known) {
                throw new ForbiddenResponse("The role of your account does not allow this.");
            }
            throw new UnauthorizedResponse("Nobody is logged in here. Next: log in.");
        }
        if (changes && known && !SessionCookie.isShown(ctx, caller.token())) {
            throw new ForbiddenResponse("Only pages of this server may change something.");
        }
    }

    private Caller caller(Context ctx) {
        String source = Source.of(ctx, at);
        if (!hasAccounts()) {
            return new Caller(Optional.empty(), "", true, source);
        }
        String token = cookie.token(ctx).orElse("");
        Optional<Account> account =
                token.isEmpty() ? Optional.empty() : people.sessions().account(token);
        return new Caller(account, account.isPresent() ? token : "", false, source);
    }

    private boolean hasAccounts() {
        if (!accounts) {
            accounts = people.accounts().any();
        }
        return accounts;
    }
}
