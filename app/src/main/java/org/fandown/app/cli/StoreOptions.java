package org.fandown.app.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Where records are kept, for every verb that has to do with them. */
final class StoreOptions {
    /** Loggers are forgotten with their levels unless somebody holds them. */
    private static final List<Logger> QUIET = new ArrayList<>();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "where records are kept; default the folder .fandown of your home folder")
    private Path data = Path.of(System.getProperty("user.home"), ".fandown");

    private StoreOptions() {}

    /** Opens the store, or refuses with what to do. */
    Store open(CommandLine command) {
        quietLibraries();
        try {
            return Store.inFolder(data);
        } catch (StoreException e) {
            throw new ParameterException(command, e.getMessage(), e);
        }
    }

    /** Libraries speak up only when something is wrong. */
    private static void quietLibraries() {
        for (String name :
                List.of("io.javalin", "org.eclipse.jetty", "org.flywaydb", "com.zaxxer.hikari")) {
            Logger logger = Logger.getLogger(name);
            logger.setLevel(Level.WARNING);
            QUIET.add(logger);
        }
    }
}
