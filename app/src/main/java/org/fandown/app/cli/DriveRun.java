package org.fandown.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.Consumer;
import org.fandown.plot.Curve;
import org.fandown.plot.Drawing;
import org.fandown.plot.Mark;
import org.fandown.plot.PressureChart;
import org.fandown.practice.PracticeEvent;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Scenario;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptRun;
import org.fandown.practice.Signal;
import org.fandown.units.Decimals;

/** One script done with one truck: its rows, its curves and its events. */
final class DriveRun {
    private final PracticeTruck truck;
    private final Script script;
    private final Progress progress;
    private final List<Signal> signals;
    private final Curve primary = new Curve("primary needle");
    private final Curve secondary = new Curve("secondary needle");

    DriveRun(Scenario scenario, Script script, PrintWriter err) {
        this.truck = PracticeTruck.of(scenario);
        this.script = script;
        this.signals = Signal.of(truck);
        this.progress = new Progress(err);
    }

    /**
     * Does the script.
     *
     * @param period time between rows, s
     * @param rows takes the head and each row of the trace, with its line end
     */
    void perform(double period, Consumer<String> rows) {
        rows.accept(head());
        new ScriptRun(truck, script)
                .perform(
                        period,
                        now -> {
                            rows.accept(row());
                            primary.add(now.time(), now.dash().primary().inPsi());
                            secondary.add(now.time(), now.dash().secondary().inPsi());
                            progress.at(now.time());
                        });
        progress.done();
    }

    private String head() {
        return String.join(",", signals.stream().map(Signal::head).toList()) + ",simulated\n";
    }

    private String row() {
        StringBuilder row = new StringBuilder();
        for (Signal signal : signals) {
            row.append(row.length() == 0 ? "" : ",")
                    .append(Decimals.format(signal.value(truck), signal.decimals()));
        }
        return row.append(",1\n").toString();
    }

    PracticeTruck truck() {
        return truck;
    }

    Script script() {
        return script;
    }

    List<Signal> signals() {
        return signals;
    }

    List<Curve> curves() {
        return List.of(primary, secondary);
    }

    List<Mark> marks() {
        return truck.events().stream().map(DriveRun::mark).toList();
    }

    private static Mark mark(PracticeEvent event) {
        return new Mark(event.seconds(), text(event), weight(event.kind()));
    }

    private static Mark.Weight weight(PracticeEvent.Kind kind) {
        return switch (kind) {
            case ACTION, REFUSED, OBSERVED, STATED -> Mark.Weight.PLAIN;
            case SIGN -> Mark.Weight.STRONG;
            case HAZARD -> Mark.Weight.HAZARD;
        };
    }

    private static String text(PracticeEvent event) {
        return event.kind() == PracticeEvent.Kind.REFUSED
                ? "not possible: " + event.text()
                : event.text();
    }

    Drawing drawing() {
        Scenario scenario = truck.scenario();
        return PressureChart.of(
                scenario.title(),
                scenario.vehicle().name() + ", simulated by Fandown",
                curves(),
                marks());
    }
}
