package org.fandown.app.web;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.logging.Formatter;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import org.fandown.document.Json;
import org.fandown.document.Tree;

/**
 * Writes each event as one line of JSON. Of errors it writes classes and places in the code, never
 * their texts: a text may hold what somebody sent.
 */
final class JsonLines extends Formatter {
    private static final String OWN = "org.fandown.";

    @Override
    public String format(LogRecord line) {
        Tree.MapBuilder map =
                Tree.map()
                        .put("time", time(line.getInstant()))
                        .put("level", level(line.getLevel()));
        if (line.getParameters() != null
                && line.getParameters().length == 1
                && line.getParameters()[0] instanceof Map<?, ?> details) {
            map.put("event", line.getMessage());
            details.forEach((key, value) -> put(map, String.valueOf(key), value));
        } else {
            map.put("event", "library").put("logger", String.valueOf(line.getLoggerName()));
        }
        Throwable thrown = line.getThrown();
        if (thrown != null) {
            map.put("error", thrown.getClass().getName()).put("at", place(thrown));
        }
        return Json.writeCompact(map.build()) + "\n";
    }

    private static String time(Instant moment) {
        return moment.truncatedTo(ChronoUnit.MILLIS).toString();
    }

    private static String level(Level level) {
        return level.intValue() >= Level.SEVERE.intValue()
                ? "error"
                : level.intValue() >= Level.WARNING.intValue() ? "warning" : "info";
    }

    private static void put(Tree.MapBuilder map, String key, Object value) {
        if (value instanceof Number number) {
            map.put(key, number.longValue());
        } else {
            map.put(key, String.valueOf(value));
        }
    }

    /** Where in the program it came up, or where at all. */
    private static String place(Throwable thrown) {
        StackTraceElement[] trace = thrown.getStackTrace();
        for (StackTraceElement element : trace) {
            if (element.getClassName().startsWith(OWN)) {
                return element.toString();
            }
        }
        return trace.length == 0 ? "" : trace[0].toString();
    }
}
