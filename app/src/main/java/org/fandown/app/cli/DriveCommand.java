package org.fandown.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.fandown.air.Fault;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.WholeFile;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.plot.SvgText;
import org.fandown.practice.FaultFit;
import org.fandown.practice.FaultsDocument;
import org.fandown.practice.Run;
import org.fandown.practice.RunDocument;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptReader;
import org.fandown.referee.Sheet;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.QuantityFormatException;
import org.fandown.units.Unit;
import org.fandown.vehicle.VehicleReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code drive}: a script done with the practice truck, without a screen. */
@Command(
        name = "drive",
        mixinStandardHelpOptions = true,
        description = {
            "Does with the practice truck of a scenario what a script says, and shows what came of"
                    + " it.",
            "With --mark, marks what was done and said, as an examiner would. A practice result is"
                    + " not a licence to drive.",
            "With --list-faults, lists what can be wrong with a truck."
        },
        footer = {
            "",
            "Exit codes: 0 done, or with --mark passed; 1 with --mark not passed; 2 bad usage or bad"
                    + " input.",
            "Without --mark, what happens to the truck is no verdict.",
            "Examples lie in examples/scenarios and examples/scripts, for instance:",
            "  fandown drive examples/scenarios/cold-start.yaml \\",
            "      --script examples/scripts/in-cab-test.yaml"
        })
final class DriveCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";
    private static final double LEAST_EVERY = 0.02;
    private static final double MOST_EVERY = 3600;

    @Spec private CommandSpec spec;
    @Mixin private MarkOptions markOptions;

    @Parameters(
            paramLabel = "SCENARIO",
            arity = "0..1",
            description = "the scenario file (YAML or JSON)")
    private @Nullable Path file;

    @Option(
            names = "--script",
            paramLabel = "FILE",
            description = "what is done, in order (YAML or JSON)")
    private @Nullable Path script;

    @Option(
            names = "--out",
            paramLabel = "OUT.csv",
            description = "write all signals over time as CSV; - for standard output")
    private @Nullable String out;

    @Option(
            names = "--every",
            paramLabel = "TIME",
            description = "time between the rows, 0.02 s to 1 h; default 0.1 s")
    private String every = "0.1 s";

    @Option(
            names = "--plot",
            paramLabel = "OUT.svg",
            description = "draw both needles and the events as SVG")
    private @Nullable Path plot;

    @Option(names = "--json", description = "write what came of it as JSON")
    private boolean json;

    @Option(names = "--list-faults", description = "list the faults that a scenario can have")
    private boolean listFaults;

    @Option(
            names = "--vehicle",
            paramLabel = "FILE",
            description = "with --list-faults: only the faults that this vehicle can have")
    private @Nullable Path vehicle;

    private DriveCommand() {}

    @Override
    public Integer call() {
        if (listFaults) {
            list();
            return ExitCode.DONE;
        }
        boolean drives = file != null || script != null || out != null || plot != null;
        markOptions.requireSense(spec.commandLine(), drives);
        if (markOptions.replays()) {
            Sheet sheet = markOptions.sheet();
            return markOptions.mark(markOptions.stored(), sheet, json, spec.commandLine());
        }
        return driven();
    }

    private int driven() {
        double period = period();
        Path scenarioFile = requireSense(file, script);
        Scenario scenario = scenario(scenarioFile);
        Script steps =
                new ScriptReader(scenario.vehicle())
                        .read(DocumentFiles.read(java.util.Objects.requireNonNull(script)));
        Sheet sheet = markOptions.sheet();
        if (markOptions.marks()) {
            markOptions.place(scenario, spec.commandLine());
        }
        DriveRun run = new DriveRun(scenario, steps, spec.commandLine().getErr());
        drive(run, period);
        if (plot != null) {
            String svg = SvgText.of(run.drawing());
            WholeFile.write("plot", plot, svg.getBytes(StandardCharsets.UTF_8));
        }
        Run done = Run.of(run.truck(), steps.title());
        markOptions.store(done);
        if (markOptions.marks()) {
            return markOptions.mark(done, sheet, json, spec.commandLine());
        }
        show(run, steps);
        return ExitCode.DONE;
    }

    private void show(DriveRun run, Script steps) {
        PrintWriter screen = spec.commandLine().getOut();
        if (json) {
            screen.println(Json.write(RunDocument.of(run.truck(), steps)));
            screen.flush();
        } else if (!STANDARD_OUTPUT.equals(out)) {
            new DriveText(run, new Screen(screen)).print();
        }
    }

    private void drive(DriveRun run, double period) {
        if (out == null) {
            run.perform(period, row -> {});
        } else if (out.equals(STANDARD_OUTPUT)) {
            PrintWriter screen = spec.commandLine().getOut();
            run.perform(period, screen::print);
            screen.flush();
        } else {
            try (WholeFile trace = WholeFile.begin("trace", path(out))) {
                run.perform(period, trace::write);
                trace.keep();
            }
        }
    }

    /** Says at once what is missing, before anything is read. */
    private Path requireSense(@Nullable Path scenario, @Nullable Path steps) {
        if (scenario == null) {
            throw bad("A scenario is needed, such as examples/scenarios/cold-start.yaml.");
        }
        if (steps == null) {
            throw bad(
                    "A script is needed that says what is done with the truck, such as"
                            + " --script examples/scripts/in-cab-test.yaml.");
        }
        if (vehicle != null) {
            throw bad("--vehicle goes with --list-faults; a scenario names its own vehicle.");
        }
        if (STANDARD_OUTPUT.equals(out) && (json || markOptions.marks())) {
            throw bad(
                    (json ? "--json" : "--mark")
                            + " and --out - would both write to standard output. Name a file.");
        }
        return scenario;
    }

    private double period() {
        try {
            double seconds = Quantity.parse(every, Dimension.TIME).valueIn(Unit.SECOND);
            if (seconds >= LEAST_EVERY && seconds <= MOST_EVERY) {
                return seconds;
            }
        } catch (QuantityFormatException e) {
            throw new ParameterException(spec.commandLine(), "--every: " + e.getMessage(), e);
        }
        throw bad("--every " + every + " is out of range. Allowed: 0.02 s to 1 h.");
    }

    private Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new ParameterException(
                    spec.commandLine(), "'" + name + "' is not the name of a file.", e);
        }
    }

    private static Scenario scenario(Path scenario) {
        Node written = DocumentFiles.read(scenario);
        return new ScenarioReader(name -> fetch(scenario, name)).read(written);
    }

    private static Node fetch(Path scenario, String name) {
        try {
            return DocumentFiles.read(scenario.resolveSibling(name));
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("it is not a path", e);
        }
    }

    private void list() {
        if (file != null || script != null || out != null || plot != null) {
            throw bad("--list-faults stands alone, or with --vehicle and --json.");
        }
        List<Fault> faults =
                vehicle == null
                        ? List.of(Fault.values())
                        : FaultFit.of(VehicleReader.read(DocumentFiles.read(vehicle)));
        PrintWriter screen = spec.commandLine().getOut();
        if (json) {
            screen.println(Json.write(FaultsDocument.of(faults)));
            screen.flush();
        } else {
            FaultsText.print(faults, new Screen(screen));
        }
    }

    private ParameterException bad(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
