package org.fandown.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.fandown.document.DocumentException;
import org.fandown.document.Node;
import org.fandown.document.Position;

/**
 * Reads documents from files: YAML from {@code .yaml} and {@code .yml}, JSON from {@code .json}.
 */
public final class DocumentFiles {
    /** The greatest size of a file that is read: 8 MiB. */
    public static final int MAX_BYTES = 8 * 1024 * 1024;

    private DocumentFiles() {}

    /**
     * Reads a file.
     *
     * @param file the file; its suffix says how it is written
     * @return the document, each node with its position and path
     * @throws DocumentException if the file is absent, a directory, not readable, larger than 8
     *     MiB, not UTF-8, of another suffix, or not a document
     */
    public static Node read(Path file) {
        String name = file.toString();
        DocumentText.requireKnownSuffix(name);
        return DocumentText.of(name, bytes(file, name));
    }

    private static byte[] bytes(Path file, String name) {
        if (Files.isDirectory(file)) {
            throw refuse(name, "this is a directory", "a file", "name a file in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MAX_BYTES + 1);
            if (bytes.length > MAX_BYTES) {
                throw refuse(name, "the file is too large", "at most 8 MiB", "split it");
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw refuse(name, "there is no such file", "", "check the name");
        } catch (AccessDeniedException e) {
            throw refuse(name, "the file may not be read", "", "check its permissions");
        } catch (IOException e) {
            throw refuse(name, "the file cannot be read", "", "check the file and its disk");
        }
    }

    private static DocumentException refuse(
            String name, String problem, String allowed, String nextStep) {
        return new DocumentException(Position.inFile(name), "", "", problem, allowed, nextStep);
    }
}
