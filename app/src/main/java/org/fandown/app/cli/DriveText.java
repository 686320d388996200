package org.fandown.app.cli;

import java.util.List;
import org.fandown.plot.ClockText;
import org.fandown.plot.Mark;
import org.fandown.plot.MarkGroup;
import org.fandown.plot.TextChart;
import org.fandown.practice.Dash;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.RunDocument;
import org.fandown.practice.Scenario;
import org.fandown.units.GaugePressure;
import org.fandown.units.Num;
import org.fandown.units.Quantities;
import org.fandown.units.Unit;

/** Prints what came of a run for a person at a terminal, 80 columns wide. */
final class DriveText {
    private static final int WIDTH = 80;
    private static final int NUMBER = 4;
    private static final int CLOCK = 9;

    private final DriveRun run;
    private final Screen screen;

    DriveText(DriveRun run, Screen screen) {
        this.run = run;
        this.screen = screen;
    }

    void print() {
        PracticeTruck truck = run.truck();
        Scenario scenario = truck.scenario();
        screen.title(scenario.title());
        lines("", scenario.vehicle().name() + place(scenario));
        if (!run.script().title().isEmpty()) {
            lines("", "Script: " + run.script().title());
        }
        screen.line("Driven " + ClockText.tenths(truck.time()) + " min; a simulation, no verdict.");
        screen.line("");
        TextChart chart = new TextChart(run.curves(), run.marks());
        chart.lines().forEach(screen::line);
        screen.heading("What happened");
        chart.groups().forEach(this::group);
        screen.heading("At the end");
        end(truck);
        screen.done();
    }

    private static String place(Scenario scenario) {
        return scenario.place().map(place -> ", " + place.code()).orElse("");
    }

    private void group(MarkGroup group) {
        String number = Integer.toString(group.number());
        for (Mark mark : group.summed()) {
            String clock = ClockText.tenths(mark.seconds());
            String head =
                    " ".repeat(NUMBER - 1 - number.length())
                            + number
                            + " ".repeat(Math.max(1, CLOCK - clock.length()))
                            + clock
                            + "  ";
            event(head, mark);
            number = "";
        }
    }

    private void event(String head, Mark mark) {
        boolean hazard = mark.weight() == Mark.Weight.HAZARD;
        List<String> text =
                Screen.wrap(hazard ? "DANGER: " + mark.text() : mark.text(), WIDTH - head.length());
        for (int i = 0; i < text.size(); i++) {
            String line = (i == 0 ? head : " ".repeat(head.length())) + text.get(i);
            if (hazard) {
                screen.title(line);
            } else {
                screen.line(line);
            }
        }
    }

    private void end(PracticeTruck truck) {
        Dash dash = truck.dash();
        TextTable table = new TextTable();
        table.add("  primary needle", pressure(dash.primary()));
        table.add("  secondary needle", pressure(dash.secondary()));
        dash.parkingKnobIn().ifPresent(in -> table.add("  parking knob", in ? "in" : "out"));
        dash.trailerKnobIn().ifPresent(in -> table.add("  trailer supply knob", in ? "in" : "out"));
        table.add("  fingerprint", RunDocument.hex(truck.fingerprint()));
        screen.table(table);
    }

    private static String pressure(GaugePressure pressure) {
        return Quantities.print(Num.round(pressure.inPsi()), Unit.PSI)
                + " ("
                + Quantities.print(Num.round(pressure.inKilopascals()), Unit.KPA)
                + ")";
    }

    private void lines(String indent, String text) {
        Screen.wrap(text, WIDTH - indent.length()).forEach(line -> screen.line(indent + line));
    }
}
