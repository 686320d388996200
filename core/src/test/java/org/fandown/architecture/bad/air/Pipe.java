package org.fandown.architecture.bad.air;

import org.fandown.architecture.bad.rulebook.Limit;

/** Breaks the table: physics that bends to law. */
public record Pipe(Limit limit) {}
