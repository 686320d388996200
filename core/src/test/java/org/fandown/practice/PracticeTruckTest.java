package org.fandown.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fandown.air.AirVehicles;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.practice.PracticeEvent.Kind;
import org.fandown.units.GaugePressure;
import org.fandown.units.Temperature;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.junit.jupiter.api.Test;

class PracticeTruckTest {
    private static final StartState CHARGED = new StartState(GaugePressure.ofPsi(110), true, true);

    private static Scenario healthy() {
        return Scenario.of(AirVehicles.tractorTrailer());
    }

    private static Scenario charged() {
        return healthy().with(CHARGED);
    }

    private static Ground slope(double grade) {
        return new Ground(grade, Temperature.ofCelsius(20));
    }

    static void act(PracticeTruck truck, String... actions) {
        for (String action : actions) {
            assertThat(tryTo(truck, action)).as(action).isEmpty();
        }
    }

    private static Optional<String> tryTo(PracticeTruck truck, String action) {
        int colon = action.indexOf(':');
        Verb verb = Verb.byId(action.substring(0, colon)).orElseThrow();
        return truck.act(new OperatorAction(verb, action.substring(colon + 2)));
    }

    private static String saw(PracticeTruck truck, Kind kind) {
        StringBuilder all = new StringBuilder();
        for (PracticeEvent event : truck.events()) {
            if (event.kind() == kind) {
                all.append(event.text()).append('\n');
            }
        }
        return all.toString();
    }

    @Test
    void a_cold_truck_builds_up_cuts_out_purges_and_its_warning_goes_off() {
        PracticeTruck truck = PracticeTruck.of(healthy());
        act(truck, "chock: 2L", "key: on");
        truck.advance(1);
        assertThat(truck.dash().lowAirLamp()).isTrue();
        act(truck, "engine: start");
        truck.advance(3);
        act(truck, "throttle: 1300 rpm");
        truck.advance(5);
        assertThat(truck.dash().engine().inRpm()).isBetween(1280.0, 1310.0);
        truck.advance(400);

        String signs = saw(truck, Kind.SIGN);
        assertThat(signs).contains("low-air lamp on", "low-air lamp off", "the dryer purges");
        assertThat(truck.dash().higher().inPsi()).isBetween(115.0, 127.0);
        assertThat(saw(truck, Kind.HAZARD)).isEmpty();
    }

    @Test
    void knobs_stay_in_from_the_holding_pressure_only() {
        PracticeTruck empty = PracticeTruck.of(healthy());
        act(empty, "parking-valve: push");
        empty.advance(3);
        assertThat(empty.dash().parkingKnobIn()).contains(false);

        PracticeTruck full = PracticeTruck.of(charged());
        assertThat(full.dash().parkingKnobIn()).contains(false);
        assertThat(full.dash().trailerKnobIn()).contains(true);
        act(full, "parking-valve: push");
        full.advance(3);
        assertThat(full.dash().parkingKnobIn()).contains(true);
    }

    @Test
    void without_chocks_a_released_truck_rolls_away_down_a_grade() {
        PracticeTruck truck = PracticeTruck.of(charged().with(slope(-0.05)));
        truck.advance(10);
        assertThat(truck.metres()).isZero();

        act(truck, "parking-valve: push");
        truck.advance(1);
        act(truck, "stand: front");
        truck.advance(10);

        assertThat(truck.metres()).isGreaterThan(5);
        assertThat(saw(truck, Kind.HAZARD)).contains("rolls away with nobody in the cab");
    }

    /** Free rolling: a = g (sin - 0.007 cos), closed form of the motion without brakes. */
    @Test
    void a_free_truck_gains_speed_as_the_grade_says() {
        StartState free = new StartState(GaugePressure.ofPsi(110), false, true);
        PracticeTruck truck = PracticeTruck.of(healthy().with(free).with(slope(-0.05)));
        truck.advance(4);

        double acceleration = 9.80665 * (0.05 - 0.007) / Math.sqrt(1.0025);
        assertThat(truck.dash().metresPerSecond()).isCloseTo(4 * acceleration, within(1e-9));
        assertThat(truck.metres()).isCloseTo(8 * acceleration, within(1e-9));
    }

