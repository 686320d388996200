package org.fandown.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Knows the version that the build wrote beside this class. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new IOException("version.properties is missing beside the program");
            }
            properties.load(in);
        }
        return new String[] {"fandown " + properties.getProperty("version")};
    }
}
