package org.fandown.app.web;

import java.time.Duration;
import java.time.InstantSource;
import java.util.Map;

/**
 * Lets somebody try a few times, and then only after a wait that doubles with each try that fails.
 * Remembers the last 10,000. Safe for use by several threads.
 */
final class GrowingWait {
    private static final long FIRST = Duration.ofSeconds(1).toMillis();
    private static final long LONGEST = Duration.ofMinutes(5).toMillis();

    /** After so long without a try all is forgotten. */
    private static final long FORGOTTEN = Duration.ofHours(1).toMillis();

    private static final int MOST_DOUBLINGS = 20;

    private final int free;
    private final InstantSource clock;
    private final Map<String, Tries> tries = new Recent<>();

    /**
     * Nobody has tried yet.
     *
     * @param free how many tries may fail before there is a wait
     */
    GrowingWait(int free, InstantSource clock) {
        this.free = free;
        this.clock = clock;
    }

    private record Tries(int failed, long last, long until) {}

    /**
     * Begins a try, which counts as failed until it is said to have succeeded: so none gets by that
     * comes at the same time as others.
     *
     * @return how long to wait before it may be begun, ms; 0 if it has begun
     */
    synchronized long begin(String who) {
        long now = clock.millis();
        Tries before = before(who, now);
        if (before.until() > now) {
            return before.until() - now;
        }
        int failed = before.failed() + 1;
        tries.put(who, new Tries(failed, now, now + wait(failed)));
        return 0;
    }

    private Tries before(String who, long now) {
        Tries found = tries.get(who);
        return found == null || now - found.last() > FORGOTTEN ? new Tries(0, now, now) : found;
    }

    private long wait(int failed) {
        int over = failed - free;
        return over < 0 ? 0 : Math.min(LONGEST, FIRST << Math.min(over, MOST_DOUBLINGS));
    }

    /** Takes back the try that succeeded. */
    synchronized void takeBack(String who) {
        long now = clock.millis();
        int failed = Math.max(0, before(who, now).failed() - 1);
        tries.put(who, new Tries(failed, now, now));
    }

    /** Forgets all tries. */
    synchronized void forget(String who) {
        tries.remove(who);
    }
}
