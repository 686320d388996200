package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.app.files.DocumentFiles;
import org.fandown.units.GaugePressure;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each example vehicle has an air system that runs and keeps the balance of its air. */
class ExampleAirSystemsTest {
    private static final int RUNS = 5;
    private static final int ACTS = 15;

    /** The safety valve opens at 150 psi, and air trapped cold can warm after that. */
    private static final double MOST_PSI = 165;

    /** Warm air of a reservoir that is empty cools below the pressure around it. */
    private static final double LEAST_PSI = -2;

    /** Rounding of some hundred thousand additions, kg. */
    private static final double ROUNDING = 1e-9;

    static Stream<Path> vehicles() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "examples", "vehicles"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void builds_up_from_nothing_to_its_cut_out(Path file) {
        AirSystem system = system(file);
        system.control(AirControls.NONE.withEngine(RotationalSpeed.ofRpm(1500)));
        for (int i = 0; i < 900 && system.compressorLoaded(); i++) {
            system.advance(1);
        }

        assertThat(system.compressorLoaded()).isFalse();
        assertThat(system.primaryNeedle().inPsi()).isBetween(110.0, 140.0);
        assertThat(system.secondaryNeedle().inPsi()).isBetween(110.0, 140.0);
        assertThat(system.lowAirLamp()).isFalse();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void keeps_its_air_whatever_a_person_does(Path file) {
        for (int seed = 0; seed < RUNS; seed++) {
            Random random = new Random(seed);
            AirSystem system = system(file);
            system.fill(GaugePressure.ofPsi(130 * random.nextDouble()));
            double before = system.kilogramsInAll();
            for (int act = 0; act < ACTS; act++) {
                system.control(any(random));
                system.advance(20 * random.nextDouble());
                requirePossible(system);
            }
            assertThat(system.kilogramsInAll() - system.kilogramsPumped())
                    .isCloseTo(before, within(ROUNDING));
        }
    }

    private static AirSystem system(Path file) {
        return AirSystem.of(VehicleReader.read(DocumentFiles.read(file)), AirSetup.SOUND);
    }

    private static void requirePossible(AirSystem system) {
        for (String volume : system.volumes()) {
            double psi = system.pressure(volume).inPsi();
            assertThat(psi).as(volume).isBetween(LEAST_PSI, MOST_PSI);
        }
    }

    private static AirControls any(Random random) {
        Knob[] knobs = Knob.values();
        Coupling[] couplings = Coupling.values();
        return AirControls.NONE
                .withEngine(RotationalSpeed.ofRpm(2500 * random.nextDouble()))
                .withFoot(Math.min(1, 2 * random.nextDouble()))
                .withHand(Math.max(0, 2 * random.nextDouble() - 1))
                .withParking(knobs[random.nextInt(knobs.length)])
                .withTrailer(knobs[random.nextInt(knobs.length)])
                .withDrains(random.nextInt(4) == 0 ? Set.of("primary", "supply") : Set.of())
                .withCoupling(1, couplings[random.nextInt(couplings.length)]);
    }
}
