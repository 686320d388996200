package org.fandown.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.paper.PlanCardPdf;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Examination;
import org.fandown.procedure.OrderExaminer;
import org.fandown.procedure.OrderReader;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanDocument;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.procedure.Step;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Dimension;
import org.fandown.units.Num;
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
import picocli.CommandLine.Spec;

/** The verb {@code plan}: the quickest order of work, or what is wrong with another. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = {
            "Prints the quickest order of work that proves a vehicle in a place, with reasons.",
            "With --check, says what is wrong with an order of your own."
        },
        footer = {
            "",
            "Exit codes: 0 done, 1 the order that was checked is not sound, 2 bad usage or bad input.",
            "Examples of orders lie in examples/orders."
        })
final class PlanCommand implements Callable<Integer> {
    private static final int MOST_PSI = 150;

    @Spec private CommandSpec spec;
    @Mixin private PackOptions packOptions;

    @Option(
            names = "--place",
            paramLabel = "CODE",
            required = true,
            description = "ISO 3166 code such as CA-BC")
    private @Nullable String place;

    @Option(
            names = "--vehicle",
            paramLabel = "FILE",
            required = true,
            description = "the vehicle file (YAML or JSON)")
    private @Nullable Path vehicle;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "the day, such as 2026-11-25; default today")
    private @Nullable String day;

    @Option(
            names = "--start-pressure",
            paramLabel = "PRESSURE",
            description = "pressure the vehicle is found with, such as '60 psi'; default 0")
    private @Nullable String startPressure;

    @Option(
            names = "--thorough",
            description = "every check a person can make, beside those the place asks for")
    private boolean thorough;

    @Option(names = "--fewest-starts", description = "start the engine as seldom as possible")
    private boolean fewestStarts;

    @Option(
            names = "--follow-order",
            paramLabel = "ORDER.yaml",
            description = "keep the steps of this order in turn and fill its gaps")
    private @Nullable Path followed;

    @Option(
            names = "--as-printed",
            description = "keep the order in which the place prints its tests, if its pack has one")
    private boolean asPrinted;

    @Option(
            names = "--check",
            paramLabel = "ORDER.yaml",
            description = "examine this order instead of making one")
    private @Nullable Path checked;

    @Option(names = "--card", paramLabel = "OUT.pdf", description = "write the plan as a card too")
    private @Nullable Path card;

    @Option(names = "--json", description = "write JSON")
    private boolean json;

    private PlanCommand() {}

    @Override
    public Integer call() {
        PlaceCode at = PackOptions.place(Objects.requireNonNull(place), spec.commandLine());
        RulesInForce rules =
                packOptions
                        .rulebook(packOptions.packs(), at, spec.commandLine())
                        .inForce(
                                at,
                                VehicleReader.read(
                                        DocumentFiles.read(Objects.requireNonNull(vehicle))),
                                PackOptions.day(day, spec.commandLine()));
        Durations durations = VehicleDurations.of(rules.vehicle());
        StepSet set = Steps.of(rules, durations, thorough ? Scope.THOROUGH : Scope.ASKED);
        return checked == null
                ? plan(set, durations)
                : examine(set, durations, DocumentFiles.read(checked));
    }

    private int plan(StepSet set, Durations durations) {
        PlanRequest request =
                new PlanRequest(
                        startPsi(),
                        fewestStarts ? PlanRequest.Goal.FEWEST_STARTS : PlanRequest.Goal.QUICKEST,
                        followedSteps(set, durations),
                        asPrinted);
        Optional<Plan> plan = new Planner(set, durations).plan(request);
        if (plan.isEmpty()) {
            throw bad(
                    "No order makes all these checks as they are asked for. Next: see with --check"
                            + " which step of your order cannot be made, or leave --follow-order"
                            + " and --as-printed out.");
        }
        PrintWriter out = spec.commandLine().getOut();
        if (card != null) {
            PlanCardPdf.write(plan.get(), card);
        }
        if (json) {
            out.println(Json.write(PlanDocument.of(plan.get())));
            out.flush();
        } else {
            new PlanText(plan.get(), new Screen(out)).print();
        }
        return ExitCode.DONE;
    }

    private List<Step> followedSteps(StepSet set, Durations durations) {
        if (followed == null) {
            return List.of();
        }
        List<Step> steps =
                new OrderReader(set.rules(), durations).read(DocumentFiles.read(followed)).steps();
        return FollowedSteps.of(set, steps);
    }

    private int examine(StepSet set, Durations durations, org.fandown.document.Node document) {
        OrderReader reader = new OrderReader(set.rules(), durations);
        Examination examination = new OrderExaminer(set, durations).examine(reader.read(document));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.write(PlanDocument.of(examination)));
            out.flush();
        } else {
            new ExaminationText(examination, new Screen(out)).print();
        }
        return examination.isSound() ? ExitCode.DONE : ExitCode.NOT_SOUND;
    }

    private int startPsi() {
        if (startPressure == null) {
            return 0;
        }
        try {
            double psi = Quantity.parse(startPressure, Dimension.GAUGE_PRESSURE).valueIn(Unit.PSI);
            if (psi >= 0 && psi <= MOST_PSI) {
                return (int) Num.round(psi);
            }
        } catch (QuantityFormatException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
        throw bad("'" + startPressure + "' is out of range. Allowed: 0 psi to 150 psi.");
    }

    private ParameterException bad(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
