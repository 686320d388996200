package org.fandown.air;

import java.util.Arrays;
import org.fandown.units.Fingerprint;
import org.fandown.units.GaugePressure;
import org.fandown.units.Temperature;

/**
 * All that changes in an {@link AirNetwork} while time passes.
 *
 * <p>Numbers without a type are SI: pressures absolute in pascals, flows in kg/s. The methods that
 * take a handle expect one of this state's network. Not safe for use by several threads.
 */
public final class AirState {
    final double[] mass;
    final double[] temperature;
    final double[] pressure;
    final double[] opening;
    final double[] command;

    /** The volume whose pressure adds to the command, -1 if none does. */
    final int[] pilot;

    final double[] inflow;
    final double[] flow;
    final double[] exhaust;
    final double[] memory;
    double time;

    /** How fast each pressure changed in the last step, Pa/s. */
    final double[] slope;

    /** Length of the next step, s; 0 for the shortest. */
    double suggestedStep;

    /** The pressures at which something will switch. */
    final Foresight foresight = new Foresight();

    private final AirNetwork network;

    AirState(AirNetwork network) {
        this.network = network;
        int nodes = network.nodes.count;
        int links = network.links().size();
        mass = new double[nodes];
        temperature = new double[nodes];
        pressure = new double[nodes];
        slope = new double[nodes];
        opening = new double[links];
        command = new double[links];
        pilot = new int[links];
        Arrays.fill(pilot, -1);
        inflow = new double[network.inflows.size()];
        flow = new double[links];
        exhaust = new double[links];
        memory = new double[network.memories.size()];
        for (int i = 0; i < nodes; i++) {
            temperature[i] = network.initialTemperature(i);
            fill(i, network.initialPressure(i));
        }
        for (int i = 0; i < links; i++) {
            opening[i] = 1;
        }
        for (int i = 0; i < memory.length; i++) {
            memory[i] = network.memories.get(i).initial();
        }
    }

    /** A boundary counts the air that goes into it, so it is not filled. */
    private void fill(int node, double pascals) {
        pressure[node] = pascals;
        slope[node] = 0;
        if (!network.nodes.boundary[node]) {
            mass[node] = network.nodes.mass(node, pascals, temperature[node]);
        }
    }

    /** Returns the network this is a state of. */
    public AirNetwork network() {
        return network;
    }

    /** Returns the time since the start, s. */
    public double time() {
        return time;
    }

    /** Returns the absolute pressure of a volume, Pa. */
    public double pascals(AirNode node) {
        return pressure[node.index()];
    }

    /** Returns what a gauge on a volume shows. */
    public GaugePressure gauge(AirNode node) {
        return new GaugePressure(pressure[node.index()] - network.ambient().pressure().pascals());
    }

    /** Returns the mass of air in a volume, or what went into a boundary, kg. */
    public double kilograms(AirNode node) {
        return mass[node.index()];
    }

    /** Returns the temperature of the air in a volume. */
    public Temperature temperature(AirNode node) {
        return new Temperature(temperature[node.index()]);
    }

    /** Returns the stroke of a chamber's push rod, m; 0 for another volume. */
    public double strokeMetres(AirNode node) {
        return network.law(node).map(law -> law.stroke(gauge(node).pascals())).orElse(0.0);
    }

    /** Returns the mean flow through a link in the last step, kg/s, negative if backwards. */
    public double flow(AirLink link) {
        return flow[link.index()];
    }

    /** Returns the mean flow from a lapping valve's exhaust in the last step, kg/s. */
    public double exhaust(AirLink link) {
        return exhaust[link.index()];
    }

    /** Returns by what part a link is open. */
    public double opening(AirLink link) {
        return opening[link.index()];
    }

    /** Returns the pressure a lapping valve aims at, Pa. */
    public double command(AirLink link) {
        return command[link.index()];
    }

    /** Returns the flow of a source, kg/s. */
    public double inflow(AirSource source) {
        return inflow[source.index()];
    }

    /** Returns a number remembered. */
    public double recall(AirMemory what) {
        return memory[what.index()];
    }

    /** Keeps a number. */
    public void remember(AirMemory what, double value) {
        memory[what.index()] = value;
    }

    /**
     * Fills a volume to a pressure, or sets that of a boundary, at the temperature it has.
     *
     * @throws IllegalArgumentException if the pressure is not above vacuum
     */
    public void setPressure(AirNode node, GaugePressure gauge) {
        double pascals = gauge.toAbsolute(network.ambient().pressure()).pascals();
        if (!(pascals > 0)) {
            throw new IllegalArgumentException(
                    "The pressure of " + node.name() + " must be above vacuum.");
        }
        fill(node.index(), pascals);
    }

    /**
     * Sets the temperature of the air in a reservoir and keeps its pressure.
     *
     * @throws IllegalArgumentException if the volume is not a reservoir, or the temperature 0 K
     */
    public void setTemperature(AirNode node, Temperature gas) {
        if (!network.nodes.thermal[node.index()] || !(gas.kelvins() > 0)) {
            throw new IllegalArgumentException(
                    "Only a reservoir has a temperature of its own, above 0 K; not "
                            + node.name()
                            + ".");
        }
        temperature[node.index()] = gas.kelvins();
        fill(node.index(), pressure[node.index()]);
    }

