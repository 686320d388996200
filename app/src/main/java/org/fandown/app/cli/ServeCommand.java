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
import org.fandown.app.web.Listening;
import org.fandown.app.web.OpenSiteException;
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
            "Once loaded, the pages work without it.",
            "Others can come to them once there are accounts ('fandown account add'): with --listen,"
                    + " or better through a reverse proxy with TLS and --public-url."
        },
        footer = {
            "",
            "Exit codes: 130 stopped by Ctrl+C, 143 by SIGTERM, both once requests in work are"
                    + " answered; 2 bad usage, a port that is in use, or a site that would be open to"
                    + " everybody."
        })
final class ServeCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private PackOptions packOptions;
    @Mixin private StoreOptions storeOptions;
    @Mixin private KeyOptions keyOptions;
    @Mixin private ListenOptions listenOptions;

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
        Listening at = listenOptions.listening(spec.commandLine());
        openLog();
        Supplier<SiteKey> key = keyOptions.key(storeOptions.folder(), spec.commandLine());
        Store store = storeOptions.open(spec.commandLine());
        try (SiteServer server = SiteServer.start(at, packOptions.packs(), store, key)) {
            Screen screen = new Screen(spec.commandLine().getOut());
            screen.line("Fandown is at " + server.address());
            screen.line("Records are kept in " + store.place());
            tellWhoCanCome(screen, at);
            screen.done();
            waitForTheEnd(server, store, screen);
        } catch (PortTakenException | OpenSiteException e) {
            throw bad(e.getMessage(), e);
        }
        return ExitCode.DONE;
    }

    private static void tellWhoCanCome(Screen screen, Listening at) {
        if (!at.isBeyondThisMachine()) {
            screen.line("It listens on this machine alone. Ctrl+C stops it.");
            return;
        }
        screen.line("Others can come to it; they have to log in. Ctrl+C stops it.");
        if (!at.isSecure()) {
            screen.wrapped(
                    "",
                    "Passwords and records go over the network in the open, and without TLS browsers"
                            + " do not keep the pages on the device. Next: put a reverse proxy with"
                            + " TLS before it, and name its address with --public-url https://...");
        }
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
