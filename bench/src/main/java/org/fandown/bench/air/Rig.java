package org.fandown.bench.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.air.ChamberLaw;
import org.fandown.air.PushRodStroke;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Volume;

/**
 * A tractor and semitrailer as numbers: vessels, and the ways between them. Nothing in it computes.
 */
final class Rig {
    /** Place of the surrounding air among the ends of a way. */
    static final int OUTSIDE = -1;

    static final double CHARGED_PSI = 120;
    static final double RATIO = 0.35;
    static final double BAND_PSI = 2;
    static final double DEADBAND_PSI = 1;
    static final double RELAY_CRACK_PSI = 3;
    static final double WALL_SECONDS = 40;
    static final double PUMPED_KELVINS = 320;
    private static final double CHECK_CRACK_PSI = 1;
    private static final double STOCK = 1e-8;

    /** How a way behaves. */
    enum Kind {
        /** Open at all times, to either side. */
        HOLE,
        /** Open while both dash knobs are in. */
        KNOBS_IN,
        /** Open while both are out. */
        KNOBS_OUT,
        /** From first to second alone. */
        CHECK,
        /** A valve that laps at the pressure the pedal asks for. */
        PEDAL,
        /** A valve that laps at the pressure of its pilot less the opening pressure. */
        RELAY
    }

    /**
     * A volume.
     *
     * @param cubicInches its size; 0 for a chamber
     * @param reservoir whether its air has a temperature of its own
     * @param law how a chamber grows
     * @param charged whether it holds air at first
     */
    record Vessel(
            String name,
            double cubicInches,
            boolean reservoir,
            Optional<ChamberLaw> law,
            boolean charged) {}

    /**
     * A way.
     *
     * @param conductance sonic conductance, m3/(s Pa); that of a valve's exhaust is the same
     * @param crackPsi opening pressure of a check valve
     * @param pilot the vessel that commands a relay valve
     */
    record Way(
            Kind kind,
            String name,
            int from,
            int to,
            double conductance,
            double crackPsi,
            int pilot) {}

    final List<Vessel> vessels = new ArrayList<>();
    final List<Way> ways = new ArrayList<>();
    final int supply;

    Rig() {
        supply = reservoir("supply", 1400);
        int primary = reservoir("primary", 2400);
        int secondary = reservoir("secondary", 1800);
        int trailer = reservoir("trailer", 2800);
        check("supply-primary", supply, primary, 8);
        check("supply-secondary", supply, secondary, 8);
        int supplyLine = line("supply-line", 90, true);
        way(Kind.KNOBS_IN, "trailer-supply", primary, supplyLine, 4);
        way(Kind.KNOBS_OUT, "trailer-supply-exhaust", supplyLine, OUTSIDE, 6);
        check("trailer-fill", supplyLine, trailer, 4);
        way(Kind.HOLE, "leak", primary, OUTSIDE, 0.013);
        addService(primary, secondary, trailer);
        addParking(primary);
    }

    private void addService(int primary, int secondary, int trailer) {
        int control = line("primary-control", 20, false);
        int controlLine = line("control-line", 73, false);
        int front = line("front-line", 15, false);
        way(Kind.PEDAL, "foot-primary", primary, control, 12);
        way(Kind.PEDAL, "foot-secondary", secondary, front, 12);
        way(Kind.HOLE, "tractor-protection", control, controlLine, 6);
        chambers("front", front, 2, type(20, 9, 2.25, 0.007));
        relay("rear", primary, control);
        relay("trailer", trailer, controlLine);
    }

    private void relay(String name, int from, int pilot) {
        int delivery = line(name + "-delivery", 20, false);
        ways.add(new Way(Kind.RELAY, name + "-relay", from, delivery, 12 * STOCK, 0, pilot));
        chambers(name, delivery, 4, type(30, 14, 2.5, 0.0105));
    }

    private void addParking(int primary) {
        int line = line("parking-line", 20, true);
        way(Kind.KNOBS_IN, "parking", primary, line, 3);
        way(Kind.KNOBS_OUT, "parking-exhaust", line, OUTSIDE, 6);
        ChamberLaw spring =
                ChamberLaw.spring(
                        Volume.ofCubicInches(20),
                        30,
                        GaugePressure.ofPsi(48),
                        GaugePressure.ofPsi(65),
                        Length.ofInches(2.5));
        for (int i = 1; i <= 2; i++) {
            int chamber = add(new Vessel("spring-" + i, 0, false, Optional.of(spring), true));
            way(Kind.HOLE, "spring-hose-" + i, line, chamber, 5);
        }
    }

    private void chambers(String name, int from, int count, ChamberLaw law) {
        for (int i = 1; i <= count; i++) {
            int chamber =
                    add(new Vessel(name + "-chamber-" + i, 0, false, Optional.of(law), false));
            way(Kind.HOLE, name + "-hose-" + i, from, chamber, 6);
        }
    }

    private static ChamberLaw type(double area, double rest, double full, double perPsi) {
        PushRodStroke stroke =
                new PushRodStroke(
                        GaugePressure.ofPsi(5),
                        GaugePressure.ofPsi(8),
                        Length.ofInches(0.5),
                        perPsi,
                        Length.ofInches(full));
        return ChamberLaw.service(Volume.ofCubicInches(rest), area, stroke);
    }

    private int reservoir(String name, double cubicInches) {
        return add(new Vessel(name, cubicInches, true, Optional.empty(), true));
    }

    private int line(String name, double cubicInches, boolean charged) {
        return add(new Vessel(name, cubicInches, false, Optional.empty(), charged));
    }

    private int add(Vessel vessel) {
        vessels.add(vessel);
        return vessels.size() - 1;
    }

    private void way(Kind kind, String name, int from, int to, double conductance) {
        ways.add(new Way(kind, name, from, to, conductance * STOCK, 0, OUTSIDE));
    }

    private void check(String name, int from, int to, double conductance) {
        ways.add(
                new Way(Kind.CHECK, name, from, to, conductance * STOCK, CHECK_CRACK_PSI, OUTSIDE));
    }

    /** Returns the places of the reservoirs. */
    int[] reservoirs() {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < vessels.size(); i++) {
            if (vessels.get(i).reservoir()) {
                places.add(i);
            }
        }
        return places.stream().mapToInt(Integer::intValue).toArray();
    }
}
