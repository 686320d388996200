package org.fandown.app.cli;

import java.net.InetAddress;
import java.net.URI;
import java.util.Optional;
import org.fandown.app.web.Listening;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Where the pages listen, and how people come to them. */
final class ListenOptions {
    private static final int MOST_PORT = 65_535;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "port to listen on, 0 for any that is free; default 8765")
    private int port = 8765;

    @Option(
            names = "--listen",
            paramLabel = "ADDRESS",
            description =
                    "address of this machine to listen on, 0.0.0.0 for all; default 127.0.0.1, which"
                            + " nobody else can reach. Another needs the account of a site manager")
    private String listen = "127.0.0.1";

    @Option(
            names = "--public-url",
            paramLabel = "URL",
            description =
                    "address by which people reach the pages through a reverse proxy with TLS, such"
                            + " as https://yard.example")
    private @Nullable String publicUrl;

    @Option(
            names = "--proxy",
            paramLabel = "ADDRESS",
            description =
                    "address of that proxy, whose word is taken on where a request came from;"
                            + " default this machine")
    private @Nullable String proxy;

    private ListenOptions() {}

    /** Where that is, or refuses with what is allowed. */
    Listening listening(CommandLine command) {
        if (port < 0 || port > MOST_PORT) {
            throw new ParameterException(
                    command, "'" + port + "' is no port. Allowed: 0 to 65535.");
        }
        return new Listening(
                address(command, "--listen", listen), port, url(command), proxy(command));
    }

    private Optional<InetAddress> proxy(CommandLine command) {
        return Optional.ofNullable(proxy).map(name -> address(command, "--proxy", name));
    }

    private static InetAddress address(CommandLine command, String option, String name) {
        try {
            return Listening.address(name);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(
                    command,
                    option + ": " + e.getMessage() + " Allowed: an address such as 192.168.1.20.",
                    e);
        }
    }

    private Optional<URI> url(CommandLine command) {
        try {
            return Optional.ofNullable(publicUrl).map(Listening::publicUrl);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(
                    command,
                    "--public-url: '"
                            + publicUrl
                            + "' is no address of a site. Allowed: scheme, host and port alone, such"
                            + " as https://yard.example.",
                    e);
        }
    }
}
