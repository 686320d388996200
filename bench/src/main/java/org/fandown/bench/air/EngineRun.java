package org.fandown.bench.air;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirLink;
import org.fandown.air.AirNetwork;
import org.fandown.air.AirNetworkBuilder;
import org.fandown.air.AirNode;
import org.fandown.air.AirSource;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.Ambient;
import org.fandown.air.LappingValve;
import org.fandown.air.Restriction;
import org.fandown.air.StepControl;
import org.fandown.units.GaugePressure;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;

/** The rig run by the engine. */
final class EngineRun {
    private static final double AMBIENT = Ambient.STANDARD.pressure().pascals();

    private final Rig rig;
    private final AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
    private final List<AirNode> nodes = new ArrayList<>();
    private final List<AirLink> links = new ArrayList<>();
    private final AirSource compressor;
    private final AirNetwork network;
    private final AirStepper stepper;
    private final int[] reservoirs;

    EngineRun(Rig rig) {
        this.rig = rig;
        reservoirs = rig.reservoirs();
        rig.vessels.forEach(vessel -> nodes.add(node(vessel)));
        rig.ways.forEach(way -> links.add(link(way)));
        compressor =
                builder.source(
                        "compressor",
                        nodes.get(rig.supply),
                        Temperature.ofKelvins(Rig.PUMPED_KELVINS));
        network = builder.build();
        stepper = new AirStepper(network);
    }

    private AirNode node(Rig.Vessel vessel) {
        if (vessel.law().isPresent()) {
            return builder.addChamber(vessel.name(), vessel.law().get());
        }
        Volume volume = Volume.ofCubicInches(vessel.cubicInches());
        return vessel.reservoir()
                ? builder.addReservoir(vessel.name(), volume, TimeSpan.ofSeconds(Rig.WALL_SECONDS))
                : builder.addRigid(vessel.name(), volume);
    }

    private AirLink link(Rig.Way way) {
        AirNode from = nodes.get(way.from());
        AirNode to = way.to() == Rig.OUTSIDE ? builder.atmosphere() : nodes.get(way.to());
        Restriction hole = new Restriction(way.conductance(), Rig.RATIO);
        LappingValve valve =
                new LappingValve(
                        hole,
                        hole,
                        GaugePressure.ofPsi(Rig.BAND_PSI),
                        GaugePressure.ofPsi(Rig.DEADBAND_PSI));
        return switch (way.kind()) {
            case HOLE, KNOBS_IN, KNOBS_OUT -> builder.orifice(way.name(), from, to, hole);
            case CHECK ->
                    builder.check(way.name(), from, to, hole, GaugePressure.ofPsi(way.crackPsi()));
            case PEDAL -> builder.lapping(way.name(), from, to, valve);
            case RELAY -> builder.lapping(way.name(), from, to, valve, nodes.get(way.pilot()));
        };
    }

    /**
     * Runs the script.
     *
     * @param steps how long the steps are
     * @return the pressure of each reservoir after each second, psi
     */
    double[][] run(StepControl steps) {
        AirState state = network.stateAtRest();
        for (int i = 0; i < nodes.size(); i++) {
            if (rig.vessels.get(i).charged()) {
                state.setPressure(nodes.get(i), GaugePressure.ofPsi(Rig.CHARGED_PSI));
            }
        }
        double[][] seen = new double[RigScript.SECONDS][];
        for (RigScript.Phase phase : RigScript.phases()) {
            begin(state, phase);
            for (int second = phase.from(); second < phase.until(); second++) {
                stepper.advance(state, second + 1, steps, (s, h) -> {});
                seen[second] = read(state);
            }
        }
        return seen;
    }

    private void begin(AirState state, RigScript.Phase phase) {
        for (int i = 0; i < links.size(); i++) {
            Rig.Way way = rig.ways.get(i);
            AirLink link = links.get(i);
            switch (way.kind()) {
                case KNOBS_IN -> state.setOpening(link, phase.knobsIn() ? 1 : 0);
                case KNOBS_OUT -> state.setOpening(link, phase.knobsIn() ? 0 : 1);
                case PEDAL ->
                        state.setCommand(
                                link, AMBIENT + GaugePressure.ofPsi(phase.pedalPsi()).pascals());
                case RELAY ->
                        state.follow(
                                link,
                                nodes.get(way.pilot()),
                                -GaugePressure.ofPsi(Rig.RELAY_CRACK_PSI).pascals());
                case HOLE, CHECK -> state.setOpening(link, 1);
            }
        }
        state.setInflow(compressor, phase.pumped());
        state.restartStep();
    }

    private double[] read(AirState state) {
        double[] psi = new double[reservoirs.length];
        for (int k = 0; k < psi.length; k++) {
            psi[k] = state.gauge(nodes.get(reservoirs[k])).inPsi();
        }
        return psi;
    }
}
