package org.fandown.bench.trace;

import java.util.Collection;
import java.util.Locale;
import org.fandown.bench.ProcessorTime;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/**
 * The results of the trace benchmarks as a table in Markdown: millions of lines or samples per
 * second, on the clock with the harness's error and by the time of a processor.
 */
public final class TraceTable {
    private static final String ALLOCATION = "gc.alloc.rate.norm";
    private static final String PACKAGE = TraceTable.class.getPackageName();
    private static final double MILLION = 1e6;

    private static final String HEAD =
            """

            | trace | of | million/s | error | by processor time | processors | bytes each |
            | --- | --- | ---: | ---: | ---: | ---: | ---: |
            """;

    private TraceTable() {}

    /** Returns the table of those results that are of traces, empty if none is. */
    public static String of(Collection<RunResult> results) {
        StringBuilder text = new StringBuilder();
        for (RunResult result : results) {
            if (result.getParams().getBenchmark().startsWith(PACKAGE)) {
                text.append(text.isEmpty() ? HEAD : "").append(row(result));
            }
        }
        return text.toString();
    }

    private static String row(RunResult result) {
        Result<?> primary = result.getPrimaryResult();
        double processors = secondary(result, ProcessorTime.LABEL);
        return String.format(
                Locale.ROOT,
                "| %s | %s | %,.2f | %,.2f | %,.2f | %.2f | %,.3f |%n",
                primary.getLabel(),
                subject(result.getParams()),
                primary.getScore() / MILLION,
                primary.getScoreError() / MILLION,
                primary.getScore() / processors / MILLION,
                processors,
                secondary(result, ALLOCATION));
    }

    /** What was read: the log, or the trace and its rate. */
    private static String subject(BenchmarkParams params) {
        String log = params.getParam("log");
        return log != null
                ? log
                : params.getParam("trace") + ", " + params.getParam("rate") + " Hz";
    }

    private static double secondary(RunResult result, String label) {
        Result<?> found = result.getSecondaryResults().get(label);
        return found == null ? Double.NaN : found.getScore();
    }
}
