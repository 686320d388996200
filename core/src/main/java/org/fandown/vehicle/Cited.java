package org.fandown.vehicle;

/**
 * A value with what it rests on.
 *
 * @param value the value
 * @param basis how well it is founded
 * @param source the work and the place in it, or what the value was derived from
 * @param <T> the type of the value
 */
public record Cited<T>(T value, Basis basis, String source) {}
