package org.fandown.bench.trace;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.fandown.trace.Channel;
import org.fandown.trace.Recognised;
import org.fandown.trace.TraceWatch;
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

/**
 * Samples in memory through a watch, in samples per second. The trace goes on from one run to the
 * next, so that nothing is set up within the time that is taken.
 */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 3, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
@OperationsPerInvocation(SampleBenchmark.SAMPLES)
@SuppressWarnings("NullAway.Init") // The harness calls prepare before anything else.
public class SampleBenchmark {
    static final int SAMPLES = 1_000_000;

    private static final Channel[] CHANNELS = {
        Channel.PRIMARY,
        Channel.SECONDARY,
        Channel.SUPPLY,
        Channel.PARKING,
        Channel.ENGINE_SPEED,
        Channel.PEDAL,
        Channel.PARKING_SWITCH,
        Channel.WARNING
    };

    private static final int PRESSURES = 4;
    private static final double IDLE = 700;

    /** What the recorder tells apart, psi; noise goes as far to either side together. */
    private static final double STEP = 1;

    private static final int ROWS = SAMPLES / CHANNELS.length;
    private static final long SEED = 1;

    /** Samples of each channel in a second. */
    @Param({"1", "10", "100"})
    public int rate;

    /**
     * What the trace holds: {@code tests} is the example trace; {@code running} the same but the
     * engine never stands, so that all is recognised but the air losses, whose measuring takes most
     * of the time.
     */
    @Param({"running", "tests"})
    public String trace;

    private double[] values;
    private TraceWatch watch;
    private double start;
    private long found;

    /** Makes the samples, outside the time that is taken. */
    @Setup
    public void prepare() {
        ColdStart drive = new ColdStart();
        SplittableRandom lot = new SplittableRandom(SEED);
        values = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            int column = i % CHANNELS.length;
            int row = i / CHANNELS.length;
            double value = drive.at(CHANNELS[column], (double) row / rate);
            boolean pressure = column < PRESSURES;
            boolean on = trace.equals("running") && CHANNELS[column] == Channel.ENGINE_SPEED;
            values[i] =
                    pressure
                            ? Math.rint(value / STEP + lot.nextDouble() - 0.5) * STEP
                            : on ? IDLE : value;
        }
        watch = new TraceWatch(this::count);
    }

    private void count(Recognised what) {
        found++;
    }

    /** Gives the watch the next million samples; returns how much it has recognised so far. */
    @Benchmark
    public long samples() {
        int next = 0;
        for (int row = 0; row < ROWS; row++) {
            double seconds = start + (double) row / rate;
            for (Channel channel : CHANNELS) {
                watch.sample(channel, seconds, values[next]);
                next++;
            }
        }
        start += (double) ROWS / rate;
        return found;
    }
}
