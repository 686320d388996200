package org.fandown.property.air;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.fandown.air.AirLink;
import org.fandown.air.AirNetwork;
import org.fandown.air.AirNetworkBuilder;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.Ambient;
import org.fandown.air.ChamberLaw;
import org.fandown.air.LappingValve;
import org.fandown.air.PushRodStroke;
import org.fandown.air.Restriction;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;

/** A network drawn by lot: volumes, chambers, holes, check valves and lapping valves. */
final class RandomNetwork {
    private static final double ATMOSPHERE = 101_325;
    private static final TimeSpan INSULATED = new TimeSpan(1e10);

    final AirNetwork network;
    private final SplittableRandom lot;
    private final AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
    private final List<AirNode> volumes = new ArrayList<>();
    private final List<AirLink> holes = new ArrayList<>();
    private final List<AirLink> checks = new ArrayList<>();
    private final List<AirLink> valves = new ArrayList<>();

    RandomNetwork(long seed) {
        lot = new SplittableRandom(seed);
        int count = 2 + lot.nextInt(12);
        for (int i = 0; i < count; i++) {
            volumes.add(volume("volume " + i));
        }
        for (int i = 1; i < count; i++) {
            link("tree " + i, volumes.get(i), volumes.get(lot.nextInt(i)));
        }
        int more = lot.nextInt(6);
        for (int i = 0; i < more; i++) {
            AirNode from = volumes.get(lot.nextInt(count));
            AirNode to = lot.nextInt(3) == 0 ? builder.atmosphere() : any();
            if (!from.equals(to)) {
                link("more " + i, from, to);
            }
        }
        network = builder.build();
    }

    private AirNode any() {
        return volumes.get(lot.nextInt(volumes.size()));
    }

    private AirNode volume(String name) {
        return switch (lot.nextInt(3)) {
            case 0 -> builder.addRigid(name, new Volume(spread(5e-5, 0.05)));
            case 1 -> builder.addReservoir(name, new Volume(spread(1e-3, 0.06)), INSULATED);
            default -> builder.addChamber(name, law());
        };
    }

    private ChamberLaw law() {
        PushRodStroke stroke =
                new PushRodStroke(
                        GaugePressure.ofPsi(lot.nextDouble(1, 8)),
                        GaugePressure.ofPsi(lot.nextDouble(8.1, 12)),
                        Length.ofInches(lot.nextDouble(0, 2.7)),
                        lot.nextDouble(0.001, 0.02),
                        Length.ofInches(2.5));
        return ChamberLaw.service(
                Volume.ofCubicInches(lot.nextDouble(7, 30)), lot.nextDouble(9, 36), stroke);
    }

    private void link(String name, AirNode from, AirNode to) {
        Restriction way = new Restriction(spread(1e-10, 3e-7), lot.nextDouble(0, 0.6));
        int kind = to.equals(builder.atmosphere()) ? lot.nextInt(3) : lot.nextInt(4);
        if (kind < 2) {
            holes.add(builder.orifice(name, from, to, way));
        } else if (kind == 2) {
            GaugePressure crack = GaugePressure.ofPsi(lot.nextInt(2) * lot.nextDouble(0, 3));
            checks.add(builder.check(name, from, to, way, crack));
        } else {
            Restriction exhaust = new Restriction(spread(1e-9, 2e-7), 0.3);
            GaugePressure band = GaugePressure.ofPsi(lot.nextDouble(0.5, 3));
            GaugePressure deadband = GaugePressure.ofPsi(lot.nextDouble(0, 2));
            valves.add(
                    builder.lapping(
                            name, from, to, new LappingValve(way, exhaust, band, deadband)));
        }
    }

    List<AirNode> volumes() {
        return volumes;
    }

    List<AirLink> checks() {
        return checks;
    }

    List<AirLink> valves() {
        return valves;
    }

    /** A state with pressures drawn from 0 to 130 psi. */
    AirState filled() {
        AirState state = network.stateAtRest();
        for (AirNode node : volumes) {
            state.setPressure(node, GaugePressure.ofPsi(lot.nextDouble(0, 130)));
        }
        return state;
    }

    /** Works some valves: opens and shuts holes by parts, and gives commands from 0 to 130 psi. */
    void operate(AirState state) {
        for (AirLink hole : holes) {
            if (lot.nextInt(3) == 0) {
                state.setOpening(hole, lot.nextBoolean() ? lot.nextDouble() : lot.nextInt(2));
            }
        }
        for (AirLink valve : valves) {
            if (lot.nextInt(3) == 0) {
                double psi = lot.nextBoolean() ? 0 : lot.nextDouble(0, 130);
                state.setCommand(valve, ATMOSPHERE + GaugePressure.ofPsi(psi).pascals());
            }
        }
    }

    /** A step from 0.1 ms to 1 s, each order of size as likely. */
    double step() {
        return spread(1e-4, 1);
    }

    private double spread(double low, double high) {
        return Math.exp(lot.nextDouble(Math.log(low), Math.log(high)));
    }
}
