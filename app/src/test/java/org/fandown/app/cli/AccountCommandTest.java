package org.fandown.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.keys.Passwords;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.AuditTrail;
import org.fandown.app.store.People;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AccountCommandTest {
    private static final String FIRST = "seven loose gravel stones";
    private static final String SECOND = "eight loose gravel stones";

    @TempDir private Path folder;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String typed, String... verb) {
        List<String> args = new ArrayList<>(List.of("account"));
        args.addAll(List.of(verb));
        args.addAll(List.of("--data", folder.toString()));
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
            return FandownCommand.run(
                    new PrintWriter(out, true),
                    new PrintWriter(err, true),
                    args.toArray(String[]::new));
        } finally {
            System.setIn(before);
        }
    }

    private List<AuditEntry> audit() {
        try (Store store = Store.inFolder(folder)) {
            return store.people(InstantSource.system()).audit().before(Long.MAX_VALUE).stream()
                    .map(AuditTrail.Noted::entry)
                    .toList();
        }
    }

    private boolean fits(String name, String password) {
        try (Store store = Store.inFolder(folder)) {
            People people = store.people(InstantSource.system());
            return Passwords.fits(password, people.accounts().open(name).orElseThrow().password());
        }
    }

    @Test
    void accounts_are_added_listed_changed_and_closed_and_all_is_noted() {
        assertThat(run("", "list")).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).contains("There is no account");
        assertThat(run(FIRST + "\n", "add", "Ines Marlowe", "--role", "site-manager"))
                .isEqualTo(ExitCode.DONE);
        assertThat(run(FIRST + "\n", "add", "Omar", "--role", "learner")).isEqualTo(ExitCode.DONE);
        assertThat(run("", "set-role", "omar", "--role", "driver")).isEqualTo(ExitCode.DONE);
        assertThat(fits("Omar", FIRST)).isTrue();
        assertThat(run(SECOND, "set-password", "Omar")).isEqualTo(ExitCode.DONE);
        assertThat(fits("Omar", FIRST)).isFalse();
        assertThat(fits("Omar", SECOND)).isTrue();
        assertThat(run("", "close", "Omar")).isEqualTo(ExitCode.DONE);
        out.getBuffer().setLength(0);
        assertThat(run("", "list")).isEqualTo(ExitCode.DONE);
        assertThat(out.toString())
                .containsPattern("Ines Marlowe +site manager +added .* open")
                .containsPattern("Omar +driver +added .* closed ");
        assertThat(audit())
                .extracting(AuditEntry::act)
                .containsExactly(
                        "account-close",
                        "account-password",
                        "account-role",
                        "account-add",
                        "account-add");
        assertThat(audit())
                .allSatisfy(
                        entry -> {
                            assertThat(entry.who()).isEqualTo(AuditEntry.COMMAND_LINE);
                            assertThat(entry.toString()).doesNotContain("gravel");
                        });
        assertThat(out.toString() + err).doesNotContain("gravel");
    }

    @Test
    void what_cannot_be_is_refused_with_what_to_do_and_nothing_is_noted() {
        refused("site manager", FIRST, "add", "Omar", "--role", "driver");
        refused("no role", FIRST, "add", "Omar", "--role", "boss");
        refused("10 to 200", "short", "add", "Omar", "--role", "site-manager");
        refused("There is no password", "", "add", "Omar", "--role", "site-manager");
        refused("'fandown account list'", "", "close", "Omar");
        refused("'fandown account list'", FIRST, "set-password", "Omar");
        refused("--role", FIRST, "add", "Omar");
        refused("no place for 'secret'", FIRST, "add", "Omar", "secret", "--role", "site-manager");
        assertThat(audit()).isEmpty();
        assertThat(run(FIRST, "add", "Ines", "--role", "site-manager")).isEqualTo(ExitCode.DONE);
        refused("another site manager", "", "close", "Ines");
        refused("another site manager", "", "set-role", "Ines", "--role", "driver");
        refused("already", FIRST, "add", "INES", "--role", "driver");
        assertThat(audit()).hasSize(1);
    }

    @Test
    void without_saying_what_about_accounts_one_is_told_what_is_possible() {
        int exit =
                FandownCommand.run(
                        new PrintWriter(out, true), new PrintWriter(err, true), "account");
        assertThat(exit).isEqualTo(ExitCode.REFUSED);
        assertThat(err.toString()).contains("add, list, set-role, set-password, close");
    }

    private void refused(String because, String typed, String... verb) {
        err.getBuffer().setLength(0);
        assertThat(run(typed, verb)).as(because).isEqualTo(ExitCode.REFUSED);
        assertThat(err.toString()).contains(because);
    }
}
