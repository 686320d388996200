package org.fandown.app.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fandown.app.paper.ReportContent;
import org.fandown.app.paper.ReportPdf;
import org.fandown.app.paper.TraceContent;
import org.fandown.check.Check;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.plot.ChartSize;
import org.fandown.plot.ClockText;
import org.fandown.plot.Drawing;
import org.fandown.plot.TraceChart;
import org.fandown.record.JudgementDocument;
import org.fandown.trace.Channel;
import org.fandown.trace.LossAdvice;
import org.fandown.trace.OperatorMark;
import org.fandown.trace.Recognised;
import org.fandown.trace.TraceDocument;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceNote;
import org.fandown.trace.TraceReadings;

/** The printed report of a judgement that rests on a trace. */
final class TraceReport {
    private static final double DETAIL = 105;

    private final String name;
    private final TraceLog log;
    private final TracePictures pictures;
    private final TraceReadings readings;
    private final Judgement judgement;
    private final List<Recognised> inOrder;

    TraceReport(
            String name,
            TraceLog log,
            TracePictures pictures,
            TraceReadings readings,
            Judgement judgement) {
        this.name = name;
        this.log = log;
        this.pictures = pictures;
        this.readings = readings;
        this.judgement = judgement;
        inOrder = TraceDocument.inOrder(log);
    }

    /**
     * Writes it.
     *
     * @param sha256 the SHA-256 of the log
     * @param missing checks of the place that the log could show and does not
     * @param losses what is known of each air-loss test
     * @param file where to
     */
    void write(String sha256, List<Check> missing, List<LossAdvice> losses, Path file) {
        String json = Json.write(JudgementDocument.of(judgement, Optional.empty()));
        Optional<TraceContent> trace = Optional.of(content(sha256, missing, losses));
        ReportPdf.write(new ReportContent(judgement, Optional.empty(), trace, json), file);
    }

    private TraceContent content(String sha256, List<Check> missing, List<LossAdvice> losses) {
        Drawing whole =
                TraceChart.of(
                        "The whole trace with what was recognised",
                        pictures.overview(log, inOrder),
                        ChartSize.PAPER);
        List<TraceContent.Test> tests = new ArrayList<>();
        for (int i = 0; i < inOrder.size(); i++) {
            tests.add(test(i + 1, inOrder.get(i)));
        }
        String json =
                Json.write(
                        TraceJson.of(
                                log,
                                shortName(),
                                Optional.of(sha256),
                                Optional.of(judgement),
                                missing,
                                losses));
        return new TraceContent(shortName(), sha256, facts(), remarks(), whole, tests, json);
    }

    /** The name of the file without where it lay, which says nothing on paper. */
    private String shortName() {
        try {
            Path last = Path.of(name).getFileName();
            return name.equals("-") || last == null ? "standard input" : last.toString();
        } catch (InvalidPathException e) {
            return name;
        }
    }

    private List<String> facts() {
        List<String> facts = new ArrayList<>();
        if (log.isSimulated()) {
            facts.add("Simulated: the log says that it comes from a practice truck.");
        }
        facts.add(
                (log.isTable() ? "CSV of " : "A candump log of ")
                        + number(log.lines())
                        + " lines, "
                        + ClockText.tenths(log.seconds())
                        + " min.");
        List<String> channels = new ArrayList<>();
        for (Map.Entry<Channel, Long> each : log.channels().entrySet()) {
            channels.add(each.getKey().title() + " (" + number(each.getValue()) + ")");
        }
        facts.add(
                "Channels, with the number of their samples: " + String.join(", ", channels) + ".");
        if (!log.marks().isEmpty()) {
            List<String> marks = new ArrayList<>();
            for (OperatorMark mark : log.marks()) {
                marks.add(ClockText.tenths(mark.seconds()) + " " + mark.word().id());
            }
            facts.add("Marked by a person: " + String.join(", ", marks) + ".");
        }
        if (inOrder.isEmpty()) {
            facts.add("It holds no test of the air system.");
        }
        if (inOrder.size() > TracePictures.MOST) {
            facts.add(
                    "Of "
                            + inOrder.size()
                            + " things recognised "
                            + TracePictures.MOST
                            + " are drawn by themselves: those that are judged and the first of"
                            + " the others.");
        }
        return facts;
    }

    private static String number(long number) {
        return String.format(Locale.ROOT, "%,d", number).replace(',', ' ');
    }

    private List<String> remarks() {
        return log.notes().stream().map(TraceNote::sentence).toList();
    }

    private TraceContent.Test test(int number, Recognised found) {
        return new TraceContent.Test(
                number,
                TraceFigures.name(found.kind()),
                ClockText.tenths(found.from()),
                ClockText.tenths(found.to()),
                TraceFigures.value(found),
                TraceFigures.interval(found),
                TraceFigures.engine(found),
                judged(found),
                drawing(found));
    }

    private Optional<Drawing> drawing(Recognised found) {
        return pictures.detail(log, found, inOrder)
                .map(
                        view ->
                                TraceChart.of(
                                        TraceFigures.name(found.kind()) + " in the trace",
                                        view,
                                        ChartSize.PAPER.high(DETAIL)));
    }

    /** As which check it was judged, and the worst that came of it. */
    private String judged(Recognised found) {
        for (Map.Entry<Check, Recognised> each : readings.used().entrySet()) {
            if (each.getValue().equals(found)) {
                return each.getKey().title() + ": " + finding(each.getKey());
            }
        }
        return "";
    }

    private String finding(Check check) {
        return judgement.findings().stream()
                .filter(finding -> finding.ruling().rule().check() == check && finding.decides())
                .map(Finding::status)
                .map(Names::kebab)
                .map(status -> status.replace('-', ' '))
                .distinct()
                .reduce((one, other) -> one + ", " + other)
                .orElse("no rule here");
    }
}
