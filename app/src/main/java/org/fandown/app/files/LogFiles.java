package org.fandown.app.files;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.fandown.document.DocumentException;
import org.fandown.document.Position;
import org.fandown.trace.LogReader;

/** Reads logs from files or standard input, piece by piece, however long they are. */
public final class LogFiles {
    /** The name that means standard input. */
    public static final String STANDARD_INPUT = "-";

    private static final int PIECE = 1 << 16;

    private LogFiles() {}

    /**
     * Reads a log to its end.
     *
     * @param name the name of the file; {@value #STANDARD_INPUT} for standard input
     * @param reader what takes the bytes; it is finished too
     * @throws DocumentException if the file is absent, a directory or not readable, or the reader
     *     refuses it
     */
    public static void read(String name, LogReader reader) {
        try (InputStream in = open(name)) {
            byte[] piece = new byte[PIECE];
            for (int count = in.read(piece); count >= 0; count = in.read(piece)) {
                reader.accept(piece, 0, count);
            }
        } catch (IOException e) {
            throw refusal(name, e);
        }
        reader.finish();
    }

    /** Words why a log cannot be read. */
    static DocumentException refusal(String name, IOException problem) {
        if (problem instanceof NoSuchFileException) {
            return refuse(name, "there is no such file", "check the name");
        }
        return problem instanceof AccessDeniedException
                ? refuse(name, "the file may not be read", "check its permissions")
                : refuse(name, "the file cannot be read", "check the file and its disk");
    }

    /** Opens a log, or standard input. */
    static InputStream open(String name) throws IOException {
        if (name.equals(STANDARD_INPUT)) {
            return new Kept(System.in);
        }
        Path file = path(name);
        if (Files.isDirectory(file)) {
            throw refuse(name, "this is a directory", "name a file in it");
        }
        return Files.newInputStream(file);
    }

    static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw refuse(name, "this is not the name of a file", "check the name");
        }
    }

    /** Standard input, which stays open. */
    private static final class Kept extends FilterInputStream {
        Kept(InputStream in) {
            super(in);
        }

        @Override
        public void close() {
            // Standard input is not ours to close.
        }
    }

    private static DocumentException refuse(String name, String problem, String nextStep) {
        return new DocumentException(Position.inFile(name), "", "", problem, "", nextStep);
    }
}
