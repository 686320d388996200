package org.fandown.app.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.cli.FandownCommand;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb plan on the command line. */
class PlanCommandTest {
    private static final String TRUCK = "../examples/vehicles/straight-truck.yaml";

    /** What a command wrote and ended with. */
    private record Ran(int exit, String out, String err) {}

    private static Ran run(String... more) {
        List<String> words = new ArrayList<>(List.of("plan", "--on", "2026-11-25"));
        words.addAll(List.of(more));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit =
                FandownCommand.run(
                        new PrintWriter(out), new PrintWriter(err), words.toArray(new String[0]));
        return new Ran(exit, out.toString(), err.toString());
    }

    @Test
    void card_begins_with_the_chocks_and_gives_limits_cautions_and_reasons() {
        Ran ran = run("--place", "CA-ON", "--vehicle", TRUCK);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("1.  0:00    Chock the wheels")
                .contains("at least 380 kPa (55 psi) (ca-on.low-air-warning)")
                .contains("because before step")
                .contains("Keep hands clear of push rods")
                .contains("Cautions");
    }

    @Test
    void json_has_the_steps_with_pressures_and_rules() {
        Ran ran = run("--place", "US", "--vehicle", TRUCK, "--json");

        Fields plan = Fields.of(Json.read("plan.json", ran.out()));
        assertThat(plan.text("format")).isEqualTo("fandown-plan/1");
        assertThat(plan.list("steps")).hasSizeGreaterThan(10);
        assertThat(Fields.of(plan.list("steps").get(0)).text("step")).isEqualTo("chock");
    }

    @Test
    void order_that_spoils_its_checks_is_examined_with_advice() {
        Ran ran =
                run(
                        "--place",
                        "CA-ON",
                        "--vehicle",
                        TRUCK,
                        "--check",
                        "../examples/orders/school-order.yaml");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out())
                .contains("Step 8, air-loss-applied, is spoiled: it needs the engine off")
                .contains("Mend: ")
                .contains("Asked for here, and not proven by this order");
    }

    @Test
    void fewest_starts_never_start_the_engine_more_often_than_the_quickest() {
        Fields quickest = json("--place", "US", "--vehicle", TRUCK);
        Fields fewest = json("--place", "US", "--vehicle", TRUCK, "--fewest-starts");

        assertThat(fewest.integer("engine-starts", 0, 99))
                .isLessThanOrEqualTo(quickest.integer("engine-starts", 0, 99));
        assertThat(fewest.number("seconds", 0, 1e6))
                .isGreaterThanOrEqualTo(quickest.number("seconds", 0, 1e6));
    }

    private static Fields json(String... more) {
        List<String> words = new ArrayList<>(List.of(more));
        words.add("--json");
        return Fields.of(Json.read("plan.json", run(words.toArray(new String[0])).out()));
    }

    @Test
    void plan_as_printed_names_the_order_it_keeps_and_its_source() {
        Ran text = run("--place", "CA-NL", "--vehicle", TRUCK, "--as-printed");
        Fields json = json("--place", "CA-NL", "--vehicle", TRUCK, "--as-printed");

        assertThat(text.out())
                .contains("Keeps the printed order of ca-nl.test-order.single (Air Brake Manual")
                .contains("the place prints this order (ca-nl.test-order.single;");
        Fields order = json.fields("printed-order");
        assertThat(order.text("rule")).isEqualTo("ca-nl.test-order.single");
        assertThat(order.text("provenance")).isEqualTo("published");
        assertThat(order.list("turns")).hasSize(9);
    }

    @Test
    void plan_as_printed_says_where_no_order_is_printed_and_what_the_place_says_instead() {
        Ran california = run("--place", "US-CA", "--vehicle", TRUCK, "--as-printed");
        Ran yukon = run("--place", "CA-YT", "--vehicle", TRUCK, "--as-printed");

        assertThat(california.out().replaceAll("\\s+", " "))
                .contains("No printed order is known here, so the order is free. us-ca.test-order")
                .contains("They may be shown in any order.");
        assertThat(yukon.out()).contains("No printed order is known here, so the order is free.\n");
    }

    @Test
    void method_that_a_place_tells_stands_at_the_step_with_its_source() {
        Ran text = run("--place", "CA-BC", "--vehicle", TRUCK);

        assertThat(text.out().replaceAll("\\s+", " "))
                .contains("method Pump down to about 80 % of the maximum pressure")
                .contains("(ca-bc.test-method.governor; Driving Commercial Vehicles");
        assertThat(json("--place", "CA-BC", "--vehicle", TRUCK).list("steps").stream())
                .map(Fields::of)
                .filteredOn(step -> step.text("step").equals("governor-cut-in"))
                .singleElement()
                .satisfies(
                        step ->
                                assertThat(Fields.of(step.list("methods").get(0)).text("rule"))
                                        .isEqualTo("ca-bc.test-method.governor"));
    }

    @Test
    void yes_or_no_is_told_in_words() {
        Ran ran = run("--place", "CA-NL", "--vehicle", TRUCK);

        assertThat(ran.out())
                .contains("asked parking brakes hold (ca-nl.parking-brake-hold)")
                .doesNotContain("limit yes");
    }

    @Test
    void place_without_rules_is_refused_with_what_to_do() {
        Ran ran = run("--place", "FR", "--vehicle", TRUCK);

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("There is no rule pack for FR").contains("Next:");
    }

    @Test
    void place_that_asks_for_nothing_gets_good_practice_and_is_told_so() {
        Ran ran = run("--place", "BR", "--vehicle", TRUCK);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("No rule known here asks for a check");
    }

    @Test
    void card_is_one_page_and_the_same_each_time(@TempDir Path folder) throws IOException {
        Path first = folder.resolve("a.pdf");
        Path second = folder.resolve("b.pdf");
        run("--place", "CA-ON", "--vehicle", TRUCK, "--card", first.toString());
        run("--place", "CA-ON", "--vehicle", TRUCK, "--card", second.toString());

        assertThat(Files.readAllBytes(first)).isEqualTo(Files.readAllBytes(second));
        try (var document = org.apache.pdfbox.Loader.loadPDF(first.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void step_no_vehicle_has_is_refused_with_its_line(@TempDir Path folder) throws IOException {
        Path order = folder.resolve("order.yaml");
        Files.writeString(order, "steps:\n  - chock\n  - start-engin\n");

        Ran ran = run("--place", "US", "--vehicle", TRUCK, "--check", order.toString());

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .contains("start-engin")
                .contains("order.yaml:3:")
                .contains("start-engine");
    }
}
