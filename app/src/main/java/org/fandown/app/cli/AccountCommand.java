package org.fandown.app.cli;

import java.util.Map;
import org.fandown.app.store.Account;
import org.fandown.app.store.Role;
import org.fandown.document.Names;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code account}: who may log in to the pages. */
@Command(
        name = "account",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "(add | list | set-role | set-password | close)",
        description = {
            "Says who may log in to the pages, also while they are in use.",
            "Without any account, whoever is at this machine may do all, and nobody else can come.",
            "Roles: learner, driver, instructor, mechanic, site-manager. The first account is a site"
                    + " manager's. Passwords are asked for twice and not shown, or are the first"
                    + " line of standard input."
        },
        footer = {"", "Exit codes: 0 done, 2 bad usage, or what was asked is refused."})
final class AccountCommand implements Runnable {
    private static final String ROLE = "learner, driver, instructor, mechanic or site-manager";
    private static final Map<String, Role> ROLES = Names.byKebab(Role.values());

    @Spec private CommandSpec spec;

    private AccountCommand() {}

    @Override
    public void run() {
        throw bad("What about accounts? Allowed: add, list, set-role, set-password, close.");
    }

    @Command(
            name = "add",
            mixinStandardHelpOptions = true,
            description = "Adds an account; asks for its password.")
    int add(
            @Parameters(paramLabel = "NAME", description = "how the person is called") String name,
            @Option(names = "--role", required = true, paramLabel = "ROLE", description = ROLE)
                    String role,
            @Mixin StoreOptions store) {
        Role given = role(role);
        try (AccountWork work = work(store)) {
            work.add(name, given, TypedPassword.ask(spec.commandLine()));
        }
        return done(name + " can log in as " + given.title() + ".");
    }

    @Command(
            name = "list",
            mixinStandardHelpOptions = true,
            description = "Lists all accounts, the closed ones too.")
    int list(@Mixin StoreOptions store) {
        TextTable table = new TextTable();
        try (AccountWork work = work(store)) {
            for (Account account : work.all()) {
                table.add(
                        account.name(),
                        account.role().title(),
                        "added " + account.made(),
                        account.isOpen() ? "open" : "closed " + account.closed());
            }
        }
        Screen screen = new Screen(spec.commandLine().getOut());
        screen.table(table);
        screen.done();
        return table.isEmpty()
                ? done("There is no account: whoever is at this machine may do all.")
                : ExitCode.DONE;
    }

    @Command(
            name = "set-role",
            mixinStandardHelpOptions = true,
            description = "Gives an account another role, and logs it out everywhere.")
    int setRole(
            @Parameters(paramLabel = "NAME", description = "name of the account") String name,
            @Option(names = "--role", required = true, paramLabel = "ROLE", description = ROLE)
                    String role,
            @Mixin StoreOptions store) {
        Role given = role(role);
        try (AccountWork work = work(store)) {
            work.setRole(name, given);
        }
        return done(name + " is " + given.title() + " now.");
    }

    @Command(
            name = "set-password",
            mixinStandardHelpOptions = true,
            description = "Gives an account another password, and logs it out everywhere.")
    int setPassword(
            @Parameters(paramLabel = "NAME", description = "name of the account") String name,
            @Mixin StoreOptions store) {
        try (AccountWork work = work(store)) {
            work.setPassword(name, () -> TypedPassword.ask(spec.commandLine()));
        }
        return done(name + " has another password now.");
    }

    @Command(
            name = "close",
            mixinStandardHelpOptions = true,
            description =
                    "Closes an account for good. It stays in the list, and its name is taken.")
    int close(
            @Parameters(paramLabel = "NAME", description = "name of the account") String name,
            @Mixin StoreOptions store) {
        try (AccountWork work = work(store)) {
            work.closeAccount(name);
        }
        return done("The account of " + name + " is closed.");
    }

    private AccountWork work(StoreOptions store) {
        return new AccountWork(spec.commandLine(), store.open(spec.commandLine()));
    }

    private Role role(String name) {
        Role role = ROLES.get(name);
        if (role == null) {
            throw bad("'" + name + "' is no role. Allowed: " + ROLE + ".");
        }
        return role;
    }

    private int done(String text) {
        Screen screen = new Screen(spec.commandLine().getOut());
        screen.line(text);
        screen.done();
        return ExitCode.DONE;
    }

    private ParameterException bad(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
