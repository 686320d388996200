package org.fandown.app.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.plot.ClockText;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Order;
import org.fandown.procedure.OrderReader;
import org.fandown.procedure.PlanDefault;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.procedure.Step;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.rulebook.RulesInForce;
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
    private static final String BOOKS = "../examples/orders/handbooks/";
    private static final String VEHICLES = "../examples/vehicles/";

    /** A printed order, where it comes from and on which vehicle it is tried. */
    private record Book(String order, String place, String vehicle) {}

    private static final List<Book> PRINTED =
            List.of(
                    new Book("ontario-study-notes", "CA-ON", "tractor-box-trailer"),
                    new Book("alberta-trip-air-brake", "CA-AB", "tractor-box-trailer"),
                    new Book("british-columbia-pump-down", "CA-BC", "tractor-box-trailer"),
                    new Book("newfoundland-single-unit", "CA-NL", "straight-truck"),
                    new Book("north-carolina-in-cab", "US-NC", "tractor-box-trailer"));

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
        for (Book book : PRINTED) {
            page.append(row(book));
        }
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

    private static String row(Book book) {
        PlaceCode place = new PlaceCode(book.place());
        RulesInForce rules =
                RulePacks.builtIn()
                        .rulebookFor(place)
                        .orElseThrow()
                        .inForce(
                                place,
                                VehicleReader.read(
                                        DocumentFiles.read(
                                                Path.of(VEHICLES + book.vehicle() + ".yaml"))),
                                DAY);
        Durations durations = VehicleDurations.of(rules.vehicle());
        StepSet set = Steps.of(rules, durations, Scope.ASKED);
        Order order =
                new OrderReader(rules, durations)
                        .read(DocumentFiles.read(Path.of(BOOKS + book.order() + ".yaml")));
        List<Step> followed = new ArrayList<>();
        for (Step step : order.steps()) {
            if (step instanceof CheckStep check) {
                set.find(check.text()).ifPresent(followed::add);
            }
        }
        int printed = time(set, durations, followed);
        int free = time(set, durations, List.of());
        return "| "
                + order.title()
                + " | "
                + rules.vehicle().name()
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

    private static int time(StepSet set, Durations durations, List<Step> followed) {
        PlanRequest request = new PlanRequest(0, PlanRequest.Goal.QUICKEST, followed);
        return new Planner(set, durations).plan(request).orElseThrow().tenths();
    }

    private static String clock(int tenths) {
        return (tenths < 0 ? "-" : "") + ClockText.whole(Math.abs(tenths) / 10.0);
    }
}
