package org.fandown.app.store;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.fandown.document.Names;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapper;

/**
 * The accounts of a site. Where there is one, there is an open one of a site manager: the first has
 * to be, and the last can neither be closed nor given another role. A change of role or password,
 * and closing, end all sessions of the account at once. Safe for use by several threads and
 * programs.
 */
public final class AccountStore {
    private static final String MANAGER = Names.kebab(Role.SITE_MANAGER);

    static final RowMapper<Account> ACCOUNT =
            (row, at) ->
                    new Account(
                            row.getLong("number"),
                            row.getString("name"),
                            role(row.getString("role")),
                            row.getString("made"),
                            row.getString("closed"));

    private final Jdbi jdbi;
    private final Database database;
    private final InstantSource clock;

    AccountStore(Jdbi jdbi, Database database, InstantSource clock) {
        this.jdbi = jdbi;
        this.database = database;
        this.clock = clock;
    }

    /**
     * An account and what its password is checked against.
     *
     * @param account whose
     * @param password what was made of the password; never shown
     */
    public record Credentials(Account account, String password) {}

    private static Role role(String name) {
        return Optional.ofNullable(Names.byKebab(Role.values()).get(name))
                .orElseThrow(
                        () -> new IllegalStateException("The store has a role '" + name + "'."));
    }

    /** What is the same of two names that are one account's, such as in another case. */
    public static String key(String name) {
        return AccountName.key(name);
    }

    /** Whether there is any account, open or closed: then nobody may do anything without one. */
    public boolean any() {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery("select number from account limit 1")
                                .mapTo(Long.class)
                                .findOne()
                                .isPresent());
    }

    /** All accounts, in the order they were added. */
    public List<Account> all() {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery("select * from account order by number")
                                .map(ACCOUNT)
                                .list());
    }

    /** An open account by its name, whatever the case. */
    public Optional<Credentials> open(String name) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery(
                                        "select * from account where name_key = :key and closed = ''")
                                .bind("key", AccountName.key(name))
                                .map(
                                        (row, context) ->
                                                new Credentials(
                                                        ACCOUNT.map(row, context),
                                                        row.getString("password")))
                                .findOne());
    }

    /** An account by its name, whatever the case. */
    public Optional<Account> byName(String name) {
        String key = AccountName.key(name);
        return all().stream().filter(a -> AccountName.key(a.name()).equals(key)).findFirst();
    }

    /**
     * Adds an account.
     *
     * @param name 1 to 64 signs that can be seen, not taken yet
     * @param role a site manager's if it is the first
     * @param password what was made of the password
     * @throws AccountException if that is refused
     */
    public void add(String name, Role role, String password) {
        String shown = AccountName.shown(name);
        change(
                handle ->
                        handle.createUpdate(
                                        "insert into account (name, name_key, role, password, made,"
                                                + " closed) values (:name, :key, :role, :password,"
                                                + " :now, '') on conflict (name_key) do nothing")
                                .bind("name", shown)
                                .bind("key", AccountName.key(shown))
                                .bind("role", Names.kebab(role))
                                .bind("password", password)
                                .bind("now", Moments.text(clock.instant()))
                                .execute(),
                "There is an account of this name already, open or closed. Next: take another name.");
    }

    /**
     * Gives an open account another role.
     *
     * @throws AccountException if there is none, or it is the last site manager's
     */
    public void setRole(long number, Role role) {
        set(number, "role", Names.kebab(role));
    }

    /**
     * Gives an open account another password.
     *
     * @param password what was made of it
     * @throws AccountException if there is none
     */
    public void setPassword(long number, String password) {
        set(number, "password", password);
    }

    /**
     * Closes an open account; nobody can log in with it again.
     *
     * @throws AccountException if there is none, or it is the last site manager's
     */
    public void close(long number) {
        set(number, "closed", Moments.text(clock.instant()));
    }

    private void set(long number, String column, String value) {
        change(
                handle -> {
                    SessionStore.endAll(handle, number);
                    return handle.createUpdate(
                                    "update account set "
                                            + column
                                            + " = :value where number = :number and closed = ''")
                            .bind("value", value)
                            .bind("number", number)
                            .execute();
                },
                "There is no such open account. Next: look at the list of accounts.");
    }

    /** One change at a time, and only if a site manager is left by it. */
    private void change(ToIntFunction<Handle> work, String refusal) {
        jdbi.useTransaction(
                handle -> {
                    database.claim(handle);
                    if (work.applyAsInt(handle) == 0) {
                        throw new AccountException(refusal);
                    }
                    requireManager(handle);
                });
    }

    private static void requireManager(Handle handle) {
        boolean left =
                handle.createQuery(
                                "select number from account where role = :role and closed = ''"
                                        + " limit 1")
                        .bind("role", MANAGER)
                        .mapTo(Long.class)
                        .findOne()
                        .isPresent();
        if (!left) {
            throw new AccountException(
                    "A site with accounts needs an open one of a site manager. Next: add one of"
                            + " another site manager first.");
        }
    }
}
