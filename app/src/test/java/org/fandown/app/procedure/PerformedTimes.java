package org.fandown.app.procedure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.operator.Operator;
import org.fandown.operator.Performance;
import org.fandown.operator.StepTime;
import org.fandown.plot.ClockText;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Scenario;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.procedure.WorkStep;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Decimals;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/** How long plans were expected to take, and how long the perfect operator took. */
final class PerformedTimes {
    private static final Path VEHICLES = Path.of("../examples/vehicles");
    private static final PlaceCode PLACE = new PlaceCode("US-GA");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    /** What differs by more than this is named, percent. */
    private static final double OFF = 20;

    private final StringBuilder rows = new StringBuilder();
    private final Map<String, double[]> steps = new TreeMap<>();

    /** Returns the section of the page. */
    static String section() throws IOException {
        PerformedTimes times = new PerformedTimes();
        for (Path file : files()) {
            times.add(VehicleReader.read(DocumentFiles.read(file)));
        }
        return "\n## Planned and performed\n\n"
                + "What the perfect operator (`org.fandown.operator`) took on the sound practice truck"
                + " in Georgia, found empty, waiting on\nneedles where the plan has figures of its"
                + " model.\n\n"
                + "| vehicle | planned | performed | difference |\n| --- | --- | --- | --- |\n"
                + times.rows
                + "\nSteps that took more than a fifth more or less than planned, on average over"
                + " these vehicles. A needle that moved\nwithin the minute is watched for three, to"
                + " tell how fast; a cut-in is seen by needles that climb for some seconds;\nthe"
                + " warning comes on above the figure a plan pumps down to.\n\n"
                + "| step | times | planned | performed |\n| --- | --- | --- | --- |\n"
                + times.off();
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(VEHICLES)) {
            return all.sorted().toList();
        }
    }

    private void add(Vehicle vehicle) {
        RulesInForce rules =
                RulePacks.builtIn().rulebookFor(PLACE).orElseThrow().inForce(PLACE, vehicle, DAY);
        Plan plan = Planner.plan(rules, Scope.ASKED, PlanRequest.QUICKEST).orElseThrow();
        Performance done = Operator.perform(plan, PracticeTruck.of(Scenario.of(vehicle)));
        double planned = plan.tenths() / 10.0;
        double percent = 100 * (done.seconds() - planned) / planned;
        rows.append("| ")
                .append(vehicle.name())
                .append(" | ")
                .append(ClockText.whole(planned))
                .append(" | ")
                .append(ClockText.whole(done.seconds()))
                .append(" | ")
                .append(percent < 0 ? "" : "+")
                .append(Decimals.format(percent, 0))
                .append(" % |\n");
        done.times().forEach(this::add);
    }

    private void add(StepTime time) {
        String name =
                time.planned().step() instanceof WorkStep work
                        ? work.work().id()
                        : time.planned().step().text();
        double[] sums = steps.computeIfAbsent(name, key -> new double[3]);
        sums[0]++;
        sums[1] += time.plannedSeconds();
        sums[2] += time.seconds();
    }

    private String off() {
        StringBuilder text = new StringBuilder();
        steps.forEach(
                (name, sums) -> {
                    if (Math.abs(sums[2] - sums[1]) * 100 > OFF * sums[1]) {
                        text.append("| `")
                                .append(name)
                                .append("` | ")
                                .append(Decimals.format(sums[0], 0))
                                .append(" | ")
                                .append(Decimals.format(sums[1] / sums[0], 0))
                                .append(" s | ")
                                .append(Decimals.format(sums[2] / sums[0], 0))
                                .append(" s |\n");
                    }
                });
        return text.toString();
    }
}
