package org.fandown.air;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fandown.air.AirOutlet.Kind;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.TimeSpan;
import org.fandown.units.Volume;

/** Collects the volumes, links and elements of one air system, with what its setup says of them. */
final class Plumbing {
    /** Critical pressure ratio of valves and fittings: between 0.2 and 0.5. */
    private static final double RATIO = 0.35;

    private static final double SQUARE_MILLIMETRE = 1e-6;
    private static final double LEAK_AT = GaugePressure.ofPsi(100).pascals();

    final AirSetup setup;
    final AirNetworkBuilder network;
    final double ambient;
    final List<Element> elements = new ArrayList<>();
    final List<AirOutlet.Spec> outlets = new ArrayList<>();
    private final Set<String> reservoirs = new TreeSet<>();
    private final Set<String> fittings = new TreeSet<>();
    private final Map<String, AirNode> nodes = new LinkedHashMap<>();
    private final Map<String, AirLink> links = new LinkedHashMap<>();

    Plumbing(Ambient air, AirSetup setup) {
        this.setup = setup;
        network = AirNetwork.builder(air);
        ambient = air.pressure().pascals();
    }

    /** Returns the absolute pressure in pascals of a setting in psi. */
    double absolute(AirDefault what) {
        return ambient + pascals(what);
    }

    double pascals(AirDefault what) {
        return GaugePressure.ofPsi(setup.value(what)).pascals();
    }

    Optional<AirNode> node(String name) {
        return Optional.ofNullable(nodes.get(name));
    }

    AirNode line(String name, AirDefault volume) {
        return rigid(name, setup.value(volume));
    }

    AirNode rigid(String name, double cubicInches) {
        return keep(network.addRigid(name, Volume.ofCubicInches(cubicInches)));
    }

    /** Adds a reservoir with its drain and the seep of its fittings. */
    AirNode reservoir(String name, double cubicInches) {
        double dry = cubicInches * (1 - setup.water().getOrDefault(name, 0.0));
        Volume volume = Volume.ofCubicInches(dry);
        TimeSpan wall = TimeSpan.ofSeconds(setup.value(AirDefault.WALL_TIME));
        AirNode node = keep(network.addReservoir(name, volume, wall));
        reservoirs.add(name);
        seep(node, volume);
        AirLink drain = outlet(Kind.DRAIN, "drain-" + name, node, AirDefault.DRAIN_HOLE);
        elements.add((s, c, h) -> s.setOpening(drain, c.drains().contains(name) ? 1 : 0));
        return node;
    }

    private void seep(AirNode node, Volume volume) {
        double perSecond = GaugePressure.ofPsi(setup.value(AirDefault.SOUND_LEAK)).pascals() / 60;
        double flow = volume.cubicMetres() * perSecond / (Gas.R * Gas.REFERENCE_TEMPERATURE);
        double high = AbsolutePressure.STANDARD_ATMOSPHERE.pascals() + LEAK_AT;
        double conductance = flow / (Gas.REFERENCE_DENSITY * high);
        if (conductance > 0) {
            outlet(Kind.SEEP, "seep-" + node.name(), node, new Restriction(conductance, RATIO));
        }
    }

    AirNode chamber(String name, ChamberLaw law) {
        return keep(network.addChamber(name, law));
    }

    /** Adds a way of the size of a default; elements may open and shut it. */
    AirLink way(String name, AirNode a, AirNode b, AirDefault area) {
        return orifice(name, a, b, restriction(name, setup.value(area)));
    }

    /** Adds a way to the outside; elements may open and shut it. */
    AirLink outlet(Kind kind, String name, AirNode from, AirDefault area) {
        return outlet(kind, name, from, restriction(name, setup.value(area)));
    }

    private AirLink outlet(Kind kind, String name, AirNode from, Restriction way) {
        AirLink link = orifice(name, from, network.atmosphere(), way);
        outlets.add(new AirOutlet.Spec(kind, name, from, link, false));
        return link;
    }

    AirLink check(String name, AirNode a, AirNode b, AirDefault area) {
        return check(name, a, b, area, pascals(AirDefault.CHECK_CRACK));
    }

    /** Adds a check valve of an opening pressure in pascals. */
    AirLink check(String name, AirNode a, AirNode b, AirDefault area, double crack) {
        Restriction way = restriction(name, setup.value(area));
        return keep(network.check(name, a, b, way, new GaugePressure(crack)));
    }

