package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * One column of a trace: something that has a number at every moment of a run.
 *
 * @param name what it is, such as {@code primary needle}
 * @param unit its unit, such as {@code psi}; empty text where it is yes (1) or no (0)
 * @param decimals how many decimals are worth printing
 * @param reading how it is read
 */
public record Signal(
        String name, String unit, int decimals, ToDoubleFunction<PracticeTruck> reading) {
    private static final double KMH = 3.6;

    /** Reads it now. */
    public double value(PracticeTruck truck) {
        return reading.applyAsDouble(truck);
    }

    /** Returns name and unit as the head of a column: {@code primary needle psi}. */
    public String head() {
        return unit.isEmpty() ? name : name + " " + unit;
    }

    /**
     * Returns all signals of a vehicle, always in the same order, time first.
     *
     * @param truck the vehicle
     */
    public static List<Signal> of(PracticeTruck truck) {
        List<Signal> signals = new ArrayList<>();
        signals.add(new Signal("time", "s", 2, PracticeTruck::time));
        signals.add(psi("primary needle", t -> t.dash().primary()));
        signals.add(psi("secondary needle", t -> t.dash().secondary()));
        addVolumes(signals, truck);
        signals.add(new Signal("engine", "rpm", 0, t -> t.dash().engine().inRpm()));
        signals.add(new Signal("foot brake", "%", 0, t -> 100 * t.footBrake()));
        signals.add(new Signal("hand valve", "%", 0, t -> 100 * t.handValve()));
        addLamps(signals);
        signals.add(new Signal("speed", "km/h", 2, t -> KMH * t.dash().metresPerSecond()));
        signals.add(new Signal("way", "m", 2, PracticeTruck::metres));
        addStrokes(signals, truck.vehicle());
        return List.copyOf(signals);
    }

    private static void addVolumes(List<Signal> signals, PracticeTruck truck) {
        for (String volume : truck.air().volumes()) {
            boolean worth =
                    isReservoir(volume)
                            || volume.startsWith("supply-line-")
                            || volume.startsWith("control-line-")
                            || volume.equals("park-line");
            if (worth) {
                signals.add(psi(volume.replace('-', ' '), t -> t.air().pressure(volume)));
            }
        }
    }

    private static boolean isReservoir(String volume) {
        return List.of("supply", "primary", "secondary", "parking").contains(volume)
                || volume.endsWith(".reservoir");
    }

    private static void addLamps(List<Signal> signals) {
        signals.add(yes("key", t -> t.dash().keyOn()));
        signals.add(yes("low-air lamp", t -> t.dash().lowAirLamp()));
        signals.add(yes("low-air buzzer", t -> t.dash().lowAirBuzzer()));
        signals.add(yes("ABS lamp", t -> t.dash().absLamp().orElse(false)));
        signals.add(yes("trailer ABS lamp", t -> t.trailerAbsLamp().orElse(false)));
        signals.add(yes("stop lamps", PracticeTruck::stopLamps));
        signals.add(yes("purge", PracticeTruck::purging));
        signals.add(yes("compressor pumps", t -> t.engineRuns() && t.air().compressorLoaded()));
        signals.add(yes("parking knob in", t -> t.dash().parkingKnobIn().orElse(false)));
        signals.add(yes("trailer knob in", t -> t.dash().trailerKnobIn().orElse(false)));
    }

    private static void addStrokes(List<Signal> signals, Vehicle vehicle) {
        for (WheelId wheel : vehicle.wheelsWithPushRod()) {
            signals.add(
                    new Signal(
                            "stroke " + wheel,
                            "in",
                            3,
                            t -> t.air().pushRod(wheel).map(Length::inInches).orElse(0.0)));
        }
    }

    private interface Needle {
        GaugePressure read(PracticeTruck truck);
    }

    private static Signal psi(String name, Needle needle) {
        return new Signal(name, "psi", 2, t -> needle.read(t).inPsi());
    }

    private interface Lit {
        boolean read(PracticeTruck truck);
    }

    private static Signal yes(String name, Lit lit) {
        return new Signal(name, "", 0, t -> lit.read(t) ? 1 : 0);
    }
}
