package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.units.GaugePressure;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;

/**
 * Collects the volumes of an {@link AirNetwork} and the ways between them.
 *
 * <p>Names must be unique among their kind, and a network must hold one volume at least. All
 * volumes start at the pressure and temperature of the surrounding air.
 */
public final class AirNetworkBuilder {
    private static final double SMALLEST_VOLUME = 1e-7;

    private final Ambient ambient;
    private final AirNode atmosphere = new AirNode(0, "atmosphere");
    private final List<NodeSpec> nodes = new ArrayList<>();
    private final List<BranchSpec> branches = new ArrayList<>();
    private final List<AirNode> nodeHandles = new ArrayList<>();
    private final List<AirLink> links = new ArrayList<>();
    private final List<AirNetwork.Inflow> inflows = new ArrayList<>();
    private final List<AirNetwork.Remembered> memories = new ArrayList<>();

    AirNetworkBuilder(Ambient ambient) {
        this.ambient = ambient;
        addBoundary(atmosphere.name(), new GaugePressure(0), ambient.temperature());
    }

    /** Returns the surrounding air, which every network has. */
    public AirNode atmosphere() {
        return atmosphere;
    }

    /**
     * Adds a constant volume at constant temperature, such as a line.
     *
     * @throws IllegalArgumentException if the name is taken or the volume below 0.1 cm3
     */
    public AirNode addRigid(String name, Volume volume) {
        return addVolume(name, NodeSpec.Kind.RIGID, volume, 0);
    }

    /**
     * Adds a constant volume whose gas warms when it is filled, cools when it is emptied, and takes
     * on the temperature of its wall, that of the surrounding air.
     *
     * @param name name
     * @param volume volume, at least 0.1 cm3
     * @param wall time constant of the heat from the wall, more than 0
     * @throws IllegalArgumentException if the name is taken or an amount is out of range
     */
    public AirNode addReservoir(String name, Volume volume, TimeSpan wall) {
        if (!(wall.seconds() > 0)) {
            throw new IllegalArgumentException(
                    "The time constant of the wall of " + name + " must be above 0.");
        }
        return addVolume(name, NodeSpec.Kind.RESERVOIR, volume, wall.seconds());
    }

    /**
     * Adds a brake chamber, at constant temperature.
     *
     * @throws IllegalArgumentException if the name is taken
     */
    public AirNode addChamber(String name, ChamberLaw law) {
        return add(
                new NodeSpec(
                        name,
                        NodeSpec.Kind.CHAMBER,
                        0,
                        Optional.of(law),
                        0,
                        ambient.pressure().pascals(),
                        ambient.temperature().kelvins()));
    }

    /**
     * Adds air of constant pressure and temperature, such as a workshop's supply.
     *
     * @throws IllegalArgumentException if the name is taken or an amount is out of range
     */
    public AirNode addBoundary(String name, GaugePressure pressure, Temperature temperature) {
        if (!(temperature.kelvins() > 0)) {
            throw new IllegalArgumentException(
                    "The temperature of " + name + " must be above 0 K.");
        }
        return add(
                new NodeSpec(
                        name,
                        NodeSpec.Kind.BOUNDARY,
                        0,
                        Optional.empty(),
                        0,
                        pressure.toAbsolute(ambient.pressure()).pascals(),
                        temperature.kelvins()));
    }

    /**
     * Adds a way that is always open, or open by a part that a valve sets with {@link
     * AirState#setOpening}.
     *
     * @param name name
     * @param a one end
     * @param b the other end; flow from a to b counts as positive
     * @param way the way, wide open
     * @throws IllegalArgumentException if the name is taken or the ends are the same
     */
    public AirLink orifice(String name, AirNode a, AirNode b, Restriction way) {
        return link(name, a, b, BranchSpec.Kind.PLAIN, way, 0, 0, 0);
    }

    /**
     * Adds a check valve: air passes from a to b while a is above b by more than the opening
     * pressure, which is lost on the way.
     *
     * @param name name
     * @param a the end it comes from
     * @param b the end it goes to
     * @param way the way, wide open
     * @param crack opening pressure, 0 or more
     * @throws IllegalArgumentException if the name is taken, the ends are the same, or the opening
     *     pressure is below 0
     */
    public AirLink check(String name, AirNode a, AirNode b, Restriction way, GaugePressure crack) {
        if (!(crack.pascals() >= 0)) {
            throw new IllegalArgumentException(
                    "The opening pressure of " + name + " must be 0 or more.");
        }
        return link(name, a, b, BranchSpec.Kind.CHECK, way, crack.pascals(), 0, 0);
    }

    /**
     * Adds a pressure protection valve: a check valve that opens only above a pressure before it,
     * evenly over a range.
     *
     * @param name name
     * @param a the end it comes from, whose pressure opens it
     * @param b the end it goes to
     * @param valve its way and pressures
     * @throws IllegalArgumentException if the name is taken or the ends are the same
     */
    public AirLink protection(String name, AirNode a, AirNode b, ProtectionValve valve) {
        return link(
                name,
                a,
                b,
                BranchSpec.Kind.PROTECTION,
                valve.way(),
                valve.crack().pascals(),
                valve.shut().toAbsolute(ambient.pressure()).pascals(),
                valve.range().pascals());
    }

