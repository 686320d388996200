package org.fandown.air;

/**
 * A number that a valve or switch remembers, kept in the states of an {@link AirNetwork} so that a
 * copy of a state is a copy of the whole system.
 *
 * @param index place in the network
 * @param name name, unique among the memories
 */
public record AirMemory(int index, String name) {}
