package org.fandown.app.store;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Base64;
import java.util.Optional;
import org.fandown.app.files.Sha256;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Who is logged in. A session is known by a token that only its device has: the store has its
 * SHA-256. It ends {@link #IDLE} after it was last used, {@link #WHOLE} after it began, and with
 * any change of its account. Safe for use by several threads.
 */
public final class SessionStore {
    /** How long nothing may happen: a shift. */
    public static final Duration IDLE = Duration.ofHours(12);

    /** How long a session lasts at most. */
    public static final Duration WHOLE = Duration.ofDays(7);

    /** An account is used on no more devices at a time; the oldest session ends. */
    public static final int MOST_OF_ONE = 20;

    /** That it was used is written no more often than this. */
    private static final Duration NOTED = Duration.ofMinutes(1);

    private static final int TOKEN_BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Jdbi jdbi;
    private final InstantSource clock;

    SessionStore(Jdbi jdbi, InstantSource clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    private record Found(Account account, long used) {}

    /** Begins a session; returns its token: 256 random bits, 43 signs of base64url. */
    public String begin(long account) {
        byte[] bytes = new byte[TOKEN_BYTES];
        RANDOM.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        long now = clock.millis();
        jdbi.useTransaction(
                handle -> {
                    tidy(handle, now, account);
                    handle.createUpdate(
                                    "insert into session (hash, account, began, used) values (:hash,"
                                            + " :account, :now, :now)")
                            .bind("hash", hash(token))
                            .bind("account", account)
                            .bind("now", now)
                            .execute();
                });
        return token;
    }

    /** Takes away what is over, and the oldest of an account that has many. */
    private static void tidy(Handle handle, long now, long account) {
        handle.createUpdate("delete from session where used <= :idle or began <= :whole")
                .bind("idle", now - IDLE.toMillis())
                .bind("whole", now - WHOLE.toMillis())
                .execute();
        handle.createUpdate(
                        "delete from session where account = :account and hash not in (select hash"
                                + " from session where account = :account order by used desc limit"
                                + " :left)")
                .bind("account", account)
                .bind("left", MOST_OF_ONE - 1)
                .execute();
    }

    /** Whose session it is, empty if it is none, or over, or the account is closed. */
    public Optional<Account> account(String token) {
        long now = clock.millis();
        String hash = hash(token);
        Optional<Found> found = jdbi.withHandle(handle -> find(handle, hash, now));
        found.filter(session -> now - session.used() >= NOTED.toMillis())
                .ifPresent(session -> used(hash, now));
        return found.map(Found::account);
    }

    private static Optional<Found> find(Handle handle, String hash, long now) {
        return handle.createQuery(
                        "select account.*, session.used as used from session join account on"
                                + " account.number = session.account where session.hash = :hash and"
                                + " session.used > :idle and session.began > :whole and"
                                + " account.closed = ''")
                .bind("hash", hash)
                .bind("idle", now - IDLE.toMillis())
                .bind("whole", now - WHOLE.toMillis())
                .map(
                        (row, context) ->
                                new Found(
                                        AccountStore.ACCOUNT.map(row, context),
                                        row.getLong("used")))
                .findOne();
    }

    private void used(String hash, long now) {
        jdbi.useHandle(
                handle ->
                        handle.createUpdate("update session set used = :now where hash = :hash")
                                .bind("now", now)
                                .bind("hash", hash)
                                .execute());
    }

    /** Ends a session. */
    public void end(String token) {
        jdbi.useHandle(
                handle ->
                        handle.createUpdate("delete from session where hash = :hash")
                                .bind("hash", hash(token))
                                .execute());
    }

    /** Ends every session of an account, as a part of another change. */
    static void endAll(Handle handle, long account) {
        handle.createUpdate("delete from session where account = :account")
                .bind("account", account)
                .execute();
    }

    private static String hash(String token) {
        return Sha256.of(token.getBytes(StandardCharsets.UTF_8));
    }
}
