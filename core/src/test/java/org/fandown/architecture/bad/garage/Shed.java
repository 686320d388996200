package org.fandown.architecture.bad.garage;

/** Breaks the table: a package that nobody planned, and without package-info. */
public record Shed(int doors) {}
