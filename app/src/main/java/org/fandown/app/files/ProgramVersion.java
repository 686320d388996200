package org.fandown.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version that the build wrote beside this class. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /** The version: {@code 1.2.0}. */
    public static String text() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new IOException("version.properties is missing beside the program");
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("The version of the program is not known.", e);
        }
        return properties.getProperty("version", "");
    }
}
