package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import org.fandown.app.store.Account;
import org.fandown.app.store.AccountException;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.AuditTrail;
import org.fandown.app.store.People;
import org.fandown.app.store.Role;
import org.fandown.app.store.SessionStore;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What every store owes of accounts, sessions and the audit trail, whatever database is below. */
abstract class PeopleContract {
    private static final Instant START = Instant.parse("2026-11-30T06:00:00Z");

    private final List<Store> opened = new ArrayList<>();
    private final AtomicReference<Instant> now = new AtomicReference<>(START);

    /** Opens the one store of this test, as often as it is asked. */
    abstract Store openStore();

    /** A connection to its database by the side of the store. */
    abstract Connection besideIt() throws SQLException;

    private People people() {
        Store store = openStore();
        opened.add(store);
        return store.people(now::get);
    }

    @AfterEach
    void close() {
        opened.forEach(Store::close);
    }

    private static Account add(People people, String name, Role role) {
        people.accounts().add(name, role, "kept of " + name);
        return people.accounts().byName(name).orElseThrow();
    }

    private void after(Duration time) {
        now.set(now.get().plus(time));
    }

    @Test
    void first_account_is_a_site_managers_and_then_there_are_accounts() {
        People people = people();
        assertThat(people.accounts().any()).isFalse();
        assertThatThrownBy(() -> add(people, "Ines", Role.INSTRUCTOR))
                .isInstanceOf(AccountException.class)
                .hasMessageContaining("site manager");
        assertThat(people.accounts().any()).isFalse();
        assertThat(people.accounts().all()).isEmpty();
        assertThat(add(people, "Ines", Role.SITE_MANAGER))
                .isEqualTo(
                        new Account(
                                people.accounts().all().get(0).number(),
                                "Ines",
                                Role.SITE_MANAGER,
                                "2026-11-30T06:00:00.000Z",
                                ""));
        assertThat(people.accounts().any()).isTrue();
        assertThat(people().accounts().any()).isTrue();
    }

    @Test
    void last_site_manager_can_neither_be_closed_nor_be_something_else() {
        People people = people();
        Account ines = add(people, "Ines", Role.SITE_MANAGER);
        Account omar = add(people, "Omar", Role.DRIVER);
        assertThatThrownBy(() -> people.accounts().close(ines.number()))
                .hasMessageContaining("add one of another site manager");
        assertThatThrownBy(() -> people.accounts().setRole(ines.number(), Role.DRIVER))
                .hasMessageContaining("add one of another site manager");
        people.accounts().setRole(omar.number(), Role.SITE_MANAGER);
        people.accounts().close(ines.number());
        assertThat(people.accounts().open("Ines")).isEmpty();
        assertThat(people.accounts().byName("ines").orElseThrow().closed())
                .isEqualTo("2026-11-30T06:00:00.000Z");
        assertThatThrownBy(() -> people.accounts().close(omar.number()))
                .isInstanceOf(AccountException.class);
        assertThatThrownBy(() -> people.accounts().setRole(ines.number(), Role.SITE_MANAGER))
                .hasMessageContaining("no such open account");
        assertThatThrownBy(() -> people.accounts().setPassword(99, "x"))
                .hasMessageContaining("no such open account");
    }

