package org.fandown.app.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * One file of the embedded database. A write is answered only when the disk has it: write-ahead log
 * with full synchronisation.
 *
 * @param file the file; its folder is there
 */
record SqliteDatabase(Path file) implements Database {
    /** How long a write waits for another, ms. */
    private static final int BUSY = 10_000;

    @Override
    public String place() {
        return file.toString();
    }

    @Override
    public String advice() {
        return "make the folder writable, or name another with --data.";
    }

    @Override
    public DataSource source() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(BUSY);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    @Override
    public String migrations() {
        return "sqlite";
    }

    @Override
    public Map<String, String> words() {
        return Map.of("number", "integer", "end", "strict");
    }

    /** Every transaction of this database begins with the lock of a writer. */
    @Override
    public void claim(Handle handle) {}

    @Override
    public Optional<String> damage(Handle handle) {
        List<String> said =
                handle.createQuery("pragma integrity_check(1)").mapTo(String.class).list();
        return said.equals(List.of("ok"))
                ? Optional.empty()
                : Optional.of("The file is damaged: " + String.join(" ", said));
    }
}
