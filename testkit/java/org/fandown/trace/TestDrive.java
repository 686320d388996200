package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.fandown.air.FaultCase;
import org.fandown.air.Fault;
import org.fandown.practice.Dash;
import org.fandown.practice.OperatorAction;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Scenario;
import org.fandown.practice.Verb;
import org.fandown.units.GaugePressure;
import org.fandown.vehicle.Vehicle;

/**
 * A full test in the cab of a practice truck, with what truly happened: material for those who try
 * to recognise it from samples.
 */
public final class TestDrive {
    /** Channels recorded, in the order of {@link #row}. */
    private static final Channel[] CHANNELS = {
        Channel.PRIMARY,
        Channel.SECONDARY,
        Channel.SUPPLY,
        Channel.PARKING,
        Channel.APPLICATION,
        Channel.ENGINE_SPEED,
        Channel.BRAKE_SWITCH,
        Channel.PARKING_SWITCH,
        Channel.WARNING,
        Channel.TRAILER_SHUT
    };

    private static final int PRESSURES = 5;
    private static final int GAUSS_BITS = 16;
    private static final double[] GAUSS = gauss();
    private static final List<Fault> FAULTS = List.of(Fault.values());

    /** When something truly happened, and at which pressure of the higher circuit. */
    public record Event(Recognised.Kind kind, double seconds, double psi) {}

    /** How samples are taken: step in psi, samples a second, noise in psi. */
    public record Recorder(double step, double rate, double noise) {}

    private final PracticeTruck truck;
    private final SplittableRandom lot;
    private final List<double[]> rows = new ArrayList<>();
    private final List<Event> events = new ArrayList<>();
    private boolean loaded;
    private boolean warned;
    private boolean parkingOut;
    private boolean trailerOut;

    private TestDrive(Scenario scenario, SplittableRandom lot) {
        truck = PracticeTruck.of(scenario);
        this.lot = lot;
        loaded = truck.air().compressorLoaded();
        parkingOut = true;
        trailerOut = true;
    }

    /** Makes a whole test on a vehicle, sound or with faults drawn by lot, ending with a fan down. */
    public static TestDrive of(List<Vehicle> vehicles, long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        Vehicle vehicle = vehicles.get(lot.nextInt(vehicles.size()));
        TestDrive drive = new TestDrive(scenario(vehicle, lot), lot);
        drive.inCab();
        return drive;
    }

    /** Makes a whole test on a sound vehicle. */
    public static TestDrive sound(Vehicle vehicle, long seed) {
        TestDrive drive = new TestDrive(Scenario.of(vehicle), new SplittableRandom(seed));
        drive.inCab();
        return drive;
    }

    private static Scenario scenario(Vehicle vehicle, SplittableRandom lot) {
        Scenario scenario = Scenario.of(vehicle);
        int faults = lot.nextInt(3);
        for (int i = 0; i < faults; i++) {
            Fault fault = FAULTS.get(lot.nextInt(FAULTS.size()));
            double least = fault.size().least();
            double size = least + lot.nextDouble() * (fault.size().most() - least) / 3;
            size = fault.size().unit().equals("type") ? 2 * Math.floor(size / 2) : size;
            FaultCase drawn = new FaultCase(fault, size, fault.atWheel() ? "2L" : "");
            if (drawn.refusal(vehicle).isEmpty()) {
                scenario = scenario.with(drawn);
            }
        }
        return scenario;
    }

    private void inCab() {
        act("chock", "2L");
        act("key", "on");
        pass(1 + 5 * lot.nextDouble());
        act("engine", "start");
        pass(3);
        act("throttle", 700 + lot.nextInt(1100) + " rpm");
        until(() -> !truck.air().compressorLoaded(), 400);
        pass(12 + 10 * lot.nextDouble());
        act("parking-valve", "push");
        act("trailer-valve", "push");
        pass(5);
        until(() -> !truck.air().compressorLoaded(), 400);
        pass(12 + 5 * lot.nextDouble());
        for (int i = 0; i < 14 && !truck.air().compressorLoaded(); i++) {
            stab("30 %");
        }
        until(() -> !truck.air().compressorLoaded(), 300);
        pass(10);
        act("throttle", "0 %");
        pass(3);
        act("engine", "stop");
        pass(8 + 60 + 20 * lot.nextDouble());
        act("foot-brake", "100 %");
        pass(8 + 60 + 30 * lot.nextDouble());
        act("foot-brake", "0 %");
        pass(3);
        for (int i = 0; i < 30; i++) {
            stab("100 %");
        }
        pass(5);
    }

    private void stab(String travel) {
        act("foot-brake", travel);
        pass(1.5);
        act("foot-brake", "0 %");
        pass(2.5);
    }

    private void act(String verb, String value) {
        truck.act(new OperatorAction(Verb.byId(verb).orElseThrow(), value));
    }

    private void pass(double seconds) {
        for (double t = 0; t < seconds; t += PracticeTruck.TICK) {
            truck.advance(PracticeTruck.TICK);
            note();
            rows.add(row());
        }
    }

    private void until(BooleanSupplier there, double most) {
        double end = truck.time() + most;
        while (!there.getAsBoolean() && truck.time() < end) {
            pass(0.2);
        }
    }

    private double psi(String volume) {
        return truck.air().find(volume).map(GaugePressure::inPsi).orElse(Double.NaN);
    }

