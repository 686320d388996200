package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The volumes of an air system and the ways between them: what does not change while time passes.
 *
 * <p>Made by {@link #builder}; what changes stands in an {@link AirState}. Immutable.
 */
public final class AirNetwork {
    final Nodes nodes;
    final Branches branches;
    final EliminationPlan plan;
    final Inflows inflowTable;
    final List<Inflow> inflows;
    final List<Remembered> memories;
    private final int[][] pilots;
    private final Ambient ambient;
    private final List<NodeSpec> nodeSpecs;
    private final List<BranchSpec> branchSpecs;
    private final List<AirNode> nodeHandles;
    private final List<AirLink> links;

    /** Air pumped in: where to, and its temperature in K. */
    record Inflow(AirSource source, int node, double temperature) {}

    /** A number remembered, and its value at first. */
    record Remembered(AirMemory memory, double initial) {}

    AirNetwork(
            Ambient ambient,
            List<NodeSpec> nodeSpecs,
            List<AirNode> nodeHandles,
            List<AirLink> links,
            List<BranchSpec> branchSpecs,
            List<Inflow> inflows,
            List<Remembered> memories) {
        this.ambient = ambient;
        this.nodeSpecs = List.copyOf(nodeSpecs);
        this.nodeHandles = List.copyOf(nodeHandles);
        this.links = List.copyOf(links);
        this.branchSpecs = List.copyOf(branchSpecs);
        this.inflows = List.copyOf(inflows);
        this.memories = List.copyOf(memories);
        this.nodes = new Nodes(nodeSpecs, ambient);
        this.branches = new Branches(branchSpecs);
        this.inflowTable = new Inflows(inflows);
        this.plan = EliminationPlan.of(nodes, branches);
        pilots = new int[links.size()][];
        for (int e = 0; e < branches.count; e++) {
            pilots[branches.link[e]] = branches.pilots[e];
        }
    }

    /**
     * Begins a network.
     *
     * @param ambient the air around
     * @return a builder that holds the atmosphere alone
     */
    public static AirNetworkBuilder builder(Ambient ambient) {
        return new AirNetworkBuilder(ambient);
    }

    /** Returns the air around. */
    public Ambient ambient() {
        return ambient;
    }

    /** Returns all volumes, the atmosphere first. */
    public List<AirNode> nodes() {
        return nodeHandles;
    }

    /** Returns all links. */
    public List<AirLink> links() {
        return links;
    }

    /** Returns the volume of a name. */
    public Optional<AirNode> node(String name) {
        return nodeHandles.stream().filter(n -> n.name().equals(name)).findFirst();
    }

    /** Returns the link of a name. */
    public Optional<AirLink> link(String name) {
        return links.stream().filter(l -> l.name().equals(name)).findFirst();
    }

    /** Returns how each link lies, in the order of the links. */
    public List<AirWay> ways() {
        List<AirWay> ways = new ArrayList<>();
        for (BranchSpec spec : branchSpecs) {
            if (spec.kind() != BranchSpec.Kind.EXHAUST) {
                AirWay.Kind kind =
                        switch (spec.kind()) {
                            case CHECK -> AirWay.Kind.CHECK;
                            case PROTECTION -> AirWay.Kind.PROTECTION;
                            case INLET -> AirWay.Kind.LAPPING;
                            default -> AirWay.Kind.PLAIN;
                        };
                ways.add(
                        new AirWay(
                                links.get(spec.link()),
                                nodeHandles.get(spec.from()),
                                nodeHandles.get(spec.to()),
                                kind,
                                spec.pilots().stream().map(nodeHandles::get).toList()));
            }
        }
        return ways;
    }

    /** Returns whether air is pumped into a volume from outside. */
    public boolean isPumpedInto(AirNode node) {
        return inflows.stream().anyMatch(inflow -> inflow.node() == node.index());
    }

    /** Returns whether a volume is a reservoir. */
    public boolean isReservoir(AirNode node) {
        return nodeSpecs.get(node.index()).kind() == NodeSpec.Kind.RESERVOIR;
    }

    /** Returns the law of a chamber, empty for another volume. */
    public Optional<ChamberLaw> law(AirNode node) {
        return nodeSpecs.get(node.index()).law();
    }

    /**
     * Returns the same network with another law for one chamber, as when a brake was adjusted or
     * its drum grew hot. The handles stay the same; {@link AirState#movedTo} carries a state over.
     *
     * @param chamber the chamber
     * @param law its new law
     * @return the other network
     * @throws IllegalArgumentException if the volume is not a chamber
     */
    public AirNetwork withLaw(AirNode chamber, ChamberLaw law) {
        NodeSpec old = nodeSpecs.get(chamber.index());
        if (old.law().isEmpty()) {
            throw new IllegalArgumentException(chamber.name() + " is not a chamber.");
        }
        List<NodeSpec> specs = new ArrayList<>(nodeSpecs);
        specs.set(chamber.index(), old.withLaw(law));
        return new AirNetwork(ambient, specs, nodeHandles, links, branchSpecs, inflows, memories);
    }

    /** Returns a state at time 0 in which all is at rest: links open, commands and inflows zero. */
    public AirState stateAtRest() {
        return new AirState(this);
    }

    boolean follows(AirLink link, AirNode pilot) {
        for (int known : pilots[link.index()]) {
            if (known == pilot.index()) {
                return true;
            }
        }
        return false;
    }

    double initialPressure(int node) {
        return nodeSpecs.get(node).pressure();
    }

    double initialTemperature(int node) {
        return nodeSpecs.get(node).temperature();
    }

    boolean sharesHandlesWith(AirNetwork other) {
        return nodeHandles.equals(other.nodeHandles) && links.equals(other.links);
    }
}
