package org.fandown.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/**
 * The results of one run as a table in Markdown, for each place one: inspections per second with
 * the harness's error (99.9 % confidence), how that compares with reading JSON, and the memory
 * taken.
 */
final class ResultTable {
    private static final String YARDSTICK = "readJson";
    private static final String ALLOCATION = "gc.alloc.rate.norm";

    private final Map<String, List<Row>> rows = new LinkedHashMap<>();

    /**
     * One measured benchmark.
     *
     * @param name the method
     * @param perSecond inspections per second
     * @param error half the width of the confidence interval, per second
     * @param bytes memory taken by one inspection (bytes), not a number if it was not measured
     */
    record Row(String name, double perSecond, double error, double bytes) {}

    /** Takes those results that are of inspections. */
    ResultTable(Collection<RunResult> results) {
        for (RunResult result : results) {
            String place = result.getParams().getParam("place");
            if (place == null) {
                continue;
            }
            rows.computeIfAbsent(place, p -> new ArrayList<>()).add(row(result));
        }
    }

    private static Row row(RunResult result) {
        Result<?> primary = result.getPrimaryResult();
        Result<?> allocation = result.getSecondaryResults().get(ALLOCATION);
        return new Row(
                primary.getLabel(),
                primary.getScore(),
                primary.getScoreError(),
                allocation == null ? Double.NaN : allocation.getScore());
    }

    String text() {
        StringBuilder text = new StringBuilder();
        rows.forEach((place, measured) -> append(text, place, measured));
        return text.toString();
    }

    private static void append(StringBuilder text, String place, List<Row> measured) {
        OptionalDouble yardstick =
                measured.stream()
                        .filter(row -> row.name().equals(YARDSTICK))
                        .mapToDouble(Row::perSecond)
                        .findFirst();
        text.append("\n| ").append(place);
        text.append(" | inspections/s | error | beside ").append(YARDSTICK);
        text.append(" | bytes each |\n| --- | ---: | ---: | ---: | ---: |\n");
        for (Row row : measured) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "| %s | %,.0f | %,.0f | %s | %,.0f |%n",
                            row.name(),
                            row.perSecond(),
                            row.error(),
                            ratio(row, yardstick),
                            row.bytes()));
        }
    }

    private static String ratio(Row row, OptionalDouble yardstick) {
        return yardstick.isPresent()
                ? String.format(Locale.ROOT, "%.2f", row.perSecond() / yardstick.getAsDouble())
                : "-";
    }
}
