package org.fandown.reference.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fandown.check.Check.AIR_LOSS_APPLIED;
import static org.fandown.check.Check.BUILD_UP;
import static org.fandown.check.Check.GOVERNOR_CUT_IN;
import static org.fandown.check.Check.GOVERNOR_CUT_OUT;
import static org.fandown.check.Check.LOW_AIR_WARNING;
import static org.fandown.check.Check.PARKING_BRAKE_HOLD;
import static org.fandown.check.Check.PARKING_BRAKE_RELEASE;
import static org.fandown.check.Check.PARKING_VALVE_CLOSING;
import static org.fandown.check.Check.SERVICE_BRAKE_RESPONSE;
import static org.fandown.check.Check.SERVICE_LINE_TIGHT;
import static org.fandown.check.Check.SUPPLY_LINE_TIGHT;
import static org.fandown.check.Check.TRACTOR_PROTECTION;
import static org.fandown.check.Check.TRAILER_BRAKES_APPLY;
import static org.fandown.check.Check.TRAILER_SUPPLY_CLOSING;
import static org.fandown.check.Check.WALK_ROUND;
import static org.fandown.reference.procedure.Ordered.TRACTOR;
import static org.fandown.reference.procedure.Ordered.TRUCK;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.procedure.Mend;
import org.fandown.procedure.Order;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlannedStep;
import org.fandown.procedure.Reason;
import org.fandown.procedure.Violation;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.rulebook.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlaceOrdersReferenceTest {
    private static final String GEORGIA = "us-ga.test-order.skills-test";

    @Source(
            work = "Georgia driver manual, section 11M (modernized skills test)",
            edition = "2023 to 2025",
            where =
                    "11M.1.2: 1 gauge and governor cut-out, 2 applied loss with the engine off, 3"
                            + " warning without restarting, 4 valves close",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest
    @ValueSource(strings = {TRACTOR, TRUCK})
    void plan_for_georgia_keeps_the_four_steps_of_the_skills_test(String vehicle) {
        Plan plan = Ordered.of("US-GA", vehicle).plan(false);

        List<Check> checks = Ordered.checks(plan);
        assertThat(checks)
                .containsSubsequence(
                        GOVERNOR_CUT_OUT, AIR_LOSS_APPLIED, LOW_AIR_WARNING, PARKING_VALVE_CLOSING);
        if (vehicle.equals(TRACTOR)) {
            assertThat(checks).containsSubsequence(LOW_AIR_WARNING, TRAILER_SUPPLY_CLOSING);
        }
        Reason reason = reasonOfPlace(plan, AIR_LOSS_APPLIED);
        assertThat(reason.rule().orElseThrow().rule().id()).isEqualTo(GEORGIA);
        assertThat(reason.rule().orElseThrow().value().source().section()).isEqualTo("11M.1.2");
        assertThat(reason.rule().orElseThrow().rule().provenance()).isEqualTo(Provenance.PUBLISHED);
    }

    @Source(
            work = "Georgia driver manual, section 11M (modernized skills test)",
            edition = "2023 to 2025",
            where = "11M.1.2: the applied loss is step 2, the warning step 3",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void warning_before_the_applied_loss_is_against_the_rule_of_georgia() {
        Ordered georgia = Ordered.of("US-GA", TRUCK);
        Order order = georgia.with(georgia.plan(false), AIR_LOSS_APPLIED, LOW_AIR_WARNING);

        Violation breach = only(georgia, order, LOW_AIR_WARNING);

        assertThat(breach.text())
                .contains("low-air-warning, is against the rule: it comes before step")
                .contains("air-loss-applied")
                .contains(GEORGIA)
                .contains("11M.1.2")
                .contains("published");
        assertThat(breach.asked()).isEqualTo("air-loss-applied before low-air-warning");
        assertThat(order.steps().get(breach.culprit() - 1).text()).isEqualTo("air-loss-applied");
        Mend mend = breach.mend().orElseThrow();
        assertThat(mend.text()).startsWith("Move step");
        assertThat(georgia.breaches(mend.order())).isEmpty();
    }

    @Source(
            work = "Air Brake Manual (Newfoundland and Labrador), pre-tripping",
            edition = "text read 2026-11-25",
            where = "combination unit: try the lines before the leakage",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void lines_of_a_combination_come_before_the_leakage_in_newfoundland() {
        Ordered here = Ordered.of("CA-NL", TRACTOR);
        Plan plan = here.plan(false);

        for (Check line : List.of(SUPPLY_LINE_TIGHT, TRACTOR_PROTECTION, TRAILER_BRAKES_APPLY)) {
            assertThat(Ordered.checks(plan)).containsSubsequence(line, AIR_LOSS_APPLIED);
            Order order = here.with(plan, line, AIR_LOSS_APPLIED);
            Violation breach = only(here, order, AIR_LOSS_APPLIED);
            assertThat(breach.text()).contains("ca-nl.test-order.combination");
            assertThat(order.steps().get(breach.culprit() - 1).text()).isEqualTo(line.id());
        }
    }

    @Source(
            work = "Commercial Driver's Guide (Alberta), trip air brake",
            edition = "page read 2026-11-25",
            where = "step 1: chock the wheels and look over the components first",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @ParameterizedTest
    @ValueSource(strings = {TRACTOR, TRUCK})
    void components_are_looked_over_before_the_tests_in_alberta(String vehicle) {
        Ordered alberta = Ordered.of("CA-AB", vehicle);
        Plan plan = alberta.plan(false);
        assertThat(Ordered.checks(plan).get(0)).isEqualTo(WALK_ROUND);
        assertThat(reasonOfPlace(plan, WALK_ROUND).rule().orElseThrow().rule().id())
                .isEqualTo("ca-ab.test-order");

        Order order = alberta.with(plan, WALK_ROUND, BUILD_UP);

        Violation breach = only(alberta, order, LOW_AIR_WARNING);
        assertThat(breach.text()).contains("ca-ab.test-order").contains("steps 1 to 4");
        assertThat(alberta.breaches(breach.mend().orElseThrow().order())).isEmpty();
    }

    @Source(
            work = "California Commercial Driver Handbook",
            edition = "posted January 2013",
            where = "pages 88 to 99: the in-cab tests may be shown in any order",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void no_order_of_the_in_cab_tests_is_against_the_rule_of_california() {
        Ordered california = Ordered.of("US-CA", TRUCK);
        Plan plan = california.plan(false);
        List<Check> free =
                List.of(AIR_LOSS_APPLIED, GOVERNOR_CUT_OUT, GOVERNOR_CUT_IN, LOW_AIR_WARNING);

        for (Check moved : free) {
            for (Check after : free) {
                if (moved != after) {
                    assertThat(california.breaches(california.with(plan, moved, after))).isEmpty();
                }
            }
        }
    }

    @Source(
            work = "Driving Commercial Vehicles (British Columbia)",
            edition = "pages read 2026-11-25",
            where =
                    "page 218: build-up and cut-out, then one pump-down: cut-in, low air, supply"
                            + " valve, then the trailer's brakes",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void plan_as_printed_makes_the_pump_down_of_british_columbia_in_turn() {
        assertThat(Ordered.checks(Ordered.of("CA-BC", TRACTOR).plan(true)))
                .containsSubsequence(
                        BUILD_UP,
                        GOVERNOR_CUT_OUT,
                        GOVERNOR_CUT_IN,
                        LOW_AIR_WARNING,
                        TRAILER_SUPPLY_CLOSING,
                        TRAILER_BRAKES_APPLY);
    }

    @Source(
            work = "Air Brake Manual (Newfoundland and Labrador), pre-tripping",
            edition = "text read 2026-11-25",
            where =
                    "single unit: circle check, build-up, leakage, fan-down, build up again, tug,"
                            + " roll",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void plan_as_printed_takes_a_single_unit_of_newfoundland_from_circle_check_to_roll() {
        assertThat(Ordered.checks(Ordered.of("CA-NL", TRUCK).plan(true)))
                .containsSubsequence(
                        WALK_ROUND,
                        BUILD_UP,
                        AIR_LOSS_APPLIED,
                        LOW_AIR_WARNING,
                        PARKING_VALVE_CLOSING,
                        PARKING_BRAKE_HOLD,
                        SERVICE_BRAKE_RESPONSE);
    }

    @Source(
            work = "Air Brake Manual (Saskatchewan), pre-trip procedure for a combination",
            edition = "text read 2026-11-25",
            where = "build up, release, adjustment, governor, lines, leakage",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void plan_as_printed_takes_adjustment_governor_lines_and_leakage_of_saskatchewan_in_turn() {
        List<Check> checks = Ordered.checks(Ordered.of("CA-SK", TRACTOR).plan(true));

        assertThat(checks).containsSubsequence(BUILD_UP, Check.ADJUSTERS_CHECKED, GOVERNOR_CUT_IN);
        assertThat(checks)
                .containsSubsequence(GOVERNOR_CUT_IN, SERVICE_LINE_TIGHT, AIR_LOSS_APPLIED);
        assertThat(checks)
                .containsSubsequence(GOVERNOR_CUT_OUT, TRACTOR_PROTECTION, AIR_LOSS_APPLIED);
    }

    @Source(
            work = "A safety association's article on inspecting air brakes",
            edition = "2017",
            where = "steps 1 to 3: hold test, release and roll one turn, low-pressure devices",
            kind = Kind.HANDBOOK,
            accessed = "2026-11-25")
    @Test
    void plan_as_printed_begins_with_the_hold_test_in_quebec() {
        assertThat(Ordered.checks(Ordered.of("CA-QC", TRACTOR).plan(true)))
                .containsSubsequence(PARKING_BRAKE_HOLD, PARKING_BRAKE_RELEASE, LOW_AIR_WARNING);
    }

    private static Violation only(Ordered place, Order order, Check early) {
        List<Violation> breaches =
                place.breaches(order).stream()
                        .filter(v -> order.steps().get(v.number() - 1).text().equals(early.id()))
                        .toList();
        assertThat(breaches).hasSize(1);
        return breaches.get(0);
    }

    private static Reason reasonOfPlace(Plan plan, Check check) {
        return plan.steps().stream()
                .filter(step -> step.step().text().equals(check.id()))
                .map(PlannedStep::reasons)
                .flatMap(List::stream)
                .filter(reason -> reason.rule().isPresent())
                .findFirst()
                .orElseThrow();
    }
}