    /**
     * Sets by what part a link is open; of a lapping valve it scales inlet and exhaust alike.
     *
     * @throws IllegalArgumentException if the part is not in 0 to 1
     */
    public void setOpening(AirLink link, double part) {
        if (!(part >= 0 && part <= 1)) {
            throw new IllegalArgumentException(
                    "The opening of " + link.name() + " must be 0 to 1.");
        }
        opening[link.index()] = part;
    }

    /**
     * Sets the absolute pressure a lapping valve aims at, Pa; below that of the air it exhausts
     * all.
     *
     * @throws IllegalArgumentException if the pressure is not finite
     */
    public void setCommand(AirLink link, double pascals) {
        if (!(Math.abs(pascals) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The command of " + link.name() + " must be finite.");
        }
        command[link.index()] = pascals;
        pilot[link.index()] = -1;
    }

    /**
     * Lets a lapping valve aim at the pressure of one of its pilots, as that is at the end of each
     * step.
     *
     * @param link the valve
     * @param leader one of the pilots it was built with
     * @param above how far above the pilot's pressure it aims, Pa
     * @throws IllegalArgumentException if it is none of its pilots, or the distance is not finite
     */
    public void follow(AirLink link, AirNode leader, double above) {
        if (!network.follows(link, leader)) {
            throw new IllegalArgumentException(
                    leader.name() + " is no pilot of " + link.name() + ".");
        }
        setCommand(link, above);
        pilot[link.index()] = leader.index();
    }

    /**
     * Sets the flow of a source, kg/s.
     *
     * @throws IllegalArgumentException if the flow is not in 0 to 10 kg/s
     */
    public void setInflow(AirSource source, double kilogramsPerSecond) {
        if (!(kilogramsPerSecond >= 0 && kilogramsPerSecond <= 10)) {
            throw new IllegalArgumentException(
                    "The flow of " + source.name() + " must be 0 to 10 kg/s.");
        }
        inflow[source.index()] = kilogramsPerSecond;
    }

    /** Returns how fast the pressure of a volume changed in the last step, Pa/s. */
    public double slope(AirNode node) {
        return slope[node.index()];
    }

    /**
     * Says that something will switch when a pressure reaches a level, so that a step of variable
     * length ends there and does not pass it by. Holds for the next step.
     *
     * @param node a volume
     * @param pascals the level, absolute, Pa
     */
    public void foresee(AirNode node, double pascals) {
        foresight.add(node.index(), pascals);
    }

    /**
     * Says that something will switch when the difference of two pressures reaches a level.
     *
     * @param node a volume
     * @param less the volume whose pressure is subtracted
     * @param pascals the difference, Pa
     */
    public void foresee(AirNode node, AirNode less, double pascals) {
        foresight.add(node.index(), less.index(), pascals);
    }

    /** Makes the next step the shortest, because something was just switched. */
    public void restartStep() {
        suggestedStep = 0;
    }

    /** Returns a copy that goes its own way. */
    public AirState copy() {
        return movedTo(network);
    }

    /**
     * Returns a copy on a network that differs in the laws of its chambers. Each volume keeps its
     * air, so the pressure of a chamber changes with its law.
     *
     * @throws IllegalArgumentException if the other network has other volumes or links
     */
    public AirState movedTo(AirNetwork other) {
        if (other != network && !network.sharesHandlesWith(other)) {
            throw new IllegalArgumentException("The networks have different volumes or links.");
        }
        AirState copy = new AirState(other);
        double[][] to = copy.parts();
        double[][] from = parts();
        for (int i = 0; i < from.length; i++) {
            System.arraycopy(from[i], 0, to[i], 0, from[i].length);
        }
        System.arraycopy(pilot, 0, copy.pilot, 0, pilot.length);
        copy.time = time;
        copy.suggestedStep = suggestedStep;
        copy.foresight.copyFrom(foresight);
        if (other != network) {
            copy.settlePressures();
        }
        return copy;
    }

    private double[][] parts() {
        return new double[][] {
            mass, temperature, pressure, slope, opening, command, inflow, flow, exhaust, memory
        };
    }

    private void settlePressures() {
        for (int i = 0; i < mass.length; i++) {
            if (network.nodes.chamber[i] >= 0) {
                pressure[i] = network.nodes.pressure(i, mass[i], temperature[i]);
            }
        }
    }

    /**
     * Returns a number made from all bits of this state. Two states that went through the same
     * steps have the same one on every machine.
     */
    public long fingerprint() {
        Fingerprint print = new Fingerprint();
        for (double[] part : parts()) {
            print.add(part);
        }
        for (int leader : pilot) {
            print.add(leader);
        }
        print.add(time);
        print.add(suggestedStep);
        print.add(foresight.soonest(this));
        return print.value();
    }
}
