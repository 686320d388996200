package org.fandown.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.AirVehicles;
import org.fandown.units.GaugePressure;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.Vehicle;

class AirSystemPropertyTest {
    /** The safety valve opens at 150 psi, and air trapped cold can warm after that. */
    private static final double MOST_PSI = 165;

    /** Warm air of a reservoir that is empty cools below the pressure around it. */
    private static final double LEAST_PSI = -2;

    /** Rounding of some hundred thousand additions. */
    private static final double ROUNDING = 1e-9;

    /** What a person does for a while. */
    record Act(AirControls controls, double seconds) {}

    @Property(tries = 60)
    void whatever_a_person_does_no_air_is_lost_and_no_pressure_is_impossible(
            @ForAll("vehicles") Vehicle vehicle,
            @ForAll("acts") List<Act> acts,
            @ForAll("starts") double psi) {
        AirSystem system = AirSystem.of(vehicle, AirSetup.SOUND);
        system.fill(GaugePressure.ofPsi(psi));
        double before = system.kilogramsInAll();
        for (Act act : acts) {
            system.control(act.controls());
            system.advance(act.seconds());
            for (String volume : system.volumes()) {
                assertThat(system.pressure(volume).inPsi())
                        .as(volume)
                        .isBetween(LEAST_PSI, MOST_PSI);
            }
        }

        assertThat(system.kilogramsInAll() - system.kilogramsPumped())
                .isCloseTo(before, within(ROUNDING));
    }

    @Provide
    Arbitrary<Vehicle> vehicles() {
        return Arbitraries.of(AirVehicles.all());
    }

    @Provide
    Arbitrary<Double> starts() {
        return Arbitraries.doubles().between(0, 130);
    }

    @Provide
    Arbitrary<List<Act>> acts() {
        Arbitrary<AirControls> controls =
                Combinators.combine(
                                Arbitraries.doubles().between(0, 2500),
                                Arbitraries.of(0.0, 0.2, 0.6, 1.0),
                                Arbitraries.of(0.0, 0.5, 1.0),
                                Arbitraries.of(Knob.values()),
                                Arbitraries.of(Knob.values()),
                                Arbitraries.of("supply", "primary", "unit2.reservoir", "none"),
                                Arbitraries.of(Coupling.values()))
                        .as(
                                (rpm, foot, hand, parking, trailer, drain, coupling) ->
                                        AirControls.NONE
                                                .withEngine(RotationalSpeed.ofRpm(rpm))
                                                .withFoot(foot)
                                                .withHand(hand)
                                                .withParking(parking)
                                                .withTrailer(trailer)
                                                .withDrains(Set.of(drain))
                                                .withCoupling(1, coupling));
        return Combinators.combine(controls, Arbitraries.doubles().between(0.01, 25))
                .as(Act::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
    }
}
