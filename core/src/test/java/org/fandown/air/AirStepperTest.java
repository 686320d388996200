package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.fandown.units.GaugePressure;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;

class AirStepperTest {
    /** Rounding of sums and products, relative. */
    private static final double ROUNDING = 1e-9;

    /** Pressures come to rest to within this, psi. */
    private static final double AT_REST = 1e-3;

    /** What asking for the number may itself allocate, bytes. */
    private static final long ASKING = 1024;

    private static final Restriction WIDE = new Restriction(10e-8, 0.35);
    private static final Restriction HOLE = new Restriction(1e-8, 0.35);
    private static final Restriction NARROW = new Restriction(1e-9, 0.35);
    private static final LappingValve VALVE = new LappingValve(WIDE, WIDE, psi(2), psi(1));

    private final AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
    private final AirNode tank = builder.addRigid("tank", Volume.ofLitres(30));
    private final AirNode line = builder.addRigid("line", Volume.ofCubicInches(30));

    @Test
    void a_valve_fills_its_delivery_to_the_command() {
        AirLink valve = builder.lapping("valve", tank, line, VALVE);
        AirState state = charged(120);
        command(state, valve, 40);

        run(state, 5);

        assertThat(psi(state, line)).isEqualTo(40, within(AT_REST));
        assertThat(state.flow(valve)).isEqualTo(0, within(1e-9));
    }

    @Test
    void a_valve_that_feeds_a_leak_stands_below_its_command_by_the_leaks_share_of_the_band() {
        AirLink valve = builder.lapping("valve", tank, line, VALVE);
        AirLink leak = builder.orifice("leak", line, builder.atmosphere(), NARROW);
        AirState state = charged(120);
        command(state, valve, 40);

        run(state, 2);

        double open = WIDE.conductance() * 1.185 * state.pascals(tank);
        double share = state.flow(leak) / open;
        assertThat(state.flow(valve)).isEqualTo(state.flow(leak), within(1e-6));
        assertThat(psi(state, line)).isEqualTo(40 - 2 * share, within(AT_REST));
    }

    @Test
    void a_valve_exhausts_down_to_the_deadband_and_no_further() {
        AirLink valve = builder.lapping("valve", tank, line, VALVE);
        AirState state = charged(120);
        state.setPressure(line, psi(80));
        command(state, valve, 40);

        run(state, 5);

        assertThat(psi(state, line)).isEqualTo(41, within(AT_REST));
        command(state, valve, 0);
        run(state, 20);
        assertThat(psi(state, line)).isEqualTo(1, within(AT_REST));
    }

    @Test
    void a_valve_with_a_command_below_the_air_outside_empties_its_delivery() {
        AirLink valve = builder.lapping("valve", tank, line, VALVE);
        AirState state = charged(120);
        state.setPressure(line, psi(80));
        state.setCommand(valve, 0);

        run(state, 20);

        assertThat(psi(state, line)).isEqualTo(0, within(AT_REST));
        assertThat(psi(state, tank)).isEqualTo(120, within(AT_REST));
    }

    @Test
    void a_delivery_follows_a_supply_that_is_lost() {
        AirLink valve = builder.lapping("valve", tank, line, VALVE);
        AirLink hole = builder.orifice("hole", tank, builder.atmosphere(), WIDE);
        AirState state = charged(120);
        state.setOpening(hole, 0);
        command(state, valve, 60);
        run(state, 2);

        state.setOpening(hole, 1);
        run(state, 30);

        assertThat(psi(state, line)).isEqualTo(psi(state, tank), within(0.1));
        assertThat(psi(state, line)).isLessThan(1);
    }

    @Test
    void a_check_valve_holds_what_is_behind_it_and_costs_its_opening_pressure() {
        AirLink check = builder.check("check", tank, line, WIDE, psi(1.5));
        AirState state = charged(100);

        run(state, 10);

        assertThat(psi(state, tank) - psi(state, line)).isEqualTo(1.5, within(AT_REST));
        state.setPressure(tank, psi(20));
        double held = psi(state, line);
        run(state, 10);
        assertThat(psi(state, line)).isEqualTo(held, within(1e-9));
        assertThat(state.flow(check)).isZero();
    }

