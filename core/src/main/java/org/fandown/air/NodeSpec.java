package org.fandown.air;

import java.util.Optional;

/**
 * What a builder knows of a volume.
 *
 * @param name name
 * @param kind kind
 * @param volume volume of a rigid one, m3
 * @param law law of a chamber
 * @param wallSeconds time constant of the wall, 0 for a volume at constant temperature
 * @param pressure pressure at first, Pa absolute
 * @param temperature temperature at first, K
 */
record NodeSpec(
        String name,
        Kind kind,
        double volume,
        Optional<ChamberLaw> law,
        double wallSeconds,
        double pressure,
        double temperature) {
    enum Kind {
        /** Constant volume and temperature. */
        RIGID,
        /** Constant volume, with a temperature of its own. */
        RESERVOIR,
        /** Volume by pressure, constant temperature. */
        CHAMBER,
        /** Constant pressure and temperature. */
        BOUNDARY
    }

    NodeSpec withLaw(ChamberLaw other) {
        return new NodeSpec(
                name, kind, volume, Optional.of(other), wallSeconds, pressure, temperature);
    }
}
