package org.fandown.architecture.bad.rulebook;

/** A law that physics must not know. */
public record Limit(int psi) {}
