package org.fandown.air;

/**
 * A volume of an {@link AirNetwork}, as a handle into its states.
 *
 * @param index place in the network
 * @param name name, unique among the volumes
 */
public record AirNode(int index, String name) {}
