package org.fandown.app.cli;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Lets a person end a long run with Ctrl-C, or a system with its signal, and still have what the
 * run found, with the exit code it stands for.
 */
final class Ending implements AutoCloseable {
    /** What the program ends with, known once everything is written. */
    private static final CompletableFuture<Integer> CODE = new CompletableFuture<>();

    /** The work that is left after the signal is not longer, s. */
    private static final long PATIENCE = 20;

    private final Thread hook = new Thread(this::end, "ending");
    private volatile boolean asked;

    /** From here on a signal asks for the end, and is waited for. */
    Ending() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Tells what the program ends with. */
    static int with(int code) {
        CODE.complete(code);
        return code;
    }

    /** Whether the end was asked for. */
    boolean isAsked() {
        return asked;
    }

    private void end() {
        asked = true;
        try {
            Runtime.getRuntime().halt(CODE.get(PATIENCE, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            // Then the program ends as a signal ends it.
        }
    }

    /** Signals end the program at once again. */
    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // It has come; what it waits for is on its way.
        }
    }
}
