package org.fandown.app.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Lets threads write together: whoever comes while a transaction is under way waits, and the next
 * transaction takes all who wait, so that one wait for the disk serves them all. Safe for use by
 * several threads.
 *
 * @param <T> what is written
 * @param <R> what is answered
 */
final class GroupWriter<T, R> {
    /** Most that one transaction takes. */
    static final int MOST = 256;

    private final ReentrantLock turn = new ReentrantLock();
    private final Queue<Job<T, R>> waiting = new ConcurrentLinkedQueue<>();
    private final Function<List<T>, List<R>> transaction;

    /**
     * Makes one.
     *
     * @param transaction writes some together, all or nothing, and answers each in turn
     */
    GroupWriter(Function<List<T>, List<R>> transaction) {
        this.transaction = transaction;
    }

    /**
     * Writes, alone or with others, and returns once it is written.
     *
     * @throws RuntimeException what the transaction throws when this is written alone
     */
    R write(T item) {
        Job<T, R> job = new Job<>(item);
        waiting.add(job);
        turn.lock();
        try {
            while (!job.done) {
                writeThoseWhoWait();
            }
        } finally {
            turn.unlock();
        }
        return job.answer();
    }

    private void writeThoseWhoWait() {
        List<Job<T, R>> jobs = new ArrayList<>();
        Job<T, R> next = waiting.poll();
        while (next != null) {
            jobs.add(next);
            next = jobs.size() < MOST ? waiting.poll() : null;
        }
        // One that cannot be written must not keep back the others.
        if (!writeTogether(jobs) && jobs.size() > 1) {
            jobs.forEach(job -> writeTogether(List.of(job)));
        }
    }

    private boolean writeTogether(List<Job<T, R>> jobs) {
        try {
            List<R> answers = transaction.apply(jobs.stream().map(job -> job.item).toList());
            for (int i = 0; i < jobs.size(); i++) {
                jobs.get(i).end(answers.get(i), null);
            }
            return true;
        } catch (RuntimeException | Error e) {
            jobs.forEach(job -> job.end(null, e));
            return false;
        }
    }

    /** One who waits; its fields are only touched by those whose turn it is, or was. */
    private static final class Job<T, R> {
        private final T item;
        private boolean done;
        private @Nullable R answer;
        private @Nullable Throwable failure;

        Job(T item) {
            this.item = item;
        }

        void end(@Nullable R given, @Nullable Throwable why) {
            done = true;
            answer = given;
            failure = why;
        }

        R answer() {
            if (failure instanceof Error error) {
                throw error;
            }
            if (failure instanceof RuntimeException exception) {
                throw exception;
            }
            return java.util.Objects.requireNonNull(answer);
        }
    }
}
