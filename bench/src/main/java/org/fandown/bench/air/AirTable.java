package org.fandown.bench.air;

import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/** The results of the air benchmarks as a table in Markdown. */
public final class AirTable {
    private static final String ALLOCATION = "gc.alloc.rate.norm";
    private static final double MILLISECONDS = 1000;

    private static final String HEAD =
            """

            | air | ms | error | times real time | bytes each |
            | --- | ---: | ---: | ---: | ---: |
            """;

    private AirTable() {}

    /** Returns the table of those results that are of the air engine, empty if none is. */
    public static String of(Collection<RunResult> results) {
        StringBuilder text = new StringBuilder();
        for (RunResult result : results) {
            Double simulated = AirBenchmark.SIMULATED.get(result.getPrimaryResult().getLabel());
            if (simulated != null) {
                text.append(text.isEmpty() ? HEAD : "").append(row(result, simulated));
            }
        }
        return text.toString();
    }

    private static String row(RunResult result, double simulated) {
        Result<?> primary = result.getPrimaryResult();
        Result<?> allocation = result.getSecondaryResults().get(ALLOCATION);
        return String.format(
                Locale.ROOT,
                "| %s | %.4f | %.4f | %,.0f | %,.0f |%n",
                primary.getLabel(),
                primary.getScore(),
                primary.getScoreError(),
                simulated * MILLISECONDS / primary.getScore(),
                allocation == null ? Double.NaN : allocation.getScore());
    }
}
