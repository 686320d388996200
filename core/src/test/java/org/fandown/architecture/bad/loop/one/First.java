package org.fandown.architecture.bad.loop.one;

import org.fandown.architecture.bad.loop.two.Second;

/** Half of a cycle. */
public record First(Second next) {}