    @Test
    void a_protection_valve_opens_in_proportion_to_the_pressure_before_it_and_never_backwards() {
        ProtectionValve valve = new ProtectionValve(WIDE, psi(0), psi(60), psi(20));
        AirLink link = builder.protection("valve", tank, line, valve);
        builder.orifice("leak", line, builder.atmosphere(), WIDE);
        AirState shut = charged(59);
        AirState half = charged(70);
        AirState open = charged(90);
        for (AirState state : List.of(shut, half, open)) {
            new AirStepper(state.network()).step(state, 1e-7);
        }

        assertThat(shut.flow(link)).isZero();
        double wide = WIDE.conductance() * 1.185;
        assertThat(half.flow(link))
                .isEqualTo(0.5 * wide * half.pascals(tank), within(1e-3 * half.flow(link)));
        assertThat(open.flow(link))
                .isEqualTo(wide * open.pascals(tank), within(1e-3 * open.flow(link)));
        AirState back = charged(0);
        back.setPressure(line, psi(90));
        new AirStepper(back.network()).step(back, 0.01);
        assertThat(back.flow(link)).isZero();
    }

    @Test
    void a_valve_follows_its_pilot_within_one_step() {
        AirNode pilot = builder.addRigid("pilot", Volume.ofLitres(1));
        builder.orifice("signal", tank, pilot, WIDE);
        AirLink valve = builder.lapping("valve", tank, line, VALVE, pilot);
        AirState state = charged(120);
        state.follow(valve, pilot, psi(-3).pascals());

        new AirStepper(state.network()).step(state, 10);

        assertThat(psi(state, pilot)).isGreaterThan(100);
        assertThat(psi(state, line)).isEqualTo(psi(state, pilot) - 3, within(0.1));
        assertThatThrownBy(() -> state.follow(valve, tank, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("tank is no pilot of valve.");
    }

    @Test
    void a_step_ends_where_something_is_about_to_switch() {
        AirSource source = builder.source("source", tank, Ambient.STANDARD.temperature());
        AirState state = charged(100);
        state.setInflow(source, 0.001);
        double threshold = state.pascals(tank) + 5_000;
        double[] seen = new double[1];
        StepControl steps =
                new StepControl(TimeSpan.ofSeconds(0.001), TimeSpan.ofSeconds(5), psi(50));

        new AirStepper(state.network())
                .advance(
                        state,
                        60,
                        steps,
                        (after, seconds) -> {
                            after.foresee(tank, threshold);
                            if (seen[0] == 0 && after.pascals(tank) >= threshold) {
                                seen[0] = after.pascals(tank);
                            }
                        });

        assertThat(seen[0]).isEqualTo(threshold, within(10.0));
    }

    @Test
    void refined_steps_are_of_the_second_order_where_nothing_switches() {
        builder.orifice("hole", tank, builder.atmosphere(), HOLE);
        double two = emptied(0.2);
        double one = emptied(0.1);
        double half = emptied(0.05);

        assertThat((two - one) / (one - half)).isEqualTo(4, within(0.4));
    }

    private double emptied(double step) {
        AirState state = charged(120);
        TimeSpan length = TimeSpan.ofSeconds(step);
        new AirStepper(state.network())
                .advance(state, 10, new StepControl(length, length, psi(1)), AfterStep.NOTHING);
        return state.pascals(tank);
    }

    @Test
    void the_flow_reported_is_what_moved() {
        AirLink hole = builder.orifice("hole", tank, line, NARROW);
        AirState state = charged(100);
        double before = state.kilograms(line);

        new AirStepper(state.network()).step(state, 0.25);

        assertThat(state.flow(hole) * 0.25)
                .isEqualTo(state.kilograms(line) - before, within(ROUNDING));
        assertThat(state.flow(hole)).isPositive();
    }

    @Test
    void a_source_adds_its_air_and_its_heat() {
        AirNode wet = builder.addReservoir("wet", Volume.ofLitres(20), new TimeSpan(1e10));
        AirSource pump = builder.source("pump", wet, Temperature.ofKelvins(350));
        AirState state = charged(100);
        double mass = state.kilograms(wet);
        state.setInflow(pump, 0.01);

        run(state, 2);

        double hot = (mass * 293.15 + 1.4 * 0.02 * 350) / (mass + 0.02);
        assertThat(state.kilograms(wet)).isEqualTo(mass + 0.02, within(ROUNDING));
        assertThat(state.temperature(wet).kelvins()).isEqualTo(hot, within(1e-6));
    }

    @Test
    void advancing_stops_at_the_moment_asked_for() {
        builder.orifice("hole", tank, line, NARROW);
        AirState state = charged(100);
        AirStepper stepper = new AirStepper(state.network());

        for (double until : new double[] {0.1, 0.123456789, 7.7}) {
            stepper.advance(state, until, StepControl.LIVE, AfterStep.NOTHING);
            assertThat(state.time()).isEqualTo(until);
        }
    }

    @Test
    void steps_grow_while_nothing_happens_and_shrink_when_something_does() {
        AirLink hole = builder.orifice("hole", tank, line, WIDE);
        AirState state = charged(100);
        state.setOpening(hole, 0);
        AirStepper stepper = new AirStepper(state.network());
        StepControl control =
                new StepControl(TimeSpan.ofSeconds(0.002), TimeSpan.ofSeconds(0.25), psi(0.5));

        int quiet = steps(stepper, state, 10, control);
        state.setOpening(hole, 1);
        int busy = steps(stepper, state, 20, control);

        assertThat(quiet).isBetween(40, 50);
        assertThat(busy).isGreaterThan(quiet + 10);
        assertThat(psi(state, line)).isEqualTo(psi(state, tank), within(0.1));
    }

    @Test
    void a_restart_begins_with_the_shortest_step() {
        AirState state = charged(100);
        AirStepper stepper = new AirStepper(state.network());
        StepControl control =
                new StepControl(TimeSpan.ofSeconds(0.002), TimeSpan.ofSeconds(0.25), psi(0.5));
        stepper.advance(state, 10, control, AfterStep.NOTHING);
        double[] first = {0};

        state.restartStep();
        stepper.advance(
                state,
                20,
                control,
                (after, seconds) -> first[0] = first[0] == 0 ? seconds : first[0]);

        assertThat(first[0]).isEqualTo(0.002);
    }

    @Test
    void a_large_step_taken_back_leaves_no_trace() {
        AirLink hole = builder.orifice("hole", tank, line, WIDE);
        AirState state = charged(100);
        state.setOpening(hole, 0);
        AirStepper stepper = new AirStepper(state.network());
        StepControl wide =
                new StepControl(TimeSpan.ofSeconds(1e-5), TimeSpan.ofSeconds(1), psi(0.1));
        stepper.advance(state, 100, wide, AfterStep.NOTHING);
        double mass = state.kilograms(tank) + state.kilograms(line);
        state.setOpening(hole, 1);
        double[] first = {0};

        stepper.advance(
                state,
                101,
                wide,
                (after, seconds) -> first[0] = first[0] == 0 ? psi(after, line) : first[0]);

        assertThat(first[0]).isLessThanOrEqualTo(0.4);
        assertThat(state.kilograms(tank) + state.kilograms(line))
                .isEqualTo(mass, within(ROUNDING * mass));
    }

    @Test
    void stepping_makes_no_objects() {
        TractorTrailer vehicle = new TractorTrailer();
        AirState state = vehicle.charged();
        AirStepper stepper = new AirStepper(vehicle.network);
        ThreadMXBean bean = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        StepControl control =
                new StepControl(TimeSpan.ofSeconds(0.002), TimeSpan.ofSeconds(0.25), psi(0.5));
        stepper.advance(state, 1, control, AfterStep.NOTHING);
        vehicle.work(state, 80);

        long before = bean.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 1000; i++) {
            stepper.step(state, 0.002);
        }
        stepper.advance(state, 100, control, AfterStep.NOTHING);
        long after = bean.getCurrentThreadAllocatedBytes();

        assertThat(after - before).isLessThan(ASKING);
    }

    @Test
    void it_refuses_states_of_other_networks_and_steps_that_lead_nowhere() {
        AirState state = charged(100);
        AirStepper stepper = new AirStepper(state.network());
        AirStepper other = new AirStepper(new TractorTrailer().network);

        assertThatThrownBy(() -> other.step(state, 0.1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("another network");
        assertThatThrownBy(() -> stepper.step(state, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stepper.step(state, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stepper.step(state, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stepper.advance(state, -1, StepControl.LIVE, AfterStep.NOTHING))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static int steps(
            AirStepper stepper, AirState state, double until, StepControl control) {
        int[] count = {0};
        stepper.advance(state, until, control, (after, seconds) -> count[0]++);
        return count[0];
    }

    private AirState charged(double psi) {
        AirState state = builder.build().stateAtRest();
        state.setPressure(tank, psi(psi));
        return state;
    }

    private static void run(AirState state, double seconds) {
        AirStepper stepper = new AirStepper(state.network());
        double until = state.time() + seconds;
        stepper.advance(state, until, StepControl.LIVE, AfterStep.NOTHING);
    }

    private static void command(AirState state, AirLink valve, double gauge) {
        double atmosphere = Ambient.STANDARD.pressure().pascals();
        state.setCommand(valve, psi(gauge).pascals() + atmosphere);
    }

    private static double psi(AirState state, AirNode node) {
        return state.gauge(node).inPsi();
    }

    private static GaugePressure psi(double psi) {
        return GaugePressure.ofPsi(psi);
    }
}
