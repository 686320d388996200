package org.fandown.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The one file of the embedded store. A write is answered only when the disk has it: write-ahead
 * log with full synchronisation.
 */
public final class StoreFile {
    private static final String NAME = "fandown.db";
    private static final String MIGRATIONS = "classpath:org/fandown/app/store/sqlite";

    /** How long a write waits for another, ms. */
    private static final int PATIENCE = 10_000;

    private final Path file;
    private final Jdbi jdbi;

    private StoreFile(Path file, DataSource source) {
        this.file = file;
        this.jdbi = Jdbi.create(source);
    }

    /**
     * Opens the store of a folder; makes both if they are not there, and brings an older store up
     * to date.
     *
     * @throws StoreException if that cannot be done
     */
    public static StoreFile open(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            Files.createDirectories(folder);
            DataSource source = source(file);
            Flyway.configure()
                    .dataSource(source)
                    .locations(MIGRATIONS)
                    .loggers("slf4j")
                    .load()
                    .migrate();
            return new StoreFile(file, source);
        } catch (IOException | FlywayException e) {
            throw new StoreException(
                    "The store "
                            + file
                            + " cannot be opened: "
                            + e.getMessage()
                            + " Next: make the folder writable, or name another with --data.",
                    e);
        }
    }

    private static DataSource source(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(PATIENCE);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** Where it lies. */
    public Path file() {
        return file;
    }

    /** The records in it. */
    public RecordStore records() {
        return new RecordStore(jdbi);
    }

    /**
     * Writes a whole copy while the store is in use.
     *
     * @param copy the new file; it must not be there yet
     * @throws StoreException if it is there, or cannot be written
     */
    public void backUp(Path copy) {
        try {
            jdbi.useHandle(handle -> copyInto(handle.getConnection(), copy));
        } catch (JdbiException | SQLException e) {
            throw new StoreException(
                    "The copy "
                            + copy
                            + " cannot be written: "
                            + e.getMessage()
                            + " Next: name a file that is not there yet, in a folder that can be"
                            + " written.",
                    e);
        }
    }

    private static void copyInto(Connection connection, Path copy) throws SQLException {
        try (var statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, copy.toString());
            statement.execute();
        }
    }
}
