package org.fandown.judgement;

import java.util.Optional;

/**
 * The limit a value was compared with, worked out in the unit of the reading.
 *
 * @param lower the lower edge, empty if there is none
 * @param upper the upper edge, empty if there is none
 */
public record Allowed(Optional<Edge> lower, Optional<Edge> upper) {}
