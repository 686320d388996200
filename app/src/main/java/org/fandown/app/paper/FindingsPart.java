package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.judgement.Allowed;
import org.fandown.judgement.Edge;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Measurement;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Standing;
import org.fandown.vehicle.WheelId;

/** The table of findings that decide: mark and word, check, measured value, limit, source. */
final class FindingsPart {
    private static final List<Integer> WIDTHS = List.of(13, 38, 17, 22, 10);

    private final Tag body;
    private final Sources sources;

    private FindingsPart(Tag body, Sources sources) {
        this.body = body;
        this.sources = sources;
    }

    static void print(Tag page, List<Row> rows, Sources sources) {
        page.add("h2").text("Findings");
        List<Row> lines = rows.stream().filter(Row::isLine).toList();
        if (lines.isEmpty()) {
            return;
        }
        Tag table = page.add("table", "findings").columns(WIDTHS);
        Tag head = table.add("thead").add("tr");
        for (String title : List.of("Status", "Check", "Measured", "Limit", "Source")) {
            head.add("th").text(title);
        }
        FindingsPart part = new FindingsPart(table.add("tbody"), sources);
        lines.forEach(part::line);
    }

    private void line(Row row) {
        boolean bad = row.status() != Status.MET;
        Tag line = body.add("tr", bad ? "open" : "met");
        Tag status = line.add("td", "status");
        Mark.of(row.status()).addTo(status);
        status.add("span", "word").text(Mark.word(row.status()));
        Tag check = line.add("td");
        check.add("span", bad ? "strong" : "plain").text(row.rule().title());
        check.add("span", "minor").text(" " + where(row));
        measured(line.add("td"), row);
        limit(line.add("td"), row);
        Tag source = line.add("td");
        source.add("span", "cite").text(sources.cite(row.ruling()));
        if (row.isFromMemory()) {
            source.text(" ").add("span", "flag").text("from memory");
        }
        if (bad) {
            reason(row);
        }
    }

    private static String where(Row row) {
        String place = row.rule().place().code();
        return row.where().isEmpty() ? place : row.where() + ", " + place;
    }

    private static void measured(Tag cell, Row row) {
        List<Measurement> values =
                row.findings().stream().flatMap(f -> f.measured().stream()).toList();
        if (values.isEmpty()) {
            cell.text("\u2013");
            return;
        }
        Measurement least = values.get(0);
        Measurement most = values.get(0);
        for (Measurement value : values) {
            least = value.value() < least.value() ? value : least;
            most = value.value() > most.value() ? value : most;
        }
        if (least.value() != most.value()) {
            cell.add("span", "strong").text(Words.value(least) + " to " + Words.value(most));
            return;
        }
        cell.add("span", "strong").text(Words.value(least));
        cell.add("span", "minor").text(" " + Words.interval(least));
    }

    private static void limit(Tag cell, Row row) {
        cell.text(limit(row));
        if (row.rule().weight().approximate()) {
            cell.add("span", "minor").text(" (the text says \"about\")");
        }
        if (row.rule().weight().standing() == Standing.UNCONFIRMED) {
            cell.text(" ").add("span", "flag").text("unconfirmed");
        }
    }

    /** The limit as printed; of strokes that of the chamber, where all wheels have the same. */
    private static String limit(Row row) {
        if (!(row.ruling().limit() instanceof Limit.Strokes)) {
            return row.ruling().limit().toString();
        }
        List<String> limits =
                row.findings().stream().flatMap(f -> stroke(f).stream()).distinct().toList();
        return limits.size() == 1 ? "at most " + limits.get(0) : "see the axles above";
    }

    private static Optional<String> stroke(Finding finding) {
        Optional<Edge> upper = finding.allowed().flatMap(Allowed::upper);
        return finding.measured()
                .flatMap(m -> upper.map(edge -> Words.quantity(edge.value(), m.unit())));
    }

    private void reason(Row row) {
        Tag line = body.add("tr", "reason");
        line.add("td");
        Tag cell = line.add("td").set("colspan", "4");
        Map<String, List<String>> wheels = new LinkedHashMap<>();
        for (Finding finding : row.findings()) {
            wheels.computeIfAbsent(Row.reason(finding), r -> new ArrayList<>())
                    .addAll(finding.wheel().map(WheelId::toString).stream().toList());
        }
        boolean one = wheels.size() == 1;
        wheels.forEach(
                (reason, at) -> cell.text((one ? "" : String.join(" ", at) + ": ") + reason + " "));
        ruleText(row).ifPresent(words -> cell.text("Rule: " + words + " "));
        String advice = row.findings().get(0).why().advice();
        if (!advice.isEmpty()) {
            cell.add("span", "next").text("Next: " + advice);
        }
    }

    /** The rule in plain words where a figure and its limit do not say it already. */
    private static Optional<String> ruleText(Row row) {
        boolean measured = row.findings().stream().anyMatch(f -> f.measured().isPresent());
        boolean told =
                row.status() == Status.SPOILED || (row.status() == Status.NOT_MET && !measured);
        String words = row.rule().words().strip();
        return told && !words.isEmpty() ? Optional.of(words) : Optional.empty();
    }
}
