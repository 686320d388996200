package org.fandown.app.store;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments as the store writes them: their order as text is their order in time. */
public final class Moments {
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT);

    private Moments() {}

    /** A moment in UTC, to the millisecond, such as {@code 2026-11-30T11:40:00.000Z}. */
    public static String text(Instant moment) {
        return UTC.format(moment.atOffset(ZoneOffset.UTC));
    }
}
