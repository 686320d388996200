package org.fandown.app.web;

import java.time.Duration;
import java.time.InstantSource;
import java.util.Map;

/**
 * How often somebody may ask: many times at once, and then so many a second. Remembers the last
 * 10,000. Safe for use by several threads.
 */
final class Pace {
    private static final double SECOND = Duration.ofSeconds(1).toMillis();

    private final double most;
    private final double each;
    private final InstantSource clock;
    private final Map<String, Left> left = new Recent<>();

    /**
     * Nobody has asked yet.
     *
     * @param most how often at once
     * @param each how often a second after that
     */
    Pace(double most, double each, InstantSource clock) {
        this.most = most;
        this.each = each;
        this.clock = clock;
    }

    private record Left(double times, long at) {}

    /** Whether they may ask now; asking counts. */
    synchronized boolean lets(String who) {
        long now = clock.millis();
        Left before = left.getOrDefault(who, new Left(most, now));
        double gained = Math.max(0, now - before.at()) / SECOND * each;
        double times = Math.min(most, before.times() + gained);
        boolean may = times >= 1;
        left.put(who, new Left(may ? times - 1 : times, now));
        return may;
    }
}
