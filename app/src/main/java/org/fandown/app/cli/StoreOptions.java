package org.fandown.app.cli;

import java.nio.file.Path;
import org.fandown.app.store.Store;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where records are kept, for every verb that has to do with them. */
final class StoreOptions {
    /** The variable that names a database, so that its password is in no list of processes. */
    static final String VARIABLE = "FANDOWN_DATABASE";

    @Mixin private DataOption data;

    @Option(
            names = "--database",
            paramLabel = "URL",
            description = {
                "keep records on a PostgreSQL server instead, such as",
                "jdbc:postgresql://HOST:PORT/DATABASE?user=USER&password=PASSWORD;",
                "better in the environment variable " + VARIABLE + ", where nobody else sees it"
            })
    private @Nullable String database;

    private StoreOptions() {}

    /** The folder of the site's key, and of the records unless they are in a database. */
    Path folder() {
        return data.folder();
    }

    /** Whether somebody said where records are kept. */
    boolean isNamed() {
        return data.isNamed() || database != null || fromEnvironment() != null;
    }

    /** Opens the store, or refuses with what to do. */
    Store open(CommandLine command) {
        String url = database == null ? fromEnvironment() : database;
        return url == null ? data.open(command) : DataOption.open(command, () -> Store.at(url));
    }

    /** The database that the environment names, null if none. */
    static @Nullable String fromEnvironment() {
        String url = System.getenv(VARIABLE);
        return url == null || url.isBlank() ? null : url;
    }
}
