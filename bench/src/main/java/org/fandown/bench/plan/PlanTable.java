package org.fandown.bench.plan;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;

/** The results of {@link PlanBenchmark} as a table in Markdown: milliseconds, side by side. */
public final class PlanTable {
    private static final String PLAN = PlanBenchmark.class.getName() + ".plan";
    private static final String EXAMINE = PlanBenchmark.class.getName() + ".examine";
    private static final double MILLIS = 1000;

    private static final String HEAD =
            """

            | rules | checks | plan, ms | slowest, ms | examine, ms | plan / examine |
            | --- | --- | ---: | ---: | ---: | ---: |
            """;

    private PlanTable() {}

    /** Returns the table of those results that are of plans, empty if none is. */
    public static String of(Collection<RunResult> results) {
        Map<String, Double> examined = new TreeMap<>();
        for (RunResult result : results) {
            if (result.getParams().getBenchmark().equals(EXAMINE)) {
                examined.put(subject(result.getParams()), millis(result));
            }
        }
        StringBuilder text = new StringBuilder();
        for (RunResult result : results) {
            if (result.getParams().getBenchmark().equals(PLAN)) {
                text.append(text.isEmpty() ? HEAD : "").append(row(result, examined));
            }
        }
        return text.toString();
    }

    private static String row(RunResult result, Map<String, Double> examined) {
        String subject = subject(result.getParams());
        double beside = examined.getOrDefault(subject, Double.NaN);
        double plan = millis(result);
        double slowest = MILLIS / result.getPrimaryResult().getStatistics().getMin();
        return String.format(
                Locale.ROOT,
                "| %s | %,.0f | %,.0f | %.3f | %,.0f |%n",
                subject,
                plan,
                slowest,
                beside,
                plan / beside);
    }

    private static String subject(BenchmarkParams params) {
        return params.getParam("rulesOf")
                + " | "
                + params.getParam("checks").toLowerCase(Locale.ROOT);
    }

    private static double millis(RunResult result) {
        return MILLIS / result.getPrimaryResult().getScore();
    }
}
