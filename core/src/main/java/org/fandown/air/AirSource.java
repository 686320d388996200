package org.fandown.air;

/**
 * A place where air is pumped into an {@link AirNetwork}, as a handle into its states.
 *
 * @param index place in the network
 * @param name name, unique among the sources
 */
public record AirSource(int index, String name) {}
