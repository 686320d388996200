package org.fandown.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.fandown.app.store.Account;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordHead;
import org.fandown.app.store.Role;
import org.fandown.record.Seal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordRightsTest {
    private static final String NO_HASH = "0".repeat(64);

    private static Caller caller(Role role) {
        Account account = new Account(1, "Ines", role, "2026-11-30T06:00:00.000Z", "");
        return new Caller(Optional.of(account), "token", false, "127.0.0.1");
    }

    private static KeptRecord record(String kind, String sender) {
        String moment = "2026-11-30T06:00:00.000Z";
        return new KeptRecord(
                new RecordHead("a", kind, moment, moment, "CA-ON", "Truck", "", ""),
                "{}",
                "{}",
                new Seal(1, moment, NO_HASH, NO_HASH, sender, "chain", "", ""));
    }

    @ParameterizedTest
    @CsvSource({
        "practice,   LEARNER DRIVER INSTRUCTOR MECHANIC SITE_MANAGER",
        "inspection, DRIVER INSTRUCTOR MECHANIC SITE_MANAGER",
        "repair,     MECHANIC SITE_MANAGER",
        "review,     DRIVER INSTRUCTOR SITE_MANAGER",
        "unheard-of, NOBODY",
    })
    void who_may_have_a_record_kept(String kind, String roles) {
        for (Role role : Role.values()) {
            assertThat(RecordRights.mayKeep(caller(role), kind))
                    .as(role + " " + kind)
                    .isEqualTo(roles.contains(role.name()));
        }
        Caller nobody = new Caller(Optional.empty(), "", false, "127.0.0.1");
        assertThat(RecordRights.mayKeep(nobody, kind)).isFalse();
        Caller alone = new Caller(Optional.empty(), "", true, "127.0.0.1");
        assertThat(RecordRights.mayKeep(alone, kind)).isTrue();
    }

    @Test
    void learner_reads_only_what_they_practised_themselves() {
        Caller learner = caller(Role.LEARNER);
        assertThat(RecordRights.mayRead(learner, record("practice", "Ines"))).isTrue();
        assertThat(RecordRights.mayRead(learner, record("practice", "Omar"))).isFalse();
        assertThat(RecordRights.mayRead(learner, record("practice", ""))).isFalse();
        assertThat(RecordRights.mayRead(learner, record("inspection", "Ines"))).isFalse();
        assertThat(RecordRights.mayRead(caller(Role.DRIVER), record("inspection", "Omar")))
                .isTrue();
    }
}
