package org.fandown.contract.people;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.fandown.app.keys.Passwords;
import org.fandown.app.store.AccountStore;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.AuditTrail;
import org.fandown.app.store.Role;
import org.fandown.app.store.Store;
import org.fandown.app.web.Listening;
import org.fandown.browser.RunningSite;

/** The real server of a site with an account of each role, called by the role's title. */
public final class PeopleSite implements AutoCloseable {
    /** The password of everybody. */
    public static final String PASSWORD = "seven loose gravel stones";

    private static final String KEPT = Passwords.kept(PASSWORD);

    private final Path folder;
    private final RunningSite site;

    private PeopleSite(Path folder, Listening at) {
        this.folder = folder;
        try (Store store = Store.inFolder(folder)) {
            AccountStore accounts = store.people(InstantSource.system()).accounts();
            accounts.add(Role.SITE_MANAGER.title(), Role.SITE_MANAGER, KEPT);
            for (Role role : List.of(Role.LEARNER, Role.DRIVER, Role.INSTRUCTOR, Role.MECHANIC)) {
                accounts.add(role.title(), role, KEPT);
            }
        }
        site = RunningSite.in(folder, at);
    }

    /** Starts one on this machine alone. */
    public static PeopleSite in(Path folder) {
        return new PeopleSite(folder, Listening.here(0));
    }

    /** Starts one that listens elsewhere, or has a public address. */
    static PeopleSite in(Path folder, Listening at) {
        return new PeopleSite(folder, at);
    }

    /** The server. */
    public RunningSite site() {
        return site;
    }

    /** Somebody who is not logged in. */
    public Person nobody() {
        return new Person(site);
    }

    /** Somebody of a role, logged in. */
    public Person as(Role role) throws Exception {
        Person person = nobody();
        person.logIn(role.title(), PASSWORD);
        return person;
    }

    /** The audit trail, the newest first. */
    List<AuditEntry> audit() {
        try (Store store = Store.inFolder(folder)) {
            return store.people(InstantSource.system()).audit().before(Long.MAX_VALUE).stream()
                    .map(AuditTrail.Noted::entry)
                    .toList();
        }
    }

    /** The names and roles of all accounts. */
    List<String> accounts() {
        try (Store store = Store.inFolder(folder)) {
            return store.people(InstantSource.system()).accounts().all().stream()
                    .map(account -> account.name() + ", " + account.role() + account.closed())
                    .toList();
        }
    }

    @Override
    public void close() {
        site.close();
    }
}
