package org.fandown.app.store;

import java.time.InstantSource;
import java.util.List;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapper;

/**
 * Who did what, when and from where. It only grows: the database refuses changes and deletions. It
 * never has a password or a token. Safe for use by several threads.
 */
public final class AuditTrail {
    /** Most entries a list gives at once. */
    public static final int MOST = 200;

    private static final RowMapper<Noted> ENTRY =
            (row, at) ->
                    new Noted(
                            row.getLong("number"),
                            row.getString("moment"),
                            new AuditEntry(
                                    row.getString("who"),
                                    row.getString("act"),
                                    row.getString("about"),
                                    row.getString("source"),
                                    row.getString("result")));

    private final Jdbi jdbi;
    private final InstantSource clock;

    AuditTrail(Jdbi jdbi, InstantSource clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /**
     * An entry and its place.
     *
     * @param number from 1 in the order they were noted
     * @param moment when, UTC, such as {@code 2026-11-30T11:40:00.000Z}
     * @param entry what was noted
     */
    public record Noted(long number, String moment, AuditEntry entry) {}

    /** Notes several things, all or none, now. */
    public void note(List<AuditEntry> entries) {
        if (entries.isEmpty()) {
            return;
        }
        String now = Moments.text(clock.instant());
        jdbi.useTransaction(
                handle -> {
                    var batch =
                            handle.prepareBatch(
                                    "insert into audit (moment, who, act, about, source, result)"
                                            + " values (:now, :who, :act, :about, :source,"
                                            + " :result)");
                    for (AuditEntry entry : entries) {
                        batch.bindMethods(entry).bind("now", now).add();
                    }
                    batch.execute();
                });
    }

    /**
     * The newest entries before one.
     *
     * @param before the number of an entry; {@link Long#MAX_VALUE} for the newest of all
     */
    public List<Noted> before(long before) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery(
                                        "select * from audit where number < :before order by number"
                                                + " desc limit :most")
                                .bind("before", before)
                                .bind("most", MOST)
                                .map(ENTRY)
                                .list());
    }
}
