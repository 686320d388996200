package org.fandown.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * How many processors a benchmark had: processor time of the whole machine, compiler and collector
 * among it, beside that on the clock. Well below 1, others were at work too.
 */
public final class ProcessorTime implements InternalProfiler {
    /** The name of the result. */
    public static final String LABEL = "processors";

    private long processor;
    private long clock;

    private static long processorNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        processor = processorNanos();
        clock = System.nanoTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double used = processorNanos() - processor;
        double passed = System.nanoTime() - clock;
        return List.of(new ScalarResult(LABEL, used / passed, "processors", AggregationPolicy.AVG));
    }

    @Override
    public String getDescription() {
        return "Processors that were at work for the benchmark";
    }
}
