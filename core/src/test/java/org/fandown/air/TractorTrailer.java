package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;

/**
 * A tractor and semi-trailer of plausible sizes, built by hand for tests: reservoirs, foot valve,
 * two relay valves, service and spring chambers, a small leak.
 */
public final class TractorTrailer {
    private static final GaugePressure CRACK = GaugePressure.ofPsi(1);
    private static final double RELAY_CRACK = GaugePressure.ofPsi(3).pascals();
    private static final TimeSpan WALL = TimeSpan.ofSeconds(40);

    public final AirNetwork network;
    public final AirNode supply;
    public final AirNode primary;
    public final AirNode secondary;
    public final AirNode trailer;
    public final AirNode rearChamber;
    public final AirSource compressor;
    private final AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
    private final List<AirLink> foot = new ArrayList<>();
    private final List<AirLink> relays = new ArrayList<>();
    private final List<AirNode> controls = new ArrayList<>();
    private final List<AirNode> charged = new ArrayList<>();

    public TractorTrailer() {
        supply = reservoir("supply", 1400);
        primary = reservoir("primary", 2400);
        secondary = reservoir("secondary", 1800);
        trailer = reservoir("trailer", 2800);
        builder.check("supply-primary", supply, primary, way(8), CRACK);
        builder.check("supply-secondary", supply, secondary, way(8), CRACK);
        AirNode supplyLine = line("supply-line", 90);
        charged.add(supplyLine);
        builder.orifice("trailer-supply", primary, supplyLine, way(4));
        builder.check("trailer-fill", supplyLine, trailer, way(4), CRACK);
        builder.orifice("leak", primary, builder.atmosphere(), new Restriction(1.3e-10, 0.5));
        compressor = builder.source("compressor", supply, Temperature.ofKelvins(320));
        rearChamber = serviceBrakes();
        parkingBrakes();
        network = builder.build();
    }

    private AirNode serviceBrakes() {
        AirNode primaryControl = line("primary-control", 20);
        AirNode controlLine = line("control-line", 73);
        AirNode front = line("front-line", 15);
        foot.add(builder.lapping("foot-primary", primary, primaryControl, valve()));
        foot.add(builder.lapping("foot-secondary", secondary, front, valve()));
        builder.orifice("tractor-protection", primaryControl, controlLine, way(6));
        AirNode rear = relay("rear", primary, primaryControl);
        AirNode behind = relay("behind", trailer, controlLine);
        chambers("front", front, 2, type(20, 9, 2.25, 0.007));
        AirNode first = chambers("rear", rear, 4, type(30, 14, 2.5, 0.0105));
        chambers("behind", behind, 4, type(30, 14, 2.5, 0.0105));
        return first;
    }

    private void parkingBrakes() {
        AirNode parkingLine = line("parking-line", 20);
        charged.add(parkingLine);
        builder.orifice("parking", primary, parkingLine, way(3));
        ChamberLaw spring =
                ChamberLaw.spring(
                        Volume.ofCubicInches(20),
                        30,
                        GaugePressure.ofPsi(48.3),
                        GaugePressure.ofPsi(65),
                        Length.ofInches(2.5));
        for (int i = 0; i < 2; i++) {
            AirNode chamber = builder.addChamber("spring " + i, spring);
            charged.add(chamber);
            builder.orifice("spring hose " + i, parkingLine, chamber, way(5));
        }
    }

    private AirNode relay(String name, AirNode from, AirNode control) {
        AirNode delivery = line(name + " relay line", 20);
        relays.add(builder.lapping(name + " relay", from, delivery, valve()));
        controls.add(control);
        return delivery;
    }

    private AirNode chambers(String name, AirNode from, int count, ChamberLaw law) {
        AirNode first = from;
        for (int i = 0; i < count; i++) {
            AirNode chamber = builder.addChamber(name + " chamber " + i, law);
            builder.orifice(name + " hose " + i, from, chamber, way(6));
            first = i == 0 ? chamber : first;
        }
        return first;
    }

    private AirNode reservoir(String name, double cubicInches) {
        AirNode node = builder.addReservoir(name, Volume.ofCubicInches(cubicInches), WALL);
        charged.add(node);
        return node;
    }

    private AirNode line(String name, double cubicInches) {
        return builder.addRigid(name, Volume.ofCubicInches(cubicInches));
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

    private static LappingValve valve() {
        return new LappingValve(way(12), way(12), GaugePressure.ofPsi(2), GaugePressure.ofPsi(1));
    }

    private static Restriction way(double hundredMillionths) {
        return new Restriction(hundredMillionths * 1e-8, 0.35);
    }

    /** Returns a state in which all reservoirs and spring brakes are charged to 120 psi. */
    public AirState charged() {
        AirState state = network.stateAtRest();
        charged.forEach(node -> state.setPressure(node, GaugePressure.ofPsi(120)));
        work(state, 0);
        return state;
    }

    /** Lets the foot valve ask for a pressure and the relay valves follow their control. */
    public void work(AirState state, double pedalPsi) {
        double atmosphere = Ambient.STANDARD.pressure().pascals();
        for (int i = 0; i < foot.size(); i++) {
            state.setCommand(foot.get(i), atmosphere + GaugePressure.ofPsi(pedalPsi).pascals());
        }
        for (int i = 0; i < relays.size(); i++) {
            state.setCommand(relays.get(i), state.pascals(controls.get(i)) - RELAY_CRACK);
        }
    }
}
