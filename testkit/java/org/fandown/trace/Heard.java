package org.fandown.trace;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Everything a log says, kept in lists. */
public final class Heard implements FrameListener, SignalListener {
    /** A value of a signal. */
    public record Value(Signal signal, int source, double seconds, double value) {}

    /** A signal without a value. */
    public record Missing(Signal signal, int source, Absence why) {}

    /** All messages, as {@code line time identifier bytes}. */
    public final List<String> frames = new ArrayList<>();

    /** All lines that are no message, as {@code line kind}, and drop notes as {@code line dropped n}. */
    public final List<String> others = new ArrayList<>();

    /** All values. */
    public final List<Value> values = new ArrayList<>();

    /** All signals without a value. */
    public final List<Missing> missing = new ArrayList<>();

    private final SignalDecoder decoder = new SignalDecoder(this);

    /** Reads a log. */
    public static Heard of(String log) {
        return of(log, CandumpReader.Times.AS_WRITTEN);
    }

    /** Reads a log with times of a kind. */
    public static Heard of(String log, CandumpReader.Times times) {
        byte[] bytes = log.getBytes(StandardCharsets.ISO_8859_1);
        return inPieces(bytes, bytes.length, times);
    }

    /** Reads a file. */
    public static Heard of(Path file) throws IOException {
        return inPieces(Files.readAllBytes(file), 4096, CandumpReader.Times.AS_WRITTEN);
    }

    /** Reads a log cut into pieces of a size. */
    public static Heard inPieces(byte[] bytes, int size, CandumpReader.Times times) {
        Heard heard = new Heard();
        CandumpReader reader = new CandumpReader(heard, times);
        for (int from = 0; from < bytes.length; from += size) {
            reader.accept(bytes, from, Math.min(bytes.length, from + size));
        }
        reader.finish();
        return heard;
    }

    /** Returns the values of a signal in order. */
    public List<Value> of(Signal signal) {
        return values.stream().filter(value -> value.signal() == signal).toList();
    }

    @Override
    public void frame(CanFrame frame) {
        StringBuilder text = new StringBuilder();
        text.append(frame.line()).append(' ').append(frame.isTimed() ? frame.nanos() : "untimed");
        text.append(String.format(Locale.ROOT, " %X", frame.identifier()));
        for (int i = 1; i <= frame.length(); i++) {
            text.append(String.format(Locale.ROOT, " %02X", frame.dataByte(i)));
        }
        frames.add(text.toString());
        decoder.frame(frame);
    }

    @Override
    public void skipped(long line, LineKind kind) {
        others.add(line + " " + kind);
    }

    @Override
    public void dropped(long line, long lost) {
        others.add(line + " dropped " + lost);
    }

    @Override
    public void value(Signal signal, CanFrame frame, double value) {
        values.add(new Value(signal, frame.source(), frame.seconds(), value));
    }

    @Override
    public void absent(Signal signal, CanFrame frame, Absence why) {
        missing.add(new Missing(signal, frame.source(), why));
    }
}
