package org.fandown.app.paper;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: first beside its place, then moved there. */
final class WholeFile {
    private static final int MOST_DRAFTS = 100;

    private WholeFile() {}

    static void write(Path file, byte[] bytes) {
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file) || folder == null) {
            throw refuse(file, "this is a directory", "Name a file in it, such as report.pdf.");
        }
        if (!Files.isDirectory(folder)) {
            throw refuse(
                    file,
                    "there is no directory " + folder,
                    "Make the directory, or name another place.");
        }
        try {
            draftAndMove(folder, file, bytes);
        } catch (AccessDeniedException e) {
            ReportWriteException problem =
                    refuse(
                            file,
                            "writing there is not allowed",
                            "Correct the permissions, or name another place.");
            problem.initCause(e);
            throw problem;
        } catch (IOException e) {
            ReportWriteException problem =
                    refuse(
                            file,
                            "the disk refused it (" + e.getClass().getSimpleName() + ")",
                            "Check the disk and its free space, then try again.");
            problem.initCause(e);
            throw problem;
        }
    }

    private static void draftAndMove(Path folder, Path file, byte[] bytes) throws IOException {
        Path draft = draft(folder, file);
        try {
            Files.write(draft, bytes);
            move(draft, file);
        } finally {
            Files.deleteIfExists(draft);
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

    private static void move(Path draft, Path file) throws IOException {
        try {
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static ReportWriteException refuse(Path file, String problem, String nextStep) {
        return new ReportWriteException(file.toString(), problem, nextStep);
    }
}
