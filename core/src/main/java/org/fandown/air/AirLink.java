package org.fandown.air;

/**
 * A way for air between two volumes of an {@link AirNetwork}, as a handle into its states.
 *
 * @param index place in the network
 * @param name name, unique among the links
 */
public record AirLink(int index, String name) {}
