package org.fandown.browser;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirNetwork;
import org.fandown.air.AirNode;
import org.fandown.air.AirSystem;
import org.fandown.air.AirWay;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;

/**
 * What the inside view shows of an air system, as numbers: the pressure in every volume, what flows
 * through every way, and by what part each is open.
 */
final class InsideFrame {
    private static final double GRAMS = 1000;

    private final AirSystem air;
    private final List<AirNode> volumes = new ArrayList<>();
    private final List<AirWay> ways;

    InsideFrame(AirSystem air) {
        this.air = air;
        AirNetwork network = air.state().network();
        volumes.addAll(network.nodes().subList(1, network.nodes().size()));
        ways = network.ways();
    }

    int size() {
        return volumes.size() + 3 * ways.size();
    }

    void addNames(Tree.ListBuilder list) {
        for (AirNode volume : volumes) {
            list.add(Tree.map().put("name", "in " + volume.name()).put("unit", "psi"));
        }
        for (AirWay way : ways) {
            String name = way.link().name();
            list.add(Tree.map().put("name", "through " + name).put("unit", "g/s"));
            list.add(Tree.map().put("name", "out of " + name).put("unit", "g/s"));
            list.add(Tree.map().put("name", "open " + name).put("unit", ""));
        }
    }

    void write(double[] frame, int from) {
        int at = from;
        for (AirNode volume : volumes) {
            frame[at++] = air.state().gauge(volume).inPsi();
        }
        for (AirWay way : ways) {
            frame[at++] = GRAMS * air.state().flow(way.link());
            frame[at++] = GRAMS * air.state().exhaust(way.link());
            frame[at++] = air.state().opening(way.link());
        }
    }

    MapNode document() {
        AirNetwork network = air.state().network();
        Tree.ListBuilder vessels = Tree.list();
        for (AirNode volume : volumes) {
            String kind =
                    network.isReservoir(volume)
                            ? "reservoir"
                            : network.law(volume).isPresent() ? "chamber" : "line";
            vessels.add(
                    Tree.map()
                            .put("name", volume.name())
                            .put("kind", kind)
                            .put("pumped", network.isPumpedInto(volume)));
        }
        Tree.ListBuilder list = Tree.list();
        for (AirWay way : ways) {
            Tree.ListBuilder pilots = Tree.list();
            way.pilots().forEach(pilot -> pilots.add(pilot.name()));
            list.add(
                    Tree.map()
                            .put("name", way.link().name())
                            .put("from", way.from().name())
                            .put("to", way.to().name())
                            .put("kind", Names.kebab(way.kind()))
                            .put("pilots", pilots));
        }
        return Tree.map().put("vessels", vessels).put("ways", list).build();
    }
}
