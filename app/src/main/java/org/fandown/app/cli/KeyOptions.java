package org.fandown.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.fandown.app.keys.KeyException;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.keys.SiteKeyFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** By which key the site signs, for every verb that signs or checks. */
final class KeyOptions {
    /** The variable of the environment that holds the password of the key. */
    static final String PASSWORD = "FANDOWN_KEY_PASSWORD";

    @Option(
            names = "--key",
            paramLabel = "FILE",
            description =
                    "the site's own key, a PKCS#12 file; its password is asked for, or taken from"
                            + " the variable FANDOWN_KEY_PASSWORD; default a key made on first use"
                            + " among the records")
    private @Nullable Path file;

    @Option(
            names = "--site",
            paramLabel = "NAME",
            description = "the name in the certificate of a key that is made; default Fandown site")
    private String site = "Fandown site";

    private KeyOptions() {}

    /** The site's own key if one is named. */
    Optional<SiteKey> own(CommandLine command) {
        if (file == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(SiteKeyFile.open(file, password(command)));
        } catch (KeyException e) {
            throw new ParameterException(command, e.getMessage(), e);
        }
    }

    /**
     * The key, which is opened or made once it is needed.
     *
     * @param folder where a key made on first use lies
     */
    Supplier<SiteKey> key(Path folder, CommandLine command) {
        Optional<SiteKey> own = own(command);
        return own.isPresent() ? own::get : new OnFirstUse(folder, site);
    }

    private static char[] password(CommandLine command) {
        return given().or(KeyOptions::asked)
                .orElseThrow(
                        () ->
                                new ParameterException(
                                        command,
                                        "The key needs its password. Next: set the variable "
                                                + PASSWORD
                                                + ", or start this at a terminal."));
    }

    /** What a person types at the terminal, empty where there is none. */
    @SuppressWarnings("SystemConsoleNull") // From Java 22 on it is asked whether it is a terminal.
    private static Optional<char[]> asked() {
        return Optional.ofNullable(System.console())
                .map(console -> console.readPassword("Password of the key: "));
    }

    private static Optional<char[]> given() {
        return Optional.ofNullable(System.getenv(PASSWORD)).map(String::toCharArray);
    }

    /** Opens or makes the key of a folder when it is first asked for. */
    private static final class OnFirstUse implements Supplier<SiteKey> {
        private final Path folder;
        private final String site;
        private @Nullable SiteKey opened;

        OnFirstUse(Path folder, String site) {
            this.folder = folder;
            this.site = site;
        }

        @Override
        public synchronized SiteKey get() {
            SiteKey key = opened;
            if (key == null) {
                key = SiteKeyFile.openOrMake(folder, site, given());
                opened = key;
            }
            return key;
        }
    }
}
