package org.fandown.app.paper;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.fandown.check.CheckKind;
import org.fandown.check.Component;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Limit;

/**
 * The findings that need no line of their own, one paragraph for each status: what has no figure,
 * and what does not decide.
 */
final class ListsPart {
    private static final String ADVICE = "Advice, or asked of new vehicles only: does not decide";
    private static final List<Status> STATUSES =
            List.of(
                    Status.NOT_MET,
                    Status.UNDETERMINED,
                    Status.SPOILED,
                    Status.NOT_CHECKED,
                    Status.MET);

    private final Tag table;
    private final Sources sources;

    private ListsPart(Tag table, Sources sources) {
        this.table = table;
        this.sources = sources;
    }

    static void print(Tag page, List<Row> rows, Sources sources) {
        List<Row> listed = rows.stream().filter(row -> !row.isLine()).toList();
        if (listed.isEmpty()) {
            return;
        }
        boolean alone = listed.size() == rows.size();
        Tag table = page.add("table", alone ? "lists alone" : "lists").columns(List.of(13, 87));
        ListsPart part = new ListsPart(table.add("tbody"), sources);
        List<Row> deciding = only(listed, Row::decides);
        part.list(Status.NOT_CHECKED, only(deciding, is(Status.NOT_CHECKED)));
        List<Row> met = only(deciding, is(Status.MET));
        part.list(Status.MET, only(met, row -> !isPart(row)));
        part.parts(only(met, ListsPart::isPart));
        part.advice(only(listed, row -> !row.decides()));
    }

    /** What does not decide; of conditions on parts only those that were found. */
    private void advice(List<Row> rows) {
        List<Row> told = only(rows, row -> !isPart(row) || row.status() != Status.MET);
        if (told.isEmpty()) {
            return;
        }
        table.add("tr", "divider").add("td").set("colspan", "2").text(ADVICE);
        for (Status status : STATUSES) {
            list(status, only(told, is(status)));
        }
    }

    private static Predicate<Row> is(Status status) {
        return row -> row.status() == status;
    }

    private static boolean isPart(Row row) {
        return row.kind() == CheckKind.COMPONENT;
    }

    private static List<Row> only(List<Row> rows, Predicate<Row> wanted) {
        return rows.stream().filter(wanted).toList();
    }

    private Tag line(Status status) {
        Tag line = table.add("tr", status == Status.MET ? "met" : "open");
        Tag cell = line.add("td", "status");
        Mark.of(status).addTo(cell);
        cell.add("span", "word").text(Mark.word(status));
        return line.add("td");
    }

    private void list(Status status, List<Row> rows) {
        if (rows.isEmpty()) {
            return;
        }
        Tag cell = line(status);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            boolean last = i + 1 == rows.size();
            cell.text((i == 0 ? "" : " ") + item(row) + memory(row) + " ");
            cell.add("span", "cite").text(sources.cite(row.ruling()) + (last ? "." : ";"));
        }
    }

    private static String item(Row row) {
        String where = row.where().isEmpty() ? "" : " (" + row.where() + ")";
        String title = row.rule().title() + where;
        return switch (row.status()) {
            case MET, NOT_APPLICABLE -> title;
            case NOT_CHECKED -> title + wanted(row);
            case NOT_MET, UNDETERMINED, SPOILED ->
                    title + ": " + Words.withoutStop(Row.reason(row.findings().get(0)));
        };
    }

    /** What a check not made would have been compared with. */
    private static String wanted(Row row) {
        Limit limit = row.ruling().limit();
        if (limit instanceof Limit.Numeric) {
            return " (limit " + limit + ")";
        }
        boolean list = limit instanceof Limit.LookAt || limit instanceof Limit.ReportHolds;
        return list ? ": " + Words.withoutStop(Row.reason(row.findings().get(0))) : "";
    }

    private static String memory(Row row) {
        return row.isFromMemory() ? ", from memory" : "";
    }

    /** Conditions looked for and not found, part by part. */
    private void parts(List<Row> rows) {
        if (rows.isEmpty()) {
            return;
        }
        Map<Component, StringBuilder> byPart = new LinkedHashMap<>();
        for (Row row : rows) {
            Limit.Absent absent = (Limit.Absent) row.ruling().limit();
            StringBuilder text = byPart.computeIfAbsent(absent.on(), on -> new StringBuilder());
            text.append(text.length() == 0 ? absent.on().title() + ": " : ", ");
            text.append(absent).append(memory(row)).append(' ').append(sources.cite(row.ruling()));
        }
        line(Status.MET).text("Parts looked at. " + String.join("; ", byPart.values()) + ".");
    }
}
