package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import io.javalin.http.TooManyRequestsResponse;
import io.javalin.http.UnauthorizedResponse;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import org.fandown.app.keys.Passwords;
import org.fandown.app.store.Account;
import org.fandown.app.store.AccountStore;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.People;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Tree;

/** Logging in and out, and who one is. */
final class LogInApi {
    private static final int FREE_OF_A_NAME = 5;

    /** Behind one address may be a whole class. */
    private static final int FREE_OF_AN_ADDRESS = 30;

    private final People people;
    private final SessionCookie cookie;
    private final GrowingWait names;
    private final GrowingWait addresses;

    LogInApi(People people, SessionCookie cookie, InstantSource clock) {
        this.people = people;
        this.cookie = cookie;
        names = new GrowingWait(FREE_OF_A_NAME, clock);
        addresses = new GrowingWait(FREE_OF_AN_ADDRESS, clock);
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/me", this::me);
        routes.post("/api/log-in", this::logIn);
        routes.post("/api/log-out", this::logOut);
        routes.post("/api/me/password", this::setPassword);
    }

    private record Tried(String name, String password) {}

    private void me(Context ctx) {
        Caller caller = Caller.of(ctx);
        answer(ctx, caller.alone(), caller.account(), caller.token());
    }

    private static void answer(Context ctx, boolean alone, Optional<Account> who, String token) {
        Tree.MapBuilder map = Tree.map().put("accounts", !alone);
        who.ifPresent(
                account ->
                        map.put("name", account.name())
                                .put("role", Names.kebab(account.role()))
                                .put("token", SessionCookie.second(token)));
        ctx.contentType("application/json");
        ctx.result(Json.writeCompact(map.build()));
    }

    private void logIn(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tried tried = Bodies.form(ctx, f -> new Tried(f.text("name"), f.text("password")));
        if (caller.alone()) {
            throw new ConflictResponse("This site has no accounts; nobody needs to log in.");
        }
        String name = AccountStore.key(tried.name());
        String address = Source.counted(caller.source());
        hold(ctx, names.begin(name));
        hold(ctx, addresses.begin(address));
        Optional<AccountStore.Credentials> found = people.accounts().open(tried.name());
        Notes notes = new Notes(caller);
        if (!isRight(found, tried.password())) {
            // What was typed as a name is not noted where it is none: it may be a password.
            notes.add("log-in", found.map(f -> f.account().name()).orElse(""), "refused")
                    .keepIn(people.audit());
            throw new UnauthorizedResponse("Name or password is wrong. Next: try again.");
        }
        names.forget(name);
        addresses.takeBack(address);
        begin(ctx, found.orElseThrow().account());
        notes.add("log-in", found.orElseThrow().account().name(), AuditEntry.DONE)
                .keepIn(people.audit());
    }

    /** Takes the same time whether there is an account or not. */
    private static boolean isRight(Optional<AccountStore.Credentials> found, String password) {
        if (found.isEmpty()) {
            Passwords.spend(password);
            return false;
        }
        return Passwords.fits(password, found.orElseThrow().password());
    }

    /** A new session, whatever the device showed before. */
    private void begin(Context ctx, Account account) {
        cookie.token(ctx).ifPresent(people.sessions()::end);
        String token = people.sessions().begin(account.number());
        cookie.give(ctx, token);
        answer(ctx, false, Optional.of(account), token);
    }

    private static void hold(Context ctx, long wait) {
        if (wait > 0) {
            long seconds = Duration.ofMillis(wait).toSeconds() + 1;
            ctx.header(Header.RETRY_AFTER, String.valueOf(seconds));
            throw new TooManyRequestsResponse(
                    "Too many tries. Next: wait " + seconds + " s, then try again.");
        }
    }

    private void logOut(Context ctx) {
        Caller caller = Caller.of(ctx);
        if (!caller.alone()) {
            people.sessions().end(caller.token());
            new Notes(caller).add("log-out", caller.name(), AuditEntry.DONE).keepIn(people.audit());
        }
        cookie.takeAway(ctx);
        ctx.status(HttpStatus.NO_CONTENT);
    }

    private record Change(String old, String fresh) {}

    /** Another password for oneself; all sessions end, and a new one begins here. */
    private void setPassword(Context ctx) {
        Caller caller = Caller.of(ctx);
        Change change = Bodies.form(ctx, f -> new Change(f.text("old"), f.text("new")));
        Account self =
                caller.account()
                        .orElseThrow(() -> new ConflictResponse("This site has no accounts."));
        String name = AccountStore.key(self.name());
        hold(ctx, names.begin(name));
        if (!isRight(people.accounts().open(self.name()), change.old())) {
            throw new ForbiddenResponse("The old password is wrong. Next: try again.");
        }
        names.forget(name);
        Passwords.problem(change.fresh(), self.name())
                .ifPresent(
                        problem -> {
                            throw new BadRequestResponse(problem);
                        });
        people.accounts().setPassword(self.number(), Passwords.kept(change.fresh()));
        begin(ctx, self);
        new Notes(caller)
                .add("account-password", self.name(), AuditEntry.DONE)
                .keepIn(people.audit());
    }
}