    @Test
    void a_chocked_truck_stays() {
        PracticeTruck truck = PracticeTruck.of(charged().with(slope(-0.03)));
        act(truck, "chock: 2L", "chock: 2R", "parking-valve: push");
        truck.advance(20);

        assertThat(truck.metres()).isZero();
    }

    @Test
    void the_foot_brake_stops_a_rolling_truck() {
        PracticeTruck truck = PracticeTruck.of(charged().with(slope(-0.05)));
        act(truck, "parking-valve: push");
        truck.advance(6);
        double fast = truck.dash().metresPerSecond();
        assertThat(fast).isGreaterThan(1);
        act(truck, "foot-brake: 60 %");
        truck.advance(4);

        assertThat(truck.dash().metresPerSecond()).isZero();
    }

    @Test
    void a_gentle_tug_is_held_by_the_parking_brakes_and_moves_the_truck_without_them() {
        PracticeTruck held = PracticeTruck.of(charged());
        tug(held);
        assertThat(held.metres()).isLessThan(0.05);

        PracticeTruck free = PracticeTruck.of(charged());
        act(free, "parking-valve: push");
        tug(free);
        assertThat(free.metres()).isGreaterThan(0.3);
    }

    private static void tug(PracticeTruck truck) {
        act(truck, "key: on", "engine: start");
        truck.advance(3);
        act(truck, "clutch: 100 %", "gear: low", "clutch: 65 %");
        truck.advance(4);
        act(truck, "clutch: 100 %");
    }

    @Test
    void an_engine_that_cannot_move_the_held_truck_stalls() {
        PracticeTruck truck = PracticeTruck.of(charged());
        act(truck, "key: on", "engine: start");
        truck.advance(3);
        act(truck, "foot-brake: 100 %");
        truck.advance(2);
        act(truck, "clutch: 100 %", "gear: low", "clutch: 0 %");
        truck.advance(5);

        assertThat(truck.engineRuns()).isFalse();
        assertThat(truck.metres()).isLessThan(0.2);
    }

    @Test
    void what_cannot_be_done_is_refused_with_its_reason() {
        PracticeTruck truck = PracticeTruck.of(charged());

        assertThat(tryTo(truck, "engine: start").orElse("")).contains("key");
        assertThat(tryTo(truck, "chock: 9L")).isPresent();
        assertThat(tryTo(truck, "pry: 2L").orElse("")).contains("applied");
        assertThat(tryTo(truck, "open-drain: pantry")).isPresent();
        assertThat(saw(truck, Kind.REFUSED)).contains("engine: start: the key is off");
    }

    @Test
    void leaving_the_cab_lets_the_pedal_up_unless_a_helper_sits_there() {
        PracticeTruck alone = PracticeTruck.of(charged());
        act(alone, "parking-valve: push", "chock: 2L", "chock: 1L", "foot-brake: 100 %");
        alone.advance(2);
        act(alone, "measure: 2L");
        assertThat(alone.footBrake()).isZero();

        PracticeTruck helped = PracticeTruck.of(charged());
        act(helped, "parking-valve: push", "helper: cab", "chock: 2L", "foot-brake: 100 %");
        helped.advance(2);
        act(helped, "measure: 2L");
        assertThat(helped.footBrake()).isOne();
        assertThat(helped.station()).hasToString("2L");
        assertThat(saw(helped, Kind.OBSERVED)).containsPattern("push rod of 2L is out 1 \\d");
    }

    @Test
    void a_push_rod_without_chocks_is_a_hazard() {
        PracticeTruck truck = PracticeTruck.of(charged());
        act(truck, "measure: 2L");

        assertThat(saw(truck, Kind.HAZARD)).contains("no wheel is chocked");
    }

    @Test
    void a_leak_is_heard_where_it_is_and_not_far_away() {
        FaultCase leak = FaultCase.at(Fault.SPRING_DIAPHRAGM_LEAK, "3R");
        PracticeTruck truck = PracticeTruck.of(charged().with(leak));
        act(truck, "parking-valve: push");
        truck.advance(5);
        act(truck, "stand: 3R");
        assertThat(truck.sounds()).anyMatch(s -> s.from().equals(truck.station()));
        act(truck, "stand: 3L");
        assertThat(truck.sounds()).isNotEmpty();
        act(truck, "stand: rear");
        double far = truck.sounds().stream().mapToDouble(Sound::level).sum();
        act(truck, "stand: 3R");
        assertThat(truck.sounds().get(0).level()).isGreaterThan(20 * far);

        PracticeTruck sound = PracticeTruck.of(charged());
        sound.advance(5);
        act(sound, "stand: 3R");
        assertThat(sound.sounds()).isEmpty();
    }

