package org.fandown.app.paper;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Reads what strangers made, within bounds: of time, and of how deep it goes. */
final class Bounded {
    /** The largest report there can be takes a tenth of it. */
    private static final Duration PATIENCE = Duration.ofMinutes(3);

    private static final long STACK_BYTES = 16L * 1024 * 1024;

    private Bounded() {}

    /**
     * Does some work.
     *
     * @throws UnreadableReportException if it fails, or takes too long or too much memory
     */
    static <T> T run(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(null, task, "report", STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw refuse("the check was interrupted", e);
        } catch (TimeoutException e) {
            task.cancel(true);
            throw refuse("it asks for more work than a report does", e);
        } catch (ExecutionException e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            throw refuse(
                    cause instanceof Error
                            ? "it asks for more memory than a report does"
                            : "it is no PDF document, or a damaged one ("
                                    + Clean.text(String.valueOf(cause.getMessage()))
                                    + ")",
                    e);
        }
    }

    private static UnreadableReportException refuse(String why, Exception cause) {
        return new UnreadableReportException(
                "The report cannot be checked: "
                        + why
                        + ". Next: ask for the file once more from where it came.",
                cause);
    }
}
