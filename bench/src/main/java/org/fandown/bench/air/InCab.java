package org.fandown.bench.air;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.Ambient;
import org.fandown.air.StepControl;
import org.fandown.app.files.DocumentFiles;
import org.fandown.units.GaugePressure;
import org.fandown.units.RotationalSpeed;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/**
 * Twelve minutes of tests in the cab: build-up from low air to the cut-out, applications down to
 * the cut-in, engine off, two minutes released, a minute applied, a fan down until the warning and
 * both knobs have come, and a rebuild.
 */
final class InCab {
    /** How long it takes, s. */
    static final int SECONDS = 720;

    private static final double LOW_PSI = 50;
    private static final double RPM = 1500;

    private final Vehicle vehicle;
    private final List<Act> acts = new ArrayList<>();

    /** What a person does at a moment, a whole second. */
    private record Act(int at, UnaryOperator<AirControls> what) {}

    InCab(Vehicle vehicle) {
        this.vehicle = vehicle;
        engine(0, RPM);
        pushKnobs(60);
        applications(185, 4, 6, 1);
        applications(240, 3, 8, 0.5);
        engine(270, 0);
        applications(390, 1, 140, 0.85);
        applications(465, 24, 4, 1);
        engine(570, RPM);
        pushKnobs(630);
    }

    /** Reads one of the vehicles of the examples, whichever directory of ours this runs in. */
    static Vehicle example(String name) {
        Path here = Path.of("examples", "vehicles", name + ".yaml");
        Path file = Files.exists(here) ? here : Path.of("..").resolve(here);
        return VehicleReader.read(DocumentFiles.read(file));
    }

    private void engine(int at, double rpm) {
        acts.add(new Act(at, c -> c.withEngine(RotationalSpeed.ofRpm(rpm))));
    }

    private void pushKnobs(int at) {
        acts.add(new Act(at, c -> c.withParking(Knob.PUSHED).withTrailer(Knob.PUSHED)));
        acts.add(new Act(at + 1, c -> c.withParking(Knob.LEFT_ALONE).withTrailer(Knob.LEFT_ALONE)));
    }

    /** Applies for half of each period and releases for the other half. */
    private void applications(int at, int count, int period, double travel) {
        for (int i = 0; i < count; i++) {
            acts.add(new Act(at + i * period, c -> c.withFoot(travel)));
            acts.add(new Act(at + i * period + period / 2, c -> c.withFoot(0)));
        }
    }

    /** Returns the system before the test. */
    AirSystem start(StepControl steps) {
        AirSystem system = AirSystem.of(vehicle, AirSetup.SOUND, Ambient.STANDARD, steps);
        system.fill(GaugePressure.ofPsi(LOW_PSI));
        return system;
    }

    /** Goes through the test from one act to the next, and returns the system after it. */
    AirSystem run(StepControl steps) {
        AirSystem system = start(steps);
        for (Act act : acts) {
            system.advance(act.at() - system.state().time());
            system.control(act.what().apply(system.controls()));
        }
        system.advance(SECONDS - system.state().time());
        return system;
    }

    /** Goes through the test second by second, and lets somebody look after each. */
    void watch(StepControl steps, Consumer<AirSystem> eyes) {
        AirSystem system = start(steps);
        int next = 0;
        for (int second = 0; second < SECONDS; second++) {
            while (next < acts.size() && acts.get(next).at() == second) {
                system.control(acts.get(next).what().apply(system.controls()));
                next++;
            }
            system.advance(second + 1 - system.state().time());
            eyes.accept(system);
        }
    }

    /** Goes through the test and returns the pressures of all reservoirs after each second, psi. */
    double[][] reservoirs(StepControl steps) {
        List<double[]> rows = new ArrayList<>();
        watch(
                steps,
                system ->
                        rows.add(
                                system.volumes().stream()
                                        .filter(InCab::isReservoir)
                                        .mapToDouble(name -> system.pressure(name).inPsi())
                                        .toArray()));
        return rows.toArray(double[][]::new);
    }

    private static boolean isReservoir(String name) {
        return List.of("supply", "primary", "secondary", "parking").contains(name)
                || name.endsWith(".reservoir");
    }
}
