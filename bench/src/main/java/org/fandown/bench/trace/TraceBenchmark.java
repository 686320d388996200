package org.fandown.bench.trace;

import java.util.concurrent.TimeUnit;
import org.fandown.trace.CandumpReader;
import org.fandown.trace.CsvReader;
import org.fandown.trace.LogReader;
import org.fandown.trace.NetworkTrace;
import org.fandown.trace.SignalDecoder;
import org.fandown.trace.TraceLog;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A log in memory, to its end; each in lines per second. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 3, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
@OperationsPerInvocation(TraceBenchmark.LINES)
@SuppressWarnings("NullAway.Init") // The harness calls prepare before anything else.
public class TraceBenchmark {
    static final int LINES = 1_000_000;

    /** As much at once as when a file is read. */
    private static final int PIECE = 1 << 16;

    /** Which log. */
    @Param({"captures", "busy", "table"})
    public String log;

    private byte[] bytes;
    private double sum;

    /** Makes the log, outside the time that is taken. */
    @Setup
    public void prepare() {
        bytes = Logs.of(log, LINES);
    }

    /** Counts the line feeds: the yardstick. */
    @Benchmark
    public int countLines() {
        int lines = 0;
        for (byte b : bytes) {
            lines += b == '\n' ? 1 : 0;
        }
        return lines;
    }

    /** Reads and decodes into samples of a trace, and adds those up. */
    @Benchmark
    public double decode() {
        sum = 0;
        NetworkTrace.SampleSink sink = (channel, seconds, value) -> sum += value;
        LogReader reader =
                log.equals("table")
                        ? new CsvReader(log, sink, remark -> {})
                        : new CandumpReader(
                                new SignalDecoder(new NetworkTrace(sink, remark -> {})));
        read(reader);
        return sum;
    }

    /** Does that, and recognises what was done. */
    @Benchmark
    public TraceLog decodeAndSegment() {
        TraceLog whole =
                new TraceLog(log, CandumpReader.Times.AS_WRITTEN, (channel, seconds, value) -> {});
        read(whole);
        return whole;
    }

    private void read(LogReader reader) {
        for (int from = 0; from < bytes.length; from += PIECE) {
            reader.accept(bytes, from, Math.min(bytes.length, from + PIECE));
        }
        reader.finish();
    }
}
