package org.fandown.app.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.store.Store;
import org.fandown.app.web.EventLog;
import org.fandown.app.web.PortTakenException;
import org.fandown.app.web.SiteServer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The verb {@code serve}: the pages, on this machine. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = {
            "Starts the pages on this machine and prints their address. Ctrl+C stops it.",
            "Once loaded, the pages work without it."
        },
        footer = {
            "",
            "Exit codes: 130 stopped by Ctrl+C, 143 by SIGTERM, both once requests in work are"
                    + " answered; 2 bad usage or a port that is in use."
        })
final class ServeCommand implements Callable<Integer> {
    private static final int MOST_PORT = 65_535;

    @Spec private CommandSpec spec;
    @Mixin private PackOptions packOptions;
    @Mixin private StoreOptions storeOptions;
    @Mixin private KeyOptions keyOptions;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "port to listen on, 0 for any that is free; default 8765")
    private int port = 8765;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description =
                    "append one line of JSON for each request to FILE, - for standard error;"
                            + " default trouble only, to standard error")
    private @Nullable String log;

    private ServeCommand() {}

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > MOST_PORT) {
            throw bad("'" + port + "' is no port. Allowed: 0 to 65535.", null);
        }
        openLog();
        Supplier<SiteKey> key = keyOptions.key(storeOptions.folder(), spec.commandLine());
        Store store = storeOptions.open(spec.commandLine());
        try (SiteServer server =
                SiteServer.start(port, packOptions.packs(), store.records(), key)) {
            Screen screen = new Screen(spec.commandLine().getOut());
            screen.line("Fandown is at " + server.address());
            screen.line("Records are kept in " + store.place());
            screen.line("It listens on this machine alone. Ctrl+C stops it.");
            screen.done();
            waitForTheEnd(server, store, screen);
        } catch (PortTakenException e) {
            throw bad(e.getMessage(), e);
        }
        return ExitCode.DONE;
    }

    private void openLog() {
        try {
            if (log == null) {
                EventLog.troubleOnly();
            } else if (log.equals("-")) {
                EventLog.toStandardError();
            } else {
                EventLog.toFile(Path.of(log));
            }
        } catch (IOException | InvalidPathException e) {
            throw bad(
                    "The log '"
                            + log
                            + "' cannot be written. Next: name a file in a folder that"
                            + " can be written.",
                    e);
        }
    }

    private static void waitForTheEnd(SiteServer server, Store store, Screen screen)
            throws InterruptedException {
        CountDownLatch end = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(
                        new Thread(
                                () -> {
                                    server.close();
                                    store.close();
                                    screen.line("Fandown stopped.");
                                    screen.done();
                                    end.countDown();
                                },
                                "stop"));
        end.await();
    }

    private ParameterException bad(@Nullable String message, @Nullable Throwable cause) {
        return new ParameterException(spec.commandLine(), message, cause);
    }
}
