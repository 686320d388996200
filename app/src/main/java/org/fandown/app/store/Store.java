package org.fandown.app.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.InstantSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** What is kept, and where: a file of the embedded database, or a PostgreSQL server. */
public final class Store implements AutoCloseable {
    private static final String NAME = "fandown.db";
    private static final String MIGRATIONS = "classpath:org/fandown/app/store/";

    private final Database database;
    private final HikariDataSource pool;
    private final Jdbi jdbi;
    private final RecordStore records;

    private Store(Database database, HikariDataSource pool) {
        this.database = database;
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
        this.records = new RecordStore(jdbi, database);
    }

    /**
     * Opens the store of a folder; makes both if they are not there, and brings an older store up
     * to date.
     *
     * @throws StoreException if that cannot be done
     */
    public static Store inFolder(Path folder) {
        SqliteDatabase database = new SqliteDatabase(folder.resolve(NAME));
        try {
            Files.createDirectories(folder);
            return open(database);
        } catch (IOException e) {
            throw cannotBeOpened(database, e);
        }
    }

    /**
     * Opens the store in a database of a server; makes its tables if they are not there, and brings
     * an older store up to date.
     *
     * @param url a JDBC URL of PostgreSQL
     * @throws StoreException if that cannot be done
     */
    public static Store at(String url) {
        PostgresDatabase database = new PostgresDatabase(url);
        if (!database.isAddress()) {
            throw new StoreException(
                    "The address of the database is none of PostgreSQL. Next: " + database.advice(),
                    null);
        }
        return open(database);
    }

    static Store open(Database database) {
        HikariDataSource pool = null;
        try {
            pool = database.pool();
            Flyway.configure()
                    .dataSource(pool)
                    .locations(MIGRATIONS + "common", MIGRATIONS + database.migrations())
                    .placeholders(database.words())
                    .javaMigrations(new OldRecords())
                    .group(true)
                    .loggers("slf4j")
                    .load()
                    .migrate();
            return new Store(database, pool);
        } catch (SQLException | FlywayException e) {
            if (pool != null) {
                pool.close();
            }
            throw cannotBeOpened(database, e);
        }
    }

    private static StoreException cannotBeOpened(Database database, Exception why) {
        for (Throwable cause = why.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof StoreException known) {
                return known;
            }
        }
        return new StoreException(
                "The store "
                        + database.place()
                        + " cannot be opened: "
                        + why.getMessage()
                        + " Next: "
                        + database.advice(),
                why);
    }

    /** Where it is, in words that hold no password. */
    public String place() {
        return database.place();
    }

    /** The records in it. */
    public RecordStore records() {
        return records;
    }

    /**
     * The people in it.
     *
     * @param clock what tells them the time
     */
    public People people(InstantSource clock) {
        return new People(
                new AccountStore(jdbi, database, clock),
                new SessionStore(jdbi, clock),
                new AuditTrail(jdbi, clock));
    }

    /**
     * Writes a whole copy into a file of the embedded database while the store is in use.
     *
     * @param copy the new file; it must not be there yet
     * @throws StoreException if it is there, cannot be written, or something is broken
     */
    public void backUp(Path copy) {
        BackUps.write(this, copy);
    }

    /**
     * Takes all of a copy into this store, which must be empty.
     *
     * @param copy a file that {@link #backUp} wrote; it stays as it is
     * @throws StoreException if it is none, something in it is broken, or this store is not empty;
     *     then this store is as it was
     */
    public void restore(Path copy) {
        BackUps.restore(copy, this);
    }

    /**
     * Copies all into another store, which must be empty, and compares every row. Nobody else
     * writes into this store meanwhile.
     *
     * @throws StoreException if the other is not empty or something is broken; then it is as it was
     */
    public void copyAllTo(Store other) {
        try {
            jdbi.useTransaction(
                    source -> {
                        database.freeze(source);
                        other.jdbi.useTransaction(
                                target -> {
                                    other.database.claim(target);
                                    new StoreCopy(source, target, other.database).run();
                                });
                    });
        } catch (JdbiException e) {
            throw new StoreException(
                    "The store "
                            + place()
                            + " cannot be copied into "
                            + other.place()
                            + ": "
                            + e.getMessage()
                            + " Next: stop the pages, and try again.",
                    e);
        }
    }

    /** Writes all into a new file, without a look at it. */
    void copyInto(Path file) {
        if (database instanceof SqliteDatabase) {
            jdbi.useHandle(handle -> handle.execute("vacuum into ?", file.toString()));
            return;
        }
        try (Store copy = open(new SqliteDatabase(file))) {
            copyAllTo(copy);
        }
    }

    /** Lets go of the database. */
    @Override
    public void close() {
        pool.close();
    }
}
