package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.PlaceCode;
import org.fandown.operator.Guide;
import org.fandown.operator.Operator;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Replay;
import org.fandown.practice.Run;
import org.fandown.practice.RunEntry;
import org.fandown.practice.RunWatcher;
import org.fandown.practice.Scenario;
import org.fandown.procedure.Plan;
import org.fandown.procedure.Scope;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A guide shows every step of a plan, and notices every step that somebody else does. */
class GuidePropertyTest {
    @ParameterizedTest
    @CsvSource({"straight-truck, CA-ON", "tractor-box-trailer, US", "city-bus, GB"})
    void a_guide_can_show_every_step(String name, String place) {
        Plan plan = plan(name, place);
        PracticeTruck truck = PracticeTruck.of(Scenario.of(vehicle(plan)));
        Guide guide = Guide.of(plan, truck);

        List<String> trouble = new ArrayList<>();
        List<Double> looked = new ArrayList<>();
        while (guide.now().isPresent()) {
            guide.show(() -> looked.add(truck.time())).ifPresent(trouble::add);
        }

        assertThat(trouble).isEmpty();
        assertThat(looked).isSorted().hasSizeGreaterThan((int) truck.time());
        assertThat(said(truck)).containsAll(said(performed(plan)));
    }

    @ParameterizedTest
    @CsvSource({"straight-truck, CA-ON", "tractor-box-trailer, US", "city-bus, GB"})
    void a_guide_notices_every_step_that_somebody_does(String name, String place) {
        Plan plan = plan(name, place);
        Run run = Run.of(performed(plan), "");
        Guide[] guide = new Guide[1];
        Replay replay =
                Replay.of(
                        run,
                        new RunWatcher() {
                            @Override
                            public void tick(PracticeTruck truck) {
                                if (guide[0] != null) {
                                    guide[0].tick(truck);
                                }
                            }

                            @Override
                            public void after(
                                    PracticeTruck truck, RunEntry entry, boolean refused) {
                                guide[0].after(truck, entry, refused);
                            }
                        });
        guide[0] = Guide.of(plan, replay.truck());
        List<String> next = new ArrayList<>();
        while (!replay.advance(1)) {
            String now = next(guide[0]);
            if (next.isEmpty() || !next.get(next.size() - 1).equals(now)) {
                next.add(now);
            }
        }

        assertThat(next(guide[0])).as("what the guide told, in order: %s", next).isEqualTo("none");
        assertThat(next.size()).isGreaterThan(plan.steps().size() / 2);
    }

    @ParameterizedTest
    @CsvSource({"straight-truck, CA-ON"})
    void a_guide_waits_while_nothing_is_done_and_says_what_is_missing(String name, String place) {
        Plan plan = plan(name, place);
        PracticeTruck truck = PracticeTruck.of(Scenario.of(vehicle(plan)));
        Guide guide = Guide.of(plan, truck);
        String first = next(guide);

        for (int i = 0; i < 600; i++) {
            truck.advance(0.1);
            guide.tick(truck);
        }

        assertThat(next(guide)).isEqualTo(first);
        guide.goTo(plan.steps().size());
        assertThat(guide.needs()).isNotEmpty().anySatisfy(it -> assertThat(it.holds()).isFalse());
        guide.goTo(plan.steps().size() + 1);
        assertThat(guide.now()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"straight-truck, CA-ON"})
    void a_step_that_is_done_can_be_gone_back_to(String name, String place) {
        Plan plan = plan(name, place);
        Guide guide = Guide.of(plan, PracticeTruck.of(Scenario.of(vehicle(plan))));
        String first = next(guide);
        guide.show(() -> {});
        int second = guide.now().orElseThrow().number();

        guide.goTo(1);
        guide.show(() -> {});
        assertThat(guide.now().orElseThrow().number()).isEqualTo(second);
        guide.goTo(1);
        assertThat(next(guide)).isEqualTo(first);
    }

    private static String next(Guide guide) {
        return guide.now().map(planned -> planned.step().text()).orElse("none");
    }

    /** What was begun and written down, in order. */
    private static List<String> said(PracticeTruck truck) {
        return truck.log().stream()
                .filter(RunEntry.Stated.class::isInstance)
                .map(entry -> ((RunEntry.Stated) entry).statement().toString())
                .toList();
    }

    private static PracticeTruck performed(Plan plan) {
        PracticeTruck truck = PracticeTruck.of(Scenario.of(vehicle(plan)));
        Operator.perform(plan, truck);
        return truck;
    }

    private static Vehicle vehicle(Plan plan) {
        return plan.set().rules().vehicle();
    }

    private static Plan plan(String name, String place) {
        Vehicle vehicle = Performed.provable(Examples.VEHICLES.get(name));
        return Performed.plan(
                Performed.steps(Performed.rules(new PlaceCode(place), vehicle), Scope.ASKED));
    }
}
