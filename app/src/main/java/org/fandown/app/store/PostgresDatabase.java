package org.fandown.app.store;

import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.postgresql.Driver;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * A database of a PostgreSQL server.
 *
 * @param url how to reach it, such as {@code jdbc:postgresql://localhost/fandown?user=fandown}
 */
record PostgresDatabase(String url) implements Database {
    /** The name of our lock; any number, as long as it stays the same. */
    private static final long LOCK = 0x66616e646f776eL;

    /** Whether the URL is one; what is wrong with it is not said, since a password may be in it. */
    boolean isAddress() {
        return Driver.parseURL(url, null) != null;
    }

    /** The URL without what follows its question mark, where passwords stand. */
    @Override
    public String place() {
        int end = url.indexOf('?');
        return end < 0 ? url : url.substring(0, end);
    }

    @Override
    public String advice() {
        return "start the server, make the database, and give address, user and password as in"
                + " jdbc:postgresql://HOST:PORT/DATABASE?user=USER&password=PASSWORD.";
    }

    @Override
    public DataSource source() {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setURL(url);
        source.setApplicationName("fandown");
        return source;
    }

    @Override
    public String migrations() {
        return "postgresql";
    }

    @Override
    public Map<String, String> words() {
        return Map.of("number", "bigint", "end", "");
    }

    /**
     * Also sees to it that the end of the transaction waits for the disk, whatever is usual there.
     */
    @Override
    public void claim(Handle handle) {
        handle.execute("select pg_advisory_xact_lock(?)", LOCK);
        handle.execute(
                "select set_config('synchronous_commit', 'on', true)"
                        + " where current_setting('synchronous_commit') = 'off'");
    }

    @Override
    public void freeze(Handle handle) {
        handle.execute("set transaction isolation level repeatable read");
    }

    @Override
    public String givenNumbers() {
        return "overriding system value";
    }

    @Override
    public void afterCopy(Handle handle, String table, String key) {
        handle.createQuery("select pg_get_serial_sequence(:table, :key) as counter")
                .bind("table", table)
                .bind("key", key)
                .map((row, context) -> Optional.ofNullable(row.getString("counter")))
                .one()
                .ifPresent(counter -> goOn(handle, counter, table, key));
    }

    private static void goOn(Handle handle, String counter, String table, String key) {
        handle.createQuery("select setval(:counter, max(" + key + ")) from " + table)
                .bind("counter", counter)
                .mapToMap()
                .list();
    }

    /** The server sees to its own files. */
    @Override
    public Optional<String> damage(Handle handle) {
        return Optional.empty();
    }
}
