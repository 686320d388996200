package org.fandown.app.referee;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.document.Node;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Run;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptReader;
import org.fandown.practice.ScriptRun;
import org.fandown.referee.Feedback;
import org.fandown.referee.ItemMarks;
import org.fandown.referee.Marks;
import org.fandown.referee.Referee;
import org.fandown.referee.Sheet;
import org.fandown.rulebook.Rulebook;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/** Runs of the examples, and what the referee says of them. */
final class Marked {
    static final Path EXAMPLES = Path.of("..", "examples");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 24);
    private static final RulePacks PACKS = RulePacks.builtIn();
    private static final Map<PlaceCode, Rulebook> BOOKS = new TreeMap<>();

    private Marked() {}

    static Vehicle vehicle(String name) {
        return VehicleReader.read(
                DocumentFiles.read(EXAMPLES.resolve("vehicles").resolve(name + ".yaml")));
    }

    static RulesInForce rules(String place, Vehicle vehicle) {
        PlaceCode code = new PlaceCode(place);
        return BOOKS.computeIfAbsent(code, c -> PACKS.rulebookFor(c).orElseThrow())
                .inForce(code, vehicle, DAY);
    }

    static Scenario scenario(Node document) {
        return new ScenarioReader(
                        name -> DocumentFiles.read(EXAMPLES.resolve("vehicles").resolve(name)))
                .read(document);
    }

    static Run run(Scenario scenario, Node script) {
        PracticeTruck truck = PracticeTruck.of(scenario);
        Script read = new ScriptReader(scenario.vehicle()).read(script);
        new ScriptRun(truck, read).perform(1, each -> {});
        return Run.of(truck, read.title());
    }

    static Marks mark(Run run, String place) {
        return Referee.mark(run, rules(place, run.scenario().vehicle()), Sheet.OURS);
    }

    /** For failures: every mistake in a line. */
    static String text(Marks marks) {
        StringBuilder text = new StringBuilder();
        text.append(marks.passed() ? "passed " : "not passed ");
        text.append(marks.kept()).append(" of ").append(marks.of()).append('\n');
        for (ItemMarks item : marks.items()) {
            for (Feedback each : item.feedback()) {
                text.append("  ").append(item.item().id()).append(" at ");
                text.append((long) each.seconds()).append(" s: ").append(each.happened());
                text.append(' ').append(each.spoiled()).append(' ').append(each.instead());
                text.append('\n');
            }
        }
        return text.toString();
    }
}
