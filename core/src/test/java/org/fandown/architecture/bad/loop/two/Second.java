package org.fandown.architecture.bad.loop.two;

import java.util.List;
import org.fandown.architecture.bad.loop.one.First;

/** The other half of a cycle. */
public record Second(List<First> next) {}
