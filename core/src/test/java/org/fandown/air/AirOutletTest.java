package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirOutlet.Kind;
import org.fandown.units.GaugePressure;
import org.fandown.units.RotationalSpeed;
import org.fandown.units.TimeSpan;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AirOutletTest {
    /** The least that is taken as blowing, kg/s: some 6 litres a minute. */
    private static final double BLOWS = 1e-4;

    /** Rounding of sums of masses, as part of what left. */
    private static final double ROUNDING = 1e-9;

    private static AirSystem charged(AirSetup setup) {
        return new InCab(AirVehicles.tractorTrailer(), setup).charged(100);
    }

    private static double flow(AirSystem system, String name) {
        return system.outlets().stream()
                .filter(way -> way.name().equals(name))
                .findFirst()
                .orElseThrow()
                .kilogramsPerSecond();
    }

    /** The ways that blow, with the volumes the air comes from. */
    private static Map<String, String> blowing(AirSystem system) {
        Map<String, String> found = new LinkedHashMap<>();
        for (AirOutlet way : system.outlets()) {
            if (way.kilogramsPerSecond() > BLOWS) {
                found.put(way.name(), way.volume());
            }
        }
        return found;
    }

    @Test
    void nothing_blows_on_a_sound_vehicle_at_rest_or_with_the_pedal_held() {
        AirSystem system = charged(AirSetup.SOUND);
        assertThat(blowing(system)).isEmpty();
        system.control(system.controls().withFoot(0.5));
        system.advance(10);

        assertThat(blowing(system)).isEmpty();
    }

    @Test
    void a_hole_blows_as_much_as_the_law_of_flow_says() {
        AirSystem system = charged(AirSetup.SOUND.withLeak("primary", 0.5));
        double area = 0.5e-6;
        double pascals = system.pressure("primary").inPsi() * 6894.757 + 101325;
        double choked = 0.68473 * area * pascals / Math.sqrt(287.05 * 293.15);

        assertThat(flow(system, "leak-primary")).isCloseTo(choked, within(0.02 * choked));
        assertThat(blowing(system)).containsExactly(Map.entry("leak-primary", "primary"));
    }

    @Test
    void the_pedal_let_up_blows_at_the_exhausts_of_the_valves() {
        AirSystem system = charged(AirSetup.SOUND);
        system.control(system.controls().withFoot(0.6));
        system.advance(3);
        system.control(system.controls().withFoot(0));
        system.advance(0.05);

        assertThat(blowing(system))
                .containsEntry("relay-rear-exhaust", "rear-service")
                .containsEntry("quick-release-front-exhaust", "front-service")
                .containsEntry("foot-valve-primary-exhaust", "primary-delivery");
    }

    @Test
    void a_pulled_knob_a_drain_and_a_parted_line_blow() {
        AirSystem system = charged(AirSetup.SOUND);
        system.control(
                system.controls()
                        .withParking(Knob.PULLED)
                        .withDrains(Set.of("secondary"))
                        .withCoupling(1, Coupling.SUPPLY_OPEN));
        system.advance(0.005);

        assertThat(blowing(system))
                .containsEntry("parking-valve-exhaust", "park-line")
                .containsEntry("drain-secondary", "secondary")
                .containsEntry("open-supply-1", "supply-line-1")
                .containsEntry("open-supply-rear-1", "supply-line-2");
    }

    @Test
    void the_dryer_blows_at_the_cut_out_and_the_safety_valve_if_there_is_none() {
        AirSystem system = charged(AirSetup.SOUND.with(AirDefault.CUT_OUT, 101));
        double purge = most(system, "purge-valve", 20);
        AirSystem stuck = charged(FaultCase.of(Fault.GOVERNOR_STUCK_LOADED).in(AirSetup.SOUND));
        double safety = most(stuck, "safety-valve", 300);

        assertThat(purge).isGreaterThan(BLOWS);
        assertThat(safety).isGreaterThan(BLOWS);
    }

    private static double most(AirSystem system, String name, int seconds) {
        system.control(system.controls().withEngine(RotationalSpeed.ofRpm(1500)));
        double most = 0;
        for (int i = 0; i < 10 * seconds; i++) {
            system.advance(0.1);
            most = Math.max(most, flow(system, name));
        }
        return most;
    }

    static List<Vehicle> vehicles() {
        return AirVehicles.all();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void all_air_that_is_lost_leaves_by_a_way_of_the_list(Vehicle vehicle) {
        AirSystem system =
                AirSystem.of(
                        vehicle,
                        AirSetup.SOUND.withLeak("primary-delivery", 1),
                        Ambient.STANDARD,
                        StepControl.fixed(TimeSpan.ofSeconds(0.01)));
        system.fill(GaugePressure.ofPsi(110));
        AirNode outside = system.state().network().node("atmosphere").orElseThrow();
        double before = system.state().kilograms(outside);
        double sum = 0;
        system.control(AirControls.NONE.withFoot(0.7).withDrains(Set.of("secondary")));
        for (int i = 0; i < 300; i++) {
            if (i == 150) {
                system.control(AirControls.NONE.withParking(Knob.PULLED));
            }
            system.advance(0.01);
            for (AirOutlet way : system.outlets()) {
                sum += 0.01 * way.kilogramsPerSecond();
            }
        }
        double left = system.state().kilograms(outside) - before;

        assertThat(left).isGreaterThan(0.01);
        assertThat(sum).isCloseTo(left, within(ROUNDING * left));
    }

    @Test
    void the_list_is_made_once_and_its_names_are_unique() {
        AirSystem system = charged(AirSetup.SOUND.withLeak("2L.service", 1));

        assertThat(system.outlets()).isSameAs(system.outlets());
        assertThat(system.outlets().stream().map(AirOutlet::name)).doesNotHaveDuplicates();
        assertThat(system.outlets().stream().map(AirOutlet::kind)).contains(Kind.values());
    }
}
