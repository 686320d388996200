package org.fandown.air;

import java.util.List;

/** The sources of a network as flat tables, for the inner loop. */
final class Inflows {
    final int count;
    final int[] node;

    /** Temperature of the air pumped in, K. */
    final double[] temperature;

    Inflows(List<AirNetwork.Inflow> specs) {
        count = specs.size();
        node = new int[count];
        temperature = new double[count];
        for (int s = 0; s < count; s++) {
            node[s] = specs.get(s).node();
            temperature[s] = specs.get(s).temperature();
        }
    }
}
