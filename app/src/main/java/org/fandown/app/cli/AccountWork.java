package org.fandown.app.cli;

import java.time.InstantSource;
import java.util.List;
import java.util.function.Supplier;
import org.fandown.app.keys.Passwords;
import org.fandown.app.store.Account;
import org.fandown.app.store.AccountException;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.People;
import org.fandown.app.store.Role;
import org.fandown.app.store.Store;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Changes accounts and notes that in the audit trail, or says why not. */
final class AccountWork implements AutoCloseable {
    private final CommandLine command;
    private final Store store;
    private final People people;

    AccountWork(CommandLine command, Store store) {
        this.command = command;
        this.store = store;
        this.people = store.people(InstantSource.system());
    }

    List<Account> all() {
        return people.accounts().all();
    }

    void add(String name, Role role, String password) {
        String kept = kept(password, name);
        trying(() -> people.accounts().add(name, role, kept));
        note("account-add", name + ", " + role.title());
    }

    void setRole(String name, Role role) {
        Account account = account(name);
        trying(() -> people.accounts().setRole(account.number(), role));
        note("account-role", account.name() + ", " + role.title());
    }

    /** Asks for the password once it is known that there is such an account. */
    void setPassword(String name, Supplier<String> password) {
        Account account = account(name);
        String kept = kept(password.get(), account.name());
        trying(() -> people.accounts().setPassword(account.number(), kept));
        note("account-password", account.name());
    }

    void closeAccount(String name) {
        Account account = account(name);
        trying(() -> people.accounts().close(account.number()));
        note("account-close", account.name());
    }

    @Override
    public void close() {
        store.close();
    }

    private Account account(String name) {
        return people.accounts()
                .byName(name)
                .orElseThrow(
                        () ->
                                bad(
                                        "There is no account '"
                                                + name
                                                + "'. Next: 'fandown account list' shows them.",
                                        null));
    }

    private String kept(String password, String name) {
        Passwords.problem(password, name)
                .ifPresent(
                        problem -> {
                            throw bad(problem, null);
                        });
        return Passwords.kept(password);
    }

    private void trying(Runnable change) {
        try {
            change.run();
        } catch (AccountException e) {
            throw bad(String.valueOf(e.getMessage()), e);
        }
    }

    private void note(String act, String about) {
        String from = AuditEntry.COMMAND_LINE;
        people.audit().note(List.of(new AuditEntry(from, act, about, from, AuditEntry.DONE)));
    }

    private ParameterException bad(String message, @Nullable Throwable why) {
        return new ParameterException(command, message, why);
    }
}
