package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.fandown.app.keys.Passwords;
import org.fandown.app.store.Account;
import org.fandown.app.store.AccountException;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.People;
import org.fandown.app.store.Role;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Tree;

/** What site managers do with accounts. */
final class AccountApi {
    private final People people;

    AccountApi(People people) {
        this.people = people;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/accounts", this::list);
        routes.post("/api/accounts", this::add);
        routes.post("/api/accounts/{number}/role", this::setRole);
        routes.post("/api/accounts/{number}/password", this::setPassword);
        routes.post("/api/accounts/{number}/close", this::close);
        routes.exception(
                AccountException.class,
                (e, ctx) -> {
                    ctx.status(HttpStatus.BAD_REQUEST);
                    ctx.contentType("text/plain; charset=utf-8");
                    ctx.result(String.valueOf(e.getMessage()));
                });
    }

    private record New(String name, Role role, String password) {}

    private void list(Context ctx) {
        Tree.ListBuilder list = Tree.list();
        for (Account account : people.accounts().all()) {
            Tree.MapBuilder map =
                    Tree.map()
                            .put("number", account.number())
                            .put("name", account.name())
                            .put("role", Names.kebab(account.role()))
                            .put("made", account.made());
            list.add(account.isOpen() ? map : map.put("closed", account.closed()));
        }
        json(ctx, Tree.map().put("accounts", list).build());
    }

    private void add(Context ctx) {
        New made =
                Bodies.form(
                        ctx,
                        f ->
                                new New(
                                        f.text("name"),
                                        f.choice("role", Role.values()),
                                        f.text("password")));
        people.accounts().add(made.name(), made.role(), kept(made.password(), made.name()));
        note(ctx, "account-add", made.name() + ", " + made.role().title());
        ctx.status(HttpStatus.CREATED);
    }

    private void setRole(Context ctx) {
        Account account = account(ctx);
        Role role = Bodies.form(ctx, f -> f.choice("role", Role.values()));
        people.accounts().setRole(account.number(), role);
        note(ctx, "account-role", account.name() + ", " + role.title());
        ctx.status(HttpStatus.NO_CONTENT);
    }

    private void setPassword(Context ctx) {
        Account account = account(ctx);
        String password = Bodies.form(ctx, f -> f.text("password"));
        people.accounts().setPassword(account.number(), kept(password, account.name()));
        note(ctx, "account-password", account.name());
        ctx.status(HttpStatus.NO_CONTENT);
    }

    private void close(Context ctx) {
        Account account = account(ctx);
        people.accounts().close(account.number());
        note(ctx, "account-close", account.name());
        ctx.status(HttpStatus.NO_CONTENT);
    }

    private static String kept(String password, String name) {
        Passwords.problem(password, name)
                .ifPresent(
                        problem -> {
                            throw new BadRequestResponse(problem);
                        });
        return Passwords.kept(password);
    }

    private Account account(Context ctx) {
        String number = ctx.pathParam("number");
        return people.accounts().all().stream()
                .filter(account -> String.valueOf(account.number()).equals(number))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("There is no such account."));
    }

    private void note(Context ctx, String act, String about) {
        new Notes(Caller.of(ctx)).add(act, about, AuditEntry.DONE).keepIn(people.audit());
    }

    private static void json(Context ctx, Node node) {
        ctx.contentType("application/json");
        ctx.result(Json.writeCompact(node));
    }
}