    /**
     * Adds a valve that brings its delivery to a pressure set with {@link AirState#setCommand}, or
     * to that of a pilot chosen with {@link AirState#follow}, and exhausts to the surrounding air.
     * Its flow from supply to delivery counts as positive.
     *
     * @param name name
     * @param supply where its air comes from
     * @param delivery where its air goes to
     * @param valve its ways and bands
     * @param pilots the volumes it may follow
     * @throws IllegalArgumentException if the name is taken, the ends are the same, or the delivery
     *     or a pilot is not a volume of this network
     */
    public AirLink lapping(
            String name, AirNode supply, AirNode delivery, LappingValve valve, AirNode... pilots) {
        requireVolume(name, delivery);
        AirLink link = link(name, supply, delivery);
        List<Integer> commanders = new ArrayList<>();
        for (AirNode pilot : pilots) {
            requireVolume(name, pilot);
            commanders.add(pilot.index());
        }
        double band = valve.band().pascals();
        branches.add(
                new BranchSpec(
                        BranchSpec.Kind.INLET,
                        link.index(),
                        supply.index(),
                        delivery.index(),
                        valve.inlet(),
                        0,
                        0,
                        band,
                        commanders));
        branches.add(
                new BranchSpec(
                        BranchSpec.Kind.EXHAUST,
                        link.index(),
                        delivery.index(),
                        atmosphere.index(),
                        valve.exhaust(),
                        0,
                        valve.deadband().pascals(),
                        band,
                        commanders));
        return link;
    }

    /**
     * Adds a place where air is pumped in, at a rate set with {@link AirState#setInflow}.
     *
     * @param name name
     * @param into where the air goes
     * @param temperature temperature of that air, above 0 K
     * @throws IllegalArgumentException if the name is taken or the temperature is 0 K
     */
    public AirSource source(String name, AirNode into, Temperature temperature) {
        if (!(temperature.kelvins() > 0)) {
            throw new IllegalArgumentException(
                    "The temperature of " + name + " must be above 0 K.");
        }
        requireVolume(name, into);
        AirSource source = new AirSource(inflows.size(), name);
        requireNew(name, inflows.stream().anyMatch(i -> i.source().name().equals(name)));
        inflows.add(new AirNetwork.Inflow(source, into.index(), temperature.kelvins()));
        return source;
    }

    /**
     * Adds a number that a valve or switch remembers.
     *
     * @throws IllegalArgumentException if the name is taken
     */
    public AirMemory memory(String name, double initial) {
        AirMemory memory = new AirMemory(memories.size(), name);
        requireNew(name, memories.stream().anyMatch(m -> m.memory().name().equals(name)));
        memories.add(new AirNetwork.Remembered(memory, initial));
        return memory;
    }

    /**
     * Makes the network.
     *
     * @throws IllegalStateException if no volume was added
     */
    public AirNetwork build() {
        if (nodes.stream().allMatch(n -> n.kind() == NodeSpec.Kind.BOUNDARY)) {
            throw new IllegalStateException("A network needs a volume; add one.");
        }
        return new AirNetwork(ambient, nodes, nodeHandles, links, branches, inflows, memories);
    }

    private AirNode addVolume(String name, NodeSpec.Kind kind, Volume volume, double wall) {
        if (!(volume.cubicMetres() >= SMALLEST_VOLUME)) {
            throw new IllegalArgumentException(
                    "The volume of " + name + " is " + volume + "; it must be 0.1 cm3 or more.");
        }
        return add(
                new NodeSpec(
                        name,
                        kind,
                        volume.cubicMetres(),
                        Optional.empty(),
                        wall,
                        ambient.pressure().pascals(),
                        ambient.temperature().kelvins()));
    }

    private AirNode add(NodeSpec spec) {
        requireNew(spec.name(), nodes.stream().anyMatch(n -> n.name().equals(spec.name())));
        AirNode node = new AirNode(nodes.size(), spec.name());
        nodes.add(spec);
        nodeHandles.add(node);
        return node;
    }

    private AirLink link(
            String name,
            AirNode a,
            AirNode b,
            BranchSpec.Kind kind,
            Restriction way,
            double crack,
            double offset,
            double band) {
        AirLink link = link(name, a, b);
        branches.add(
                new BranchSpec(
                        kind,
                        link.index(),
                        a.index(),
                        b.index(),
                        way,
                        crack,
                        offset,
                        band,
                        List.of()));
        return link;
    }

    private AirLink link(String name, AirNode a, AirNode b) {
        requireNew(name, links.stream().anyMatch(l -> l.name().equals(name)));
        if (requireOwn(a).equals(requireOwn(b))) {
            throw new IllegalArgumentException("Both ends of " + name + " are " + a.name() + ".");
        }
        AirLink link = new AirLink(links.size(), name);
        links.add(link);
        return link;
    }

    private AirNode requireOwn(AirNode node) {
        if (node.index() >= nodeHandles.size() || !nodeHandles.get(node.index()).equals(node)) {
            throw new IllegalArgumentException(node.name() + " is not of this network.");
        }
        return node;
    }

    private void requireVolume(String what, AirNode node) {
        if (nodes.get(requireOwn(node).index()).kind() == NodeSpec.Kind.BOUNDARY) {
            throw new IllegalArgumentException(
                    what + " must lead to a volume, not to " + node.name() + ".");
        }
    }

    private static void requireNew(String name, boolean taken) {
        if (name.isBlank() || taken) {
            throw new IllegalArgumentException(
                    "The name '" + name + "' is blank or taken; names must be unique.");
        }
    }
}
