package org.fandown.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** Files that come with the program, on the class path: in a jar, or in a folder of a build. */
public final class ProgramFiles {
    private ProgramFiles() {}

    /**
     * The files below a folder.
     *
     * @param folder from the root of the class path, such as {@code /org/fandown/app/demo/}; with a
     *     slash at both ends
     * @return their names below the folder, in alphabetical order
     */
    public static List<String> below(String folder) {
        URL url = ProgramFiles.class.getResource(folder);
        if (url == null) {
            throw new IllegalStateException("The program lacks its folder " + folder + ".");
        }
        try {
            return url.getProtocol().equals("jar") ? inJar(url) : inFolder(url.toURI());
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot list " + folder, e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("Cannot list " + folder, e);
        }
    }

    private static List<String> inJar(URL url) throws IOException {
        JarURLConnection jar = (JarURLConnection) url.openConnection();
        String prefix = jar.getEntryName();
        try (Stream<String> names =
                jar.getJarFile().stream().filter(e -> !e.isDirectory()).map(ZipEntry::getName)) {
            return names.filter(name -> name.startsWith(prefix))
                    .map(name -> name.substring(prefix.length()))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> inFolder(URI uri) throws IOException {
        Path root = Path.of(uri);
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    /**
     * The bytes of a file.
     *
     * @param name from the root of the class path, beginning with a slash
     */
    public static byte[] bytes(String name) {
        try (InputStream in = ProgramFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + name + ".");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + name, e);
        }
    }
}
