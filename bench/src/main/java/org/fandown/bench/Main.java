package org.fandown.bench;

import java.util.Collection;
import org.fandown.bench.air.AirTable;
import org.fandown.bench.plan.PlanTable;
import org.fandown.bench.trace.TraceTable;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks one after the other and prints tables of them all. */
public final class Main {
    private Main() {}

    /**
     * Runs the benchmarks.
     *
     * @param args options of the harness, such as {@code -f 1 -i 3 judge}
     * @throws CommandLineOptionException if an option is none of the harness's
     * @throws RunnerException if a benchmark fails
     */
    public static void main(String... args) throws CommandLineOptionException, RunnerException {
        CommandLineOptions options = new CommandLineOptions(args);
        Collection<RunResult> results =
                new Runner(
                                new OptionsBuilder()
                                        .parent(options)
                                        .addProfiler(GCProfiler.class)
                                        .addProfiler(ProcessorTime.class)
                                        .shouldFailOnError(true)
                                        .build())
                        .run();
        System.out.print(new ResultTable(results).text());
        System.out.print(AirTable.of(results));
        System.out.print(TraceTable.of(results));
        System.out.print(PlanTable.of(results));
    }
}
