package org.fandown.app.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fandown.check.Check;
import org.fandown.plot.ClockText;
import org.fandown.trace.Channel;
import org.fandown.trace.LossAdvice;
import org.fandown.trace.Recognised;
import org.fandown.trace.RecognisedWords;
import org.fandown.trace.TraceDocument;
import org.fandown.trace.TraceLog;
import org.fandown.trace.VehicleNumber;

/** Prints for a person what a trace is and what was recognised in it. */
final class TraceText {
    private final TraceLog log;
    private final Screen screen;

    TraceText(TraceLog log, Screen screen) {
        this.log = log;
        this.screen = screen;
    }

    void print(String name) {
        screen.title("Trace " + name);
        screen.line(
                (log.isTable() ? "CSV, " : "candump log, ")
                        + ClockText.tenths(log.seconds())
                        + " min, "
                        + String.format(Locale.ROOT, "%,d", log.lines()).replace(',', ' ')
                        + " lines");
        if (log.isSimulated()) {
            screen.wrapped("", "Simulated: the log says that it comes from a practice truck.");
        }
        Map<Channel, Long> channels = log.channels();
        List<String> titles = channels.keySet().stream().map(Channel::title).toList();
        screen.hanging("Channels: ", String.join(", ", titles));
        for (VehicleNumber vin : log.vins()) {
            screen.hanging(
                    "VIN: ", vin.text() + " from address " + vin.source() + "; " + vin.remark());
        }
        if (!log.marks().isEmpty()) {
            screen.heading("Marked by a person");
            log.marks()
                    .forEach(
                            mark ->
                                    screen.line(
                                            "  "
                                                    + ClockText.tenths(mark.seconds())
                                                    + "  "
                                                    + mark.word().id()));
        }
        if (!log.notes().isEmpty()) {
            screen.heading("To know about the log");
            log.notes().forEach(note -> screen.hanging("  - ", note.sentence()));
        }
        recognised();
    }

    private void recognised() {
        screen.heading("Recognised");
        if (log.recognised().isEmpty()) {
            screen.wrapped(
                    "  ",
                    "Nothing: this trace holds no test of the air system. Nothing is guessed from"
                            + " driving.");
            return;
        }
        for (Recognised found : TraceDocument.inOrder(log)) {
            String when =
                    ClockText.tenths(found.from()) + " to " + ClockText.tenths(found.to()) + "  ";
            screen.hanging("  " + when, RecognisedWords.text(found));
        }
    }

    /** Prints what is known of each air-loss test, and when it was. */
    void tests(List<LossAdvice> tests) {
        if (tests.isEmpty()) {
            return;
        }
        screen.heading("Air-loss tests against the limits of the place");
        tests.forEach(test -> screen.hanging("  - ", LossWords.ended(test)));
    }

    /** Prints which checks of the place a trace could hold, and this one does not. */
    void missing(List<Check> missing) {
        if (missing.isEmpty()) {
            return;
        }
        screen.heading("Not in this trace, of what the place asks for");
        for (Check check : missing) {
            String lacks = RecognisedWords.lacks(check, log.channels());
            screen.hanging("  - ", check.title() + (lacks.isEmpty() ? "" : " (" + lacks + ")"));
        }
    }
}