    /** Adds a check valve that is shut at a pressure before it and wide open at a higher one. */
    AirLink protection(String name, AirNode a, AirNode b, double shutPsi, double openPsi) {
        ProtectionValve valve =
                new ProtectionValve(
                        restriction(name, setup.value(AirDefault.FEED_WAY)),
                        GaugePressure.ofPsi(setup.value(AirDefault.CHECK_CRACK)),
                        GaugePressure.ofPsi(shutPsi),
                        GaugePressure.ofPsi(openPsi - shutPsi));
        double shut = valve.shut().pascals() + ambient;
        elements.add((s, c, h) -> s.foresee(a, shut));
        return keep(network.protection(name, a, b, valve));
    }

    AirLink lapping(
            String name,
            AirNode from,
            AirNode to,
            AirDefault inlet,
            AirDefault exhaust,
            AirNode... pilots) {
        LappingValve valve =
                new LappingValve(
                        restriction(name, setup.value(inlet)),
                        restriction(name, setup.value(exhaust)),
                        GaugePressure.ofPsi(setup.value(AirDefault.LAP_BAND)),
                        GaugePressure.ofPsi(setup.value(AirDefault.LAP_DEADBAND)));
        AirLink link = keep(network.lapping(name, from, to, valve, pilots));
        outlets.add(new AirOutlet.Spec(Kind.EXHAUST, name + "-exhaust", to, link, true));
        return link;
    }

    /** Says that the vehicle has something that is neither a volume nor a way for air. */
    void fitted(String what) {
        fittings.add(what);
    }

    /** Adds leaks, holes between circuits and stuck parts, after everything else. */
    void addFaults() {
        setup.leaks().forEach(this::leak);
        setup.bridges()
                .forEach(
                        (bridge, area) ->
                                hole(
                                        "bridge-" + bridge.from() + "-" + bridge.to(),
                                        require(bridge.from()),
                                        require(bridge.to()),
                                        area));
        setup.restrictions().keySet().forEach(this::requireLink);
        setup.water().keySet().forEach(this::requireReservoir);
        setup.needs().forEach(this::requirePart);
        setup.jams()
                .forEach(
                        (name, opening) -> {
                            AirLink link = requireLink(name);
                            elements.add((s, c, h) -> s.setOpening(link, opening));
                        });
    }

    private void leak(String volume, double area) {
        AirNode from = require(volume);
        if (area > 0) {
            String name = "leak-" + volume;
            outlet(Kind.LEAK, name, from, restriction(name, area));
        }
    }

    private void hole(String name, AirNode a, AirNode b, double area) {
        if (area > 0) {
            orifice(name, a, b, restriction(name, area));
        }
    }

    private AirLink orifice(String name, AirNode a, AirNode b, Restriction way) {
        return keep(network.orifice(name, a, b, way));
    }

    private Restriction restriction(String name, double squareMillimetres) {
        double left = setup.restrictions().getOrDefault(name, 1.0);
        return Restriction.ofNozzle(left * squareMillimetres * SQUARE_MILLIMETRE, RATIO);
    }

    private AirNode require(String name) {
        return node(name).orElseThrow(() -> unknown("volume", name, nodes.keySet().toString()));
    }

    private void requireReservoir(String name) {
        if (!reservoirs.contains(name)) {
            throw unknown("reservoir", name, reservoirs.toString());
        }
    }

    private void requirePart(String name) {
        if (!nodes.containsKey(name) && !links.containsKey(name) && !fittings.contains(name)) {
            Set<String> known = new TreeSet<>(fittings);
            known.addAll(nodes.keySet());
            known.addAll(links.keySet());
            throw unknown("part", name, known.toString());
        }
    }

    private AirLink requireLink(String name) {
        AirLink link = links.get(name);
        if (link == null) {
            throw unknown("part", name, links.keySet().toString());
        }
        return link;
    }

    private static IllegalArgumentException unknown(String what, String name, String known) {
        return new IllegalArgumentException(
                "This vehicle has no " + what + " '" + name + "'; it has " + known + ".");
    }

    private AirNode keep(AirNode node) {
        nodes.put(node.name(), node);
        return node;
    }

    private AirLink keep(AirLink link) {
        links.put(link.name(), link);
        return link;
    }
}
