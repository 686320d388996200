package org.fandown.app.web;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.StreamHandler;

/**
 * What the server did, one line of JSON for each request and event. It holds no bodies, no names
 * and nothing that was searched for. What the libraries say through the logging of the Java library
 * goes the same way; that stops working when the program begins to end, so our own lines go
 * straight to the handler.
 */
public final class EventLog {
    private static volatile Handler lines = new Lines(System.err);
    private static final int LONGEST_PATH = 200;

    private EventLog() {}

    /**
     * Sends everything to a file, behind what is there.
     *
     * @throws IOException if it cannot be written
     */
    public static void toFile(Path file) throws IOException {
        to(
                Files.newOutputStream(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND),
                Level.INFO);
    }

    /** Sends everything to standard error. */
    public static void toStandardError() {
        to(System.err, Level.INFO);
    }

    /** Sends only warnings and errors to standard error. */
    public static void troubleOnly() {
        to(System.err, Level.WARNING);
    }

    private static void to(OutputStream out, Level least) {
        LogManager.getLogManager().reset();
        lines = new Lines(out);
        lines.setLevel(least);
        Logger root = Logger.getLogger("");
        root.addHandler(lines);
        root.setLevel(Level.WARNING);
    }

    /** Writes through: a line is out before the next thing is done. */
    private static final class Lines extends StreamHandler {
        Lines(OutputStream out) {
            super(out, new JsonLines());
            setLevel(Level.WARNING);
        }

        @Override
        public synchronized void publish(LogRecord line) {
            super.publish(line);
            flush();
        }

        /** Stays open: the last lines come when the logging of the Java library is closed. */
        @Override
        public synchronized void close() {
            flush();
        }
    }

    /** Notes that something happened. */
    public static void event(String name) {
        note(Level.INFO, name, Map.of());
    }

    /** Notes that something happened, with one figure. */
    static void event(String name, String key, long figure) {
        note(Level.INFO, name, Map.of(key, figure));
    }

    /**
     * Notes a request that was answered.
     *
     * @param method what was asked for
     * @param path where, without what was searched for
     * @param status how it was answered
     * @param ms how long it took
     * @param bytes how long the answer is
     */
    static void request(String method, String path, int status, long ms, long bytes) {
        Map<String, Object> details = new LinkedHashMap<>();
        details.put("method", method);
        details.put("path", path.substring(0, Math.min(LONGEST_PATH, path.length())));
        details.put("status", status);
        details.put("ms", ms);
        details.put("bytes", bytes);
        boolean failed = status >= 500;
        note(failed ? Level.SEVERE : Level.INFO, "request", details);
    }

    private static void note(Level level, String event, Map<String, ?> details) {
        LogRecord line = new LogRecord(level, event);
        line.setParameters(new Object[] {details});
        lines.publish(line);
    }
}
