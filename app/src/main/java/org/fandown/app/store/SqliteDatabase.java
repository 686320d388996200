package org.fandown.app.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
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

    /** Every transaction of this database keeps others from writing. */
    @Override
    public void freeze(Handle handle) {}

    @Override
    public String givenNumbers() {
        return "";
    }

    /** The database sees to it by itself. */
    @Override
    public void afterCopy(Handle handle, String table, String key) {}

    /** Whether it is such a database, and a store of this program of whatever version. */
    boolean holdsRecords() {
        try (Connection connection = source().getConnection();
                Statement statement = connection.createStatement();
                ResultSet found =
                        statement.executeQuery(
                                "select 1 from sqlite_master where name = 'record'")) {
            return found.next();
        } catch (SQLException e) {
            return false;
        }
    }

    @Override
    public Optional<String> damage(Handle handle) {
        List<String> said =
                handle.createQuery("pragma integrity_check(1)").mapTo(String.class).list();
        return said.equals(List.of("ok"))
                ? Optional.empty()
                : Optional.of("The file is damaged: " + String.join(" ", said));
    }
}