    @Test
    void of_two_site_managers_who_close_one_another_at_the_same_time_one_stays() throws Exception {
        People people = people();
        Account ines = add(people, "Ines", Role.SITE_MANAGER);
        Account omar = add(people, "Omar", Role.SITE_MANAGER);
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            People other = people();
            threads.invokeAll(
                    List.<Callable<Void>>of(
                            () -> {
                                people.accounts().close(ines.number());
                                return null;
                            },
                            () -> {
                                other.accounts().close(omar.number());
                                return null;
                            }));
        } finally {
            threads.shutdown();
        }
        assertThat(people.accounts().all()).filteredOn(Account::isOpen).hasSize(1);
    }

    @Test
    void name_is_taken_whatever_its_case_or_way_of_writing_and_stays_so() {
        People people = people();
        add(people, "Ines Marlowe", Role.SITE_MANAGER);
        Account zoe = add(people, "Zoe\u0308  Straße", Role.LEARNER);
        assertThat(zoe.name()).isEqualTo("Zo\u00eb Straße");
        people.accounts().close(zoe.number());
        for (String same : List.of("ines marlowe", " INES  MARLOWE ", "ZO\u00cb STRASSE")) {
            assertThatThrownBy(() -> add(people, same, Role.LEARNER))
                    .as(same)
                    .hasMessageContaining("already");
        }
        assertThat(people.accounts().open("INES MARLOWE").orElseThrow().password())
                .isEqualTo("kept of Ines Marlowe");
        assertThat(people.accounts().open("x' or '1'='1")).isEmpty();
    }

    @Test
    void name_that_cannot_be_seen_or_is_too_long_is_refused() {
        People people = people();
        for (String bad : List.of("", "  ", "a\nb", "a\u202eb", "a\u0000b", "x".repeat(65))) {
            assertThatThrownBy(() -> add(people, bad, Role.SITE_MANAGER))
                    .isInstanceOf(AccountException.class)
                    .hasMessageContaining("1 to 64");
        }
        add(people, "x".repeat(64), Role.SITE_MANAGER);
    }

    @Test
    void session_is_known_by_its_token_which_the_store_does_not_have() throws Exception {
        People people = people();
        Account ines = add(people, "Ines", Role.SITE_MANAGER);
        String token = people.sessions().begin(ines.number());
        assertThat(token).matches("[A-Za-z0-9_-]{43}");
        assertThat(people.sessions().begin(ines.number())).isNotEqualTo(token);
        assertThat(people().sessions().account(token)).contains(ines);
        assertThat(people.sessions().account(token + "x")).isEmpty();
        assertThat(people.sessions().account("")).isEmpty();
        try (Connection by = besideIt();
                var rows = by.createStatement().executeQuery("select * from session")) {
            assertThat(rows.next()).isTrue();
            for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                assertThat(rows.getString(i)).doesNotContain(token);
            }
        }
        people.sessions().end(token);
        assertThat(people.sessions().account(token)).isEmpty();
    }

    @Test
    void session_ends_when_it_is_not_used_and_at_last_anyway() {
        People people = people();
        Account ines = add(people, "Ines", Role.SITE_MANAGER);
        String idle = people.sessions().begin(ines.number());
        after(SessionStore.IDLE.minusSeconds(1));
        assertThat(people.sessions().account(idle)).isPresent();
        after(SessionStore.IDLE.minusSeconds(1));
        assertThat(people.sessions().account(idle)).as("used in between").isPresent();
        after(SessionStore.IDLE);
        assertThat(people.sessions().account(idle)).isEmpty();

        String used = people.sessions().begin(ines.number());
        Instant end = now.get().plus(SessionStore.WHOLE);
        while (now.get().plus(Duration.ofHours(6)).isBefore(end)) {
            after(Duration.ofHours(6));
            assertThat(people.sessions().account(used)).isPresent();
        }
        now.set(end);
        assertThat(people.sessions().account(used)).isEmpty();
    }

    @Test
    void every_session_of_an_account_ends_when_the_account_changes() {
        People people = people();
        add(people, "Ines", Role.SITE_MANAGER);
        Account omar = add(people, "Omar", Role.DRIVER);
        String ines = people.sessions().begin(people.accounts().all().get(0).number());
        List<Runnable> changes =
                List.of(
                        () -> people.accounts().setPassword(omar.number(), "another"),
                        () -> people.accounts().setRole(omar.number(), Role.MECHANIC),
                        () -> people.accounts().close(omar.number()));
        for (Runnable change : changes) {
            String here = people.sessions().begin(omar.number());
            String there = people.sessions().begin(omar.number());
            assertThat(people.sessions().account(there)).isPresent();
            change.run();
            assertThat(people.sessions().account(here)).isEmpty();
            assertThat(people.sessions().account(there)).isEmpty();
        }
        assertThat(people.sessions().account(ines)).isPresent();
    }

    @Test
    void refused_change_ends_no_session() {
        People people = people();
        Account ines = add(people, "Ines", Role.SITE_MANAGER);
        String token = people.sessions().begin(ines.number());
        assertThatThrownBy(() -> people.accounts().close(ines.number()))
                .isInstanceOf(AccountException.class);
        assertThat(people.sessions().account(token)).isPresent();
    }

    @Test
    void account_has_so_many_sessions_and_the_oldest_ends() {
        People people = people();
        Account ines = add(people, "Ines", Role.SITE_MANAGER);
        List<String> tokens = new ArrayList<>();
        for (int i = 0; i <= SessionStore.MOST_OF_ONE; i++) {
            after(Duration.ofSeconds(1));
            tokens.add(people.sessions().begin(ines.number()));
        }
        assertThat(people.sessions().account(tokens.get(0))).isEmpty();
        assertThat(people.sessions().account(tokens.get(1))).isPresent();
        assertThat(people.sessions().account(tokens.get(SessionStore.MOST_OF_ONE))).isPresent();
    }

    @Test
    void audit_trail_grows_and_can_be_neither_changed_nor_shortened() throws Exception {
        People people = people();
        AuditEntry in = new AuditEntry("Ines", "log-in", "", "192.0.2.7", AuditEntry.DONE);
        AuditEntry out = new AuditEntry("Ines", "log-out", "", "192.0.2.7", AuditEntry.DONE);
        people.audit().note(List.of(in));
        after(Duration.ofMinutes(5));
        people.audit().note(List.of(out));
        people.audit().note(List.of());
        List<AuditTrail.Noted> all = people.audit().before(Long.MAX_VALUE);
        assertThat(all).extracting(AuditTrail.Noted::entry).containsExactly(out, in);
        assertThat(all)
                .extracting(AuditTrail.Noted::moment)
                .containsExactly("2026-11-30T06:05:00.000Z", "2026-11-30T06:00:00.000Z");
        assertThat(people.audit().before(all.get(0).number()))
                .extracting(AuditTrail.Noted::entry)
                .containsExactly(in);
        try (Connection by = besideIt();
                var statement = by.createStatement()) {
            assertThatThrownBy(() -> statement.execute("update audit set who = 'x'"))
                    .hasMessageContaining("never changed");
            assertThatThrownBy(() -> statement.execute("delete from audit"))
                    .hasMessageContaining("never shortened");
        }
    }

    @Test
    void account_is_never_deleted() throws Exception {
        add(people(), "Ines", Role.SITE_MANAGER);
        try (Connection by = besideIt();
                var statement = by.createStatement()) {
            assertThatThrownBy(() -> statement.execute("delete from account"))
                    .hasMessageContaining("never deleted");
        }
    }
}
