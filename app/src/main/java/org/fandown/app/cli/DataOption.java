package org.fandown.app.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The folder in which records are kept unless a database is named. */
final class DataOption {
    /** Loggers are forgotten with their levels unless somebody holds them. */
    private static final List<Logger> QUIET = new ArrayList<>();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "where records are kept; default the folder .fandown of your home folder")
    private @Nullable Path data;

    private DataOption() {}

    /** The folder. */
    Path folder() {
        return data == null ? Path.of(System.getProperty("user.home"), ".fandown") : data;
    }

    /** Whether somebody named it. */
    boolean isNamed() {
        return data != null;
    }

    /** Opens the store of the folder, or refuses with what to do. */
    Store open(CommandLine command) {
        return open(command, () -> Store.inFolder(folder()));
    }

    /** How to open a store. */
    interface Opening {
        /** Opens it. */
        Store open();
    }

    /** Opens a store, or refuses with what to do. */
    static Store open(CommandLine command, Opening opening) {
        quietLibraries();
        try {
            return opening.open();
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
