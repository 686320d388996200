package org.fandown.air;

import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import org.fandown.air.AirControls.Knob;
import org.fandown.units.GaugePressure;
import org.fandown.units.RotationalSpeed;
import org.fandown.units.TimeSpan;
import org.fandown.vehicle.Vehicle;

/** The tests a driver makes in the cab, run on an air system; each starts from a full system. */
public final class InCab {
    /** What a test gives that found nothing. */
    public static final double NEVER = -1;

    private static final double TICK = 0.1;
    private static final double MOST_SECONDS = 900;

    private final Vehicle vehicle;
    private final AirSetup setup;

    /** Tests one vehicle. */
    public InCab(Vehicle vehicle, AirSetup setup) {
        this.vehicle = vehicle;
        this.setup = setup;
    }

    /** Returns a system at a pressure, all knobs in, engine off, everything settled. */
    public AirSystem charged(double psi) {
        AirSystem system = AirSystem.of(vehicle, setup);
        system.fill(GaugePressure.ofPsi(psi));
        system.advance(1);
        return system;
    }

    /** The same with even steps of a millisecond, for timings. */
    public AirSystem chargedForTiming(double psi) {
        AirSystem system =
                AirSystem.of(
                        vehicle,
                        setup,
                        Ambient.STANDARD,
                        StepControl.fixed(TimeSpan.ofSeconds(0.001)));
        system.fill(GaugePressure.ofPsi(psi));
        system.advance(1);
        return system;
    }

    /** Returns the higher needle when the purge begins, from 90 psi at 1200 rpm, psi. */
    public double cutOut() {
        AirSystem system = charged(90);
        run(system, 1200);
        boolean pumped = await(system, system::compressorLoaded);
        boolean stopped = pumped && await(system, () -> !system.compressorLoaded());
        return stopped ? highNeedle(system) : NEVER;
    }

    /** Returns the higher needle when pumping starts again, braking down from 120 psi, psi. */
    public double cutIn() {
        return cutIn(1);
    }

    /** Returns the same braked down with a pedal travel; less travel finds it more exactly. */
    public double cutIn(double travel) {
        AirSystem system = charged(120);
        system.control(system.controls().withEngine(RotationalSpeed.ofRpm(700)));
        if (!stopPumping(system)) {
            return NEVER;
        }
        for (int i = 0; i < 60; i++) {
            stab(system, travel);
            if (system.compressorLoaded()) {
                return highNeedle(system);
            }
        }
        return NEVER;
    }

    private boolean stopPumping(AirSystem system) {
        return await(system, () -> !system.compressorLoaded());
    }

    /** Returns the seconds from 85 to 100 psi on the lower needle at an engine speed. */
    public double buildUp(double rpm) {
        AirSystem system = charged(70);
        run(system, rpm);
        if (!await(system, () -> lowNeedle(system) >= 85)) {
            return NEVER;
        }
        double start = system.state().time();
        return await(system, () -> lowNeedle(system) >= 100)
                ? system.state().time() - start
                : NEVER;
    }

    /** Returns the seconds from 50 to 90 psi on the lower needle, parked, at an engine speed. */
    public double buildUpFromFifty(double rpm) {
        AirSystem system = charged(40);
        system.control(system.controls().withEngine(RotationalSpeed.ofRpm(rpm)));
        if (!await(system, () -> lowNeedle(system) >= 50)) {
            return NEVER;
        }
        double start = system.state().time();
        return await(system, () -> lowNeedle(system) >= 90) ? system.state().time() - start : NEVER;
    }

    /** Returns the lower needle when the lamp lights in a fan down from 90 psi, psi. */
    public double lowAirLamp() {
        return fanDown(AirSystem::lowAirLamp, InCab::lowNeedle);
    }

    /** Returns the lower needle when the buzzer sounds in a fan down, psi. */
    public double lowAirBuzzer() {
        return fanDown(AirSystem::lowAirBuzzer, InCab::lowNeedle);
    }

    /** Returns the higher pressure at which the parking knob pops out in a fan down, psi. */
    public double parkingPop() {
        return fanDown(s -> !s.parkingKnobIn().orElse(true), InCab::high);
    }

    /** Returns the higher pressure at which the trailer supply knob pops out, psi. */
    public double trailerPop() {
        return fanDown(s -> !s.trailerKnobIn().orElse(true), InCab::high);
    }

    private double fanDown(
            java.util.function.Predicate<AirSystem> seen, ToDoubleFunction<AirSystem> read) {
        AirSystem system = charged(90);
        for (int i = 0; i < 60; i++) {
            system.control(system.controls().withFoot(1));
            for (int tick = 0; tick < 15; tick++) {
                system.advance(TICK);
                if (seen.test(system)) {
                    return read.applyAsDouble(system);
                }
            }
            system.control(system.controls().withFoot(0));
            system.advance(1.5);
        }
        return NEVER;
    }

    /** Returns the loss of the worse needle in a minute, brakes released, psi. */
    public double lossReleased() {
        AirSystem system = charged(100);
        return loss(system);
    }

    /** Returns the loss of the worse needle in a minute with a full application, psi. */
    public double lossApplied() {
        AirSystem system = charged(100);
        system.control(system.controls().withFoot(1));
        system.advance(60);
        return loss(system);
    }

    private static double loss(AirSystem system) {
        system.advance(2);
        double primary = system.primaryNeedle().inPsi();
        double secondary = system.secondaryNeedle().inPsi();
        system.advance(60);
        return Math.max(
                primary - system.primaryNeedle().inPsi(),
                secondary - system.secondaryNeedle().inPsi());
    }

    private static void stab(AirSystem system) {
        stab(system, 1);
    }

    private static void stab(AirSystem system, double travel) {
        system.control(system.controls().withFoot(travel));
        system.advance(1);
        system.control(system.controls().withFoot(0));
        system.advance(1);
    }

    private static void run(AirSystem system, double rpm) {
        stab(system);
        stab(system);
        stab(system);
        AirControls controls = system.controls().withEngine(RotationalSpeed.ofRpm(rpm));
        system.control(controls.withParking(Knob.PUSHED).withTrailer(Knob.PUSHED));
        system.advance(TICK);
        system.control(controls);
    }

    private static boolean await(AirSystem system, BooleanSupplier seen) {
        for (double t = 0; t < MOST_SECONDS; t += TICK) {
            if (seen.getAsBoolean()) {
                return true;
            }
            system.advance(TICK);
        }
        return false;
    }

    private static double lowNeedle(AirSystem system) {
        return Math.min(system.primaryNeedle().inPsi(), system.secondaryNeedle().inPsi());
    }

    private static double highNeedle(AirSystem system) {
        return Math.max(system.primaryNeedle().inPsi(), system.secondaryNeedle().inPsi());
    }

    private static double high(AirSystem system) {
        return Math.max(system.pressure("primary").inPsi(), system.pressure("secondary").inPsi());
    }

    /**
     * Returns the seconds until a volume passes a pressure, NEVER if it does not in three.
     *
     * @param system a system that was just given a command
     * @param rising whether it must rise to the pressure; else fall to it
     */
    public static double seconds(AirSystem system, String volume, double psi, boolean rising) {
        double start = system.state().time();
        while (system.state().time() < start + 3) {
            double now = system.pressure(volume).inPsi();
            if (rising ? now >= psi : now <= psi) {
                return system.state().time() - start;
            }
            system.advance(0.001);
        }
        return NEVER;
    }
}