    @Test
    void parting_a_charged_supply_line_is_a_hazard_and_sets_the_trailer_brakes() {
        PracticeTruck truck = PracticeTruck.of(charged());
        act(truck, "parking-valve: push", "chock: 2L");
        truck.advance(3);
        act(truck, "part-supply-line: 1");
        truck.advance(60);

        assertThat(saw(truck, Kind.HAZARD)).contains("the hose whips");
        assertThat(truck.dash().trailerKnobIn()).contains(false);
        assertThat(truck.air().pressure("4L.spring").inPsi()).isLessThan(5);
    }

    @Test
    void the_same_actions_give_the_same_bits_and_others_do_not() {
        long first = run(0.02);
        assertThat(run(0.02)).isEqualTo(first);
        assertThat(run(0.5)).isEqualTo(first);
        PracticeTruck other = PracticeTruck.of(charged());
        other.advance(20);
        assertThat(other.fingerprint()).isNotEqualTo(first);
    }

    private static long run(double pieces) {
        PracticeTruck truck = PracticeTruck.of(charged());
        act(truck, "key: on", "engine: start", "parking-valve: push");
        pass(truck, 5, pieces);
        act(truck, "foot-brake: 80 %");
        pass(truck, 10, pieces);
        act(truck, "foot-brake: 0 %", "measure: 1L");
        pass(truck, 5, pieces);
        return truck.fingerprint();
    }

    private static void pass(PracticeTruck truck, double seconds, double pieces) {
        for (double t = 0; t < seconds - pieces / 2; t += pieces) {
            truck.advance(pieces);
        }
    }

    @Test
    void the_abs_lamp_checks_itself_stays_on_or_stays_dark() {
        assertThat(absLamp(withAbs())).containsExactly(true, false);
        assertThat(absLamp(with(Fault.ABS_LAMP_STAYS_ON))).containsExactly(true, true);
        assertThat(absLamp(with(Fault.ABS_LAMP_DEAD))).containsExactly(false, false);
    }

    private static Scenario with(Fault fault) {
        return withAbs().with(FaultCase.of(fault));
    }

    private static Scenario withAbs() {
        Vehicle vehicle = AirVehicles.tractor();
        VehicleUnit unit = vehicle.powerUnit();
        VehicleUnit fitted =
                new VehicleUnit(
                        unit.id(),
                        unit.kind(),
                        unit.form(),
                        unit.build(),
                        unit.brakes(),
                        Optional.of(true),
                        unit.ratings(),
                        unit.body(),
                        unit.air(),
                        unit.axles());
        return Scenario.of(new Vehicle(vehicle.name(), vehicle.use(), List.of(fitted)));
    }

    private static List<Boolean> absLamp(Scenario scenario) {
        PracticeTruck truck = PracticeTruck.of(scenario);
        act(truck, "key: on");
        truck.advance(1);
        boolean first = truck.dash().absLamp().orElseThrow();
        truck.advance(5);
        return List.of(first, truck.dash().absLamp().orElseThrow());
    }

    @Test
    void water_a_frozen_drain_and_an_odd_chamber_are_seen() {
        assertThat(seen(Fault.WATER_IN_PRIMARY, "open-drain: primary"))
                .contains("water, and then air comes out");
        assertThat(seen(Fault.DRAIN_FROZEN, "open-drain: primary")).contains("nothing comes out");
        PracticeTruck odd =
                PracticeTruck.of(charged().with(FaultCase.at(Fault.CHAMBER_UNEQUAL, "2L")));
        act(odd, "look: brake-chambers");
        assertThat(saw(odd, Kind.OBSERVED)).contains("type 24 stands on the chamber at 2L");
    }

    private static String seen(Fault fault, String action) {
        PracticeTruck truck = PracticeTruck.of(charged().with(FaultCase.of(fault)));
        act(truck, action);
        return saw(truck, Kind.OBSERVED);
    }
}