    private double higher() {
        return Math.max(psi("primary"), psi("secondary"));
    }

    private double lower() {
        return Math.min(psi("primary"), psi("secondary"));
    }

    private void note() {
        boolean pumps = truck.air().compressorLoaded();
        if (truck.engineRuns() && pumps != loaded) {
            Recognised.Kind kind = pumps ? Recognised.Kind.CUT_IN : Recognised.Kind.CUT_OUT;
            events.add(new Event(kind, truck.time(), higher()));
        }
        loaded = pumps;
        Dash dash = truck.dash();
        boolean warns = dash.lowAirLamp();
        if (warns && !warned) {
            events.add(new Event(Recognised.Kind.WARNING, truck.time(), lower()));
        }
        warned = warns;
        boolean parked = !dash.parkingKnobIn().orElse(false);
        if (parked && !parkingOut) {
            events.add(new Event(Recognised.Kind.PARKING_CLOSED, truck.time(), lower()));
        }
        parkingOut = parked;
        boolean shut = !dash.trailerKnobIn().orElse(false);
        if (shut && !trailerOut) {
            events.add(new Event(Recognised.Kind.TRAILER_CLOSED, truck.time(), lower()));
        }
        trailerOut = shut;
    }

    private double[] row() {
        Dash dash = truck.dash();
        return new double[] {
            truck.time(),
            psi("primary"),
            psi("secondary"),
            psi("supply"),
            psi("park-line"),
            psi("primary-delivery"),
            dash.engine().inRpm(),
            truck.footBrake() > 0 ? 1 : 0,
            parkingOut ? 1 : 0,
            warned ? 1 : 0,
            trailerOut ? 1 : 0
        };
    }

    /** What truly happened, in order of time. */
    public List<Event> events() {
        return List.copyOf(events);
    }

    /** Faults of the vehicle and the vehicle itself. */
    public Scenario scenario() {
        return truck.scenario();
    }

    /** What the worse circuit truly lost in a stretch, psi a minute. */
    public double lossBetween(double from, double to) {
        double[] first = at(from);
        double[] last = at(to);
        double minutes = (last[0] - first[0]) / 60;
        return Math.max(first[1] - last[1], first[2] - last[2]) / minutes;
    }

    /** Whether the pedal was down all through a stretch, or up all through it. */
    public boolean isBraked(double seconds) {
        return at(seconds)[7] > 0;
    }

    /** Whether the engine stood at a moment. */
    public boolean isStill(double seconds) {
        return at(seconds)[6] < 1;
    }

    private double[] at(double seconds) {
        int low = 0;
        int high = rows.size() - 1;
        while (low < high) {
            int mid = (low + high) / 2;
            if (rows.get(mid)[0] < seconds) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return rows.get(low);
    }

    /** Records the test and returns what is recognised in the recording. */
    public List<Recognised> recognised(Recorder recorder, boolean withEngine, long seed) {
        List<Recognised> found = new ArrayList<>();
        TraceWatch watch = new TraceWatch(found::add);
        record(recorder, withEngine, seed, watch::sample);
        watch.finish();
        return found;
    }

    /** Records the test sample by sample. */
    public void record(
            Recorder recorder, boolean withEngine, long seed, NetworkTrace.SampleSink sink) {
        SplittableRandom noise = new SplittableRandom(seed);
        double end = rows.get(rows.size() - 1)[0];
        double apart = 1 / recorder.rate();
        int after = 1;
        for (double time = rows.get(0)[0] + apart * noise.nextDouble(); time < end; time += apart) {
            while (rows.get(after)[0] < time) {
                after++;
            }
            sample(sink, time, rows.get(after - 1), rows.get(after), recorder, withEngine, noise);
        }
    }

    /** Between two rows pressures run straight, and switches are as in the first. */
    private static void sample(
            NetworkTrace.SampleSink sink,
            double time,
            double[] before,
            double[] after,
            Recorder recorder,
            boolean withEngine,
            SplittableRandom noise) {
        double part = (time - before[0]) / (after[0] - before[0]);
        for (int i = 0; i < CHANNELS.length; i++) {
            double value = before[i + 1];
            boolean skip = CHANNELS[i] == Channel.ENGINE_SPEED && !withEngine;
            if (skip || Double.isNaN(value)) {
                continue;
            }
            if (i < PRESSURES) {
                double between = value + part * (after[i + 1] - value);
                value = shown(Double.isNaN(between) ? value : between, recorder, noise);
            }
            sink.sample(CHANNELS[i], time, value);
        }
    }

    private static double shown(double psi, Recorder recorder, SplittableRandom lot) {
        double noisy = psi + recorder.noise() * gauss(lot);
        return recorder.step() * Math.floor(noisy / recorder.step() + 0.5);
    }

    /** A number of the standard normal law, of many that were drawn once. */
    private static double gauss(SplittableRandom lot) {
        return GAUSS[lot.nextInt() >>> (Integer.SIZE - GAUSS_BITS)];
    }

    /** Numbers of the standard normal law: twelve even ones, less six. */
    private static double[] gauss() {
        SplittableRandom lot = new SplittableRandom(12);
        double[] all = new double[1 << GAUSS_BITS];
        for (int i = 0; i < all.length; i++) {
            double sum = -6;
            for (int j = 0; j < 12; j++) {
                sum += lot.nextDouble();
            }
            all[i] = sum;
        }
        return all;
    }
}
