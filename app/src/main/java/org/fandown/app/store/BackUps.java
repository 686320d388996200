package org.fandown.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/** Writes whole copies into files of the embedded database, and takes them back. */
final class BackUps {
    private static final String NEXT_FILE =
            " Next: name a file that is not there yet, in a folder that can be written.";

    private BackUps() {}

    /** Writes under another name first, so that a copy is whole or not there. */
    static void write(Store store, Path copy) {
        Path part = copy.resolveSibling(copy.getFileName() + ".part");
        try {
            if (Files.exists(copy)) {
                throw cannotBeWritten(copy, "it is there already.", null);
            }
            Files.deleteIfExists(part);
            store.copyInto(part);
            requireSound(part, copy);
            Files.move(part, copy);
        } catch (JdbiException | IOException e) {
            throw cannotBeWritten(copy, String.valueOf(e.getMessage()), e);
        }
    }

    private static StoreException cannotBeWritten(Path copy, String why, @Nullable Exception e) {
        return new StoreException("The copy " + copy + " cannot be written: " + why + NEXT_FILE, e);
    }

    private static void requireSound(Path part, Path copy) throws IOException {
        Optional<String> problem;
        try (Store written = Store.open(new SqliteDatabase(part))) {
            problem = written.records().check().problem();
        }
        if (problem.isPresent()) {
            Files.delete(part);
            throw new StoreException(
                    "The copy "
                            + copy
                            + " is not made, since something is broken. "
                            + problem.get()
                            + " Next: look at it with check-store, and keep the earlier copies.",
                    null);
        }
    }

    /** Takes a copy of the file first, since opening it may bring it up to date. */
    static void restore(Path copy, Store store) {
        try {
            Path folder = Files.createTempDirectory("fandown-restore");
            Path taken = folder.resolve("copy.db");
            try {
                Files.copy(copy, taken);
                restore(copy, new SqliteDatabase(taken), store);
            } finally {
                for (String end : new String[] {"", "-wal", "-shm"}) {
                    Files.deleteIfExists(folder.resolve("copy.db" + end));
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw cannotBeUsed(copy, "it cannot be read.", e);
        }
    }

    private static void restore(Path copy, SqliteDatabase taken, Store store) {
        if (!taken.holdsRecords()) {
            throw cannotBeUsed(copy, "no records are kept in it.", null);
        }
        try (Store read = Store.open(taken)) {
            read.copyAllTo(store);
        }
    }

    private static StoreException cannotBeUsed(Path copy, String why, @Nullable Exception e) {
        return new StoreException(
                "The copy "
                        + copy
                        + " cannot be used: "
                        + why
                        + " Next: name a file that back-up has written.",
                e);
    }
}
