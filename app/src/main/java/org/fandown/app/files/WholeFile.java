package org.fandown.app.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file whole or not at all: first beside its place, then moved there. What was there
 * before stays until then.
 *
 * <p>Close it in any case; what was not {@linkplain #keep kept} is thrown away.
 */
public final class WholeFile implements AutoCloseable {
    private static final int MOST_DRAFTS = 100;

    private final String what;
    private final Path file;
    private final Path draft;
    private final OutputStream out;

    private WholeFile(String what, Path file, Path draft, OutputStream out) {
        this.what = what;
        this.file = file;
        this.draft = draft;
        this.out = out;
    }

    /**
     * Writes a file.
     *
     * @param what what it is, for the refusal: {@code report}
     * @param file where it shall stand
     * @param bytes what is in it
     * @throws FileWriteException if it cannot be written
     */
    public static void write(String what, Path file, byte[] bytes) {
        try (WholeFile whole = begin(what, file)) {
            whole.write(bytes);
            whole.keep();
        }
    }

    /**
     * Begins a file.
     *
     * @param what what it is, for the refusal: {@code trace}
     * @param file where it shall stand
     * @throws FileWriteException if nothing can be written there
     */
    public static WholeFile begin(String what, Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file) || folder == null) {
            throw new FileWriteException(
                    what,
                    file.toString(),
                    "this is a directory",
                    "Name a file in it, such as " + what + extension(what) + ".");
        }
        if (!Files.isDirectory(folder)) {
            throw new FileWriteException(
                    what,
                    file.toString(),
                    "there is no directory " + folder,
                    "Make the directory, or name another place.");
        }
        try {
            Path draft = draft(folder, file);
            return new WholeFile(
                    what, file, draft, new BufferedOutputStream(Files.newOutputStream(draft)));
        } catch (IOException e) {
            throw refuse(what, file, e);
        }
    }

    private static String extension(String what) {
        return switch (what) {
            case "trace" -> ".csv";
            case "plot" -> ".svg";
            default -> ".pdf";
        };
    }

    /** Adds text in UTF-8. */
    public void write(String text) {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    private void write(byte[] bytes) {
        try {
            out.write(bytes);
        } catch (IOException e) {
            throw refuse(what, file, e);
        }
    }

    /**
     * Puts the file in its place.
     *
     * @throws FileWriteException if that is not possible
     */
    public void keep() {
        try {
            out.close();
            move();
        } catch (IOException e) {
            throw refuse(what, file, e);
        }
    }

    /** Throws away what was not kept. */
    @Override
    public void close() {
        try (OutputStream closing = out) {
            closing.flush();
        } catch (IOException e) {
            // What is thrown away need not be whole.
            throwAway();
            return;
        }
        throwAway();
    }

    private void throwAway() {
        try {
            Files.deleteIfExists(draft);
        } catch (IOException e) {
            throw refuse(what, file, e);
        }
    }

    /** Makes a new empty file beside the place, with the rights any new file there gets. */
    private static Path draft(Path folder, Path file) throws IOException {
        for (int i = 0; ; i++) {
            Path draft = folder.resolve("." + file.getFileName() + "-" + i + ".part");
            try {
                return Files.createFile(draft);
            } catch (FileAlreadyExistsException e) {
                if (i == MOST_DRAFTS) {
                    throw e;
                }
            }
        }
    }

    private void move() throws IOException {
        try {
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static FileWriteException refuse(String what, Path file, IOException cause) {
        boolean denied = cause instanceof AccessDeniedException;
        FileWriteException problem =
                new FileWriteException(
                        what,
                        file.toString(),
                        denied
                                ? "writing there is not allowed"
                                : "the disk refused it (" + cause.getClass().getSimpleName() + ")",
                        denied
                                ? "Correct the permissions, or name another place."
                                : "Check the disk and its free space, then try again.");
        problem.initCause(cause);
        return problem;
    }
}
