package org.fandown.app.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.plot.ClockText;
import org.fandown.procedure.Durations;
import org.fandown.procedure.PlaceOrders;
import org.fandown.procedure.PlanDefault;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.rulebook.RulesInForce;
import org.fandown.rulebook.TestOrder;
import org.fandown.units.Decimals;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.api.Test;

/**
 * Keeps docs/plan.md as the planner has it. To write it anew: {@code mvn -pl app -am test
 * -Dtest=PlanGuideTest -Dsurefire.failIfNoSpecifiedTests=false -Dfandown.write=true}.
 */
class PlanGuideTest {
    private static final Path DOC = Path.of("../docs/plan.md");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final List<String> VEHICLES = List.of("tractor-box-trailer", "straight-truck");

    @Test
    void plan_page_has_the_times_of_printed_orders_and_the_assumptions() throws IOException {
        String page = page();
        if (Boolean.getBoolean("fandown.write")) {
            Files.writeString(DOC, page);
        }
        assertThat(Files.readString(DOC))
                .as("docs/plan.md is old; the comment of this test says how to write it anew")
                .isEqualTo(page);
    }

    private static String page() throws IOException {
        StringBuilder page =
                new StringBuilder(
                        Files.readString(
                                Path.of(
                                        "src/test/resources/org/fandown/app/procedure/plan-head.md")));
        page.append("| printed order | vehicle | as printed | planned | saved |\n");
        page.append("| --- | --- | --- | --- | --- |\n");
        for (PlaceCode place : RulePacks.builtIn().places()) {
            VEHICLES.stream()
                    .map(vehicle -> set(place, vehicle))
                    .filter(set -> printsAnOrderItself(set))
                    .findFirst()
                    .ifPresent(set -> page.append(row(set)));
        }
        page.append(PerformedTimes.section());
        page.append("\n## Assumptions\n\n");
        page.append("All are ours; those of the air system agree with the air engine's.\n\n");
        page.append("| what | value |\n| --- | --- |\n");
        for (PlanDefault number : PlanDefault.values()) {
            page.append("| ")
                    .append(number.label())
                    .append(" | ")
                    .append(Decimals.formatShort(number.number(), 8))
                    .append(number.unit().isEmpty() ? "" : " " + number.unit())
                    .append(" |\n");
        }
        return page.toString();
    }

    private static StepSet set(PlaceCode place, String vehicle) {
        Path file = Path.of("../examples/vehicles/" + vehicle + ".yaml");
        RulesInForce rules =
                RulePacks.builtIn()
                        .rulebookFor(place)
                        .orElseThrow()
                        .inForce(place, VehicleReader.read(DocumentFiles.read(file)), DAY);
        return Steps.of(rules, VehicleDurations.of(rules.vehicle()), Scope.ASKED);
    }

    private static boolean printsAnOrderItself(StepSet set) {
        return PlaceOrders.printed(set)
                .filter(printed -> printed.order().force() == TestOrder.Force.PRINTED)
                .filter(p -> p.ruling().rule().place().equals(set.rules().place()))
                .isPresent();
    }

    private static String row(StepSet set) {
        int printed = time(set, true);
        int free = time(set, false);
        return "| "
                + set.rules().lineage().get(0).name()
                + ": "
                + PlaceOrders.printed(set).orElseThrow().ruling().rule().id()
                + " | "
                + set.rules().vehicle().name()
                + " | "
                + clock(printed)
                + " | "
                + clock(free)
                + " | "
                + clock(printed - free)
                + ", "
                + Decimals.format(100.0 * (printed - free) / printed, 0)
                + " % |\n";
    }

    private static int time(StepSet set, boolean asPrinted) {
        PlanRequest request = new PlanRequest(0, PlanRequest.Goal.QUICKEST, List.of(), asPrinted);
        Durations durations = VehicleDurations.of(set.rules().vehicle());
        return new Planner(set, durations).plan(request).orElseThrow().tenths();
    }

    private static String clock(int tenths) {
        return (tenths < 0 ? "-" : "") + ClockText.whole(Math.abs(tenths) / 10.0);
    }
}
