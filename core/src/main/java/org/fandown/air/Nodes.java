package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The volumes of a network as flat tables, for the inner loop. */
final class Nodes {
    final int count;
    final boolean[] boundary;

    /** Whether the gas has a temperature of its own. */
    final boolean[] thermal;

    /** Row in the table of chambers, or -1. */
    final int[] chamber;

    /** Constant volume, m3; 0 for a chamber. */
    final double[] volume;

    /** Gas constant over volume, of one that is constant. */
    private final double[] gasPerVolume;

    /** Time constant of heat from the wall, s; used for thermal ones alone. */
    final double[] wallSeconds;

    final ChamberTable chambers;
    final double wallTemperature;

    Nodes(List<NodeSpec> specs, Ambient ambient) {
        count = specs.size();
        boundary = new boolean[count];
        thermal = new boolean[count];
        chamber = new int[count];
        volume = new double[count];
        gasPerVolume = new double[count];
        wallSeconds = new double[count];
        List<ChamberLaw> laws = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            NodeSpec spec = specs.get(i);
            boundary[i] = spec.kind() == NodeSpec.Kind.BOUNDARY;
            thermal[i] = spec.kind() == NodeSpec.Kind.RESERVOIR;
            chamber[i] = spec.law().isPresent() ? laws.size() : -1;
            spec.law().ifPresent(laws::add);
            volume[i] = spec.volume();
            gasPerVolume[i] = spec.volume() > 0 ? Gas.R / spec.volume() : 0;
            wallSeconds[i] = spec.wallSeconds();
        }
        chambers = new ChamberTable(laws, ambient.pressure().pascals());
        wallTemperature = ambient.temperature().kelvins();
    }

    /** Returns those whose gas has a temperature of its own. */
    int[] thermalOnes() {
        return IntStream.range(0, count).filter(i -> thermal[i]).toArray();
    }

    /**
     * Returns the part of its difference from the wall that the gas of a reservoir loses in half a
     * step: half at its temperature at the start, half at that at the end.
     */
    double wall(int node, double step) {
        return Math.min(1, step / (2 * wallSeconds[node]));
    }

    double volume(int node, double pressure) {
        return chamber[node] < 0 ? volume[node] : chambers.volume(chamber[node], pressure);
    }

    double mass(int node, double pressure, double temperature) {
        return pressure * volume(node, pressure) / (Gas.R * temperature);
    }

    double pressure(int node, double mass, double temperature) {
        double warmth = mass * temperature;
        return chamber[node] < 0
                ? warmth * gasPerVolume[node]
                : chambers.pressure(chamber[node], Gas.R * warmth);
    }
}
