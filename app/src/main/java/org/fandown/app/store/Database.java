package org.fandown.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;

/** The kind of database below a store: all in which they differ. */
interface Database {
    /** Most connections at once. */
    int MOST_CONNECTIONS = 8;

    /** How long a request waits for a connection. */
    Duration PATIENCE = Duration.ofSeconds(30);

    /** Where it is, in words that hold no password. */
    String place();

    /** What to do when it cannot be used. */
    String advice();

    /** Where its connections come from. */
    DataSource source();

    /** Name of the folder of its own migrations, beside those that all have in common. */
    String migrations();

    /** The words by which those in common differ. */
    Map<String, String> words();

    /** Lets no other write until the transaction ends. */
    void claim(Handle handle);

    /** Lets nothing change what is read until the transaction ends; called at its beginning. */
    void freeze(Handle handle);

    /** What stands in an insert that brings a number which the database else would give. */
    String givenNumbers();

    /** Lets the numbers of a table that was copied go on after those that are there. */
    void afterCopy(Handle handle, String table, String key);

    /** What is wrong with the database itself, as far as it can tell; empty if nothing is. */
    Optional<String> damage(Handle handle);

    /**
     * The same connections, kept open to be used again.
     *
     * @throws SQLException if there is none to be had
     */
    default HikariDataSource pool() throws SQLException {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source());
        config.setPoolName("store");
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(PATIENCE.toMillis());
        config.setInitializationFailTimeout(-1);
        source().getConnection().close();
        return new HikariDataSource(config);
    }
}
