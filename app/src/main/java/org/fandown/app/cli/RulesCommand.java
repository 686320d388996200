package org.fandown.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.document.Tree;
import org.fandown.record.RulesDocument;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The verb {@code rules}: the rules in force for a vehicle, or the differences between two places.
 */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        description = {
            "Lists the rules in force for a vehicle in a place, each with its source.",
            "Without --place, lists the places."
        },
        footer = {"", "Examples of vehicles lie in examples/vehicles."})
final class RulesCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private PackOptions packOptions;

    @Option(names = "--place", paramLabel = "CODE", description = "ISO 3166 code such as CA-BC")
    private @Nullable String place;

    @Option(
            names = "--vehicle",
            paramLabel = "FILE",
            description = "the vehicle file (YAML or JSON)")
    private @Nullable Path vehicle;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "the day, such as 2026-11-25; default today")
    private @Nullable String day;

    @Option(
            names = "--against",
            paramLabel = "CODE",
            description = "show the differences from this place")
    private @Nullable String against;

    @Option(
            names = "--check",
            paramLabel = "CHECK",
            description = "only this check, such as build-up")
    private @Nullable String check;

    @Option(names = "--all", description = "also new-vehicle and historic rules, and duties")
    private boolean all;

    @Option(names = "--json", description = "write JSON")
    private boolean json;

    private RulesCommand() {}

    @Override
    public Integer call() {
        RulePacks packs = packOptions.packs();
        PrintWriter out = spec.commandLine().getOut();
        if (place == null) {
            places(packs, out);
            return ExitCode.DONE;
        }
        RulesInForce here = inForce(packs, place);
        Optional<RulesInForce> there =
                against == null ? Optional.empty() : Optional.of(inForce(packs, against));
        if (json) {
            write(here, there, out);
        } else if (there.isPresent()) {
            new ComparisonText(here, there.get(), wanted(), new Screen(out)).print();
        } else {
            new RulesText(here, wanted(), all, new Screen(out)).print();
        }
        return ExitCode.DONE;
    }

    private static void write(RulesInForce here, Optional<RulesInForce> there, PrintWriter out) {
        out.println(
                there.isEmpty()
                        ? Json.write(RulesDocument.of(here))
                        : Json.write(
                                Tree.map()
                                        .put("format", "fandown-comparison/1")
                                        .put("here", RulesDocument.of(here))
                                        .put("there", RulesDocument.of(there.get()))
                                        .build()));
        out.flush();
    }

    private void places(RulePacks packs, PrintWriter out) {
        Screen screen = new Screen(out);
        TextTable table = new TextTable();
        for (PlaceCode code : packs.places()) {
            Pack pack = packs.pack(code);
            table.add(
                    code.code(),
                    pack.name(),
                    pack.parent().map(p -> "and " + p).orElse(""),
                    pack.rules().size() + " rules",
                    "checked " + pack.checkedOn());
        }
        screen.table(table);
        screen.line("");
        screen.line("Next: fandown rules --place CODE --vehicle FILE");
        screen.done();
    }

    private RulesInForce inForce(RulePacks packs, String code) {
        PlaceCode at = PackOptions.place(code, spec.commandLine());
        return packOptions
                .rulebook(packs, at, spec.commandLine())
                .inForce(at, vehicle(), PackOptions.day(day, spec.commandLine()));
    }

    private Vehicle vehicle() {
        if (vehicle == null) {
            throw bad("Which rules hold depends on the vehicle. Add --vehicle FILE.");
        }
        return VehicleReader.read(DocumentFiles.read(vehicle));
    }

    private List<Check> wanted() {
        if (check == null) {
            return List.of(Check.values());
        }
        return List.of(
                Check.byId(check)
                        .orElseThrow(
                                () ->
                                        bad(
                                                "'"
                                                        + check
                                                        + "' is not a check. docs/rules.md lists them.")));
    }

    private ParameterException bad(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
