package org.fandown.rulebook;

import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.units.Dimension;

/**
 * What the figure at an edge has to be, and what of its own reading it may be a share of.
 *
 * @param dimension what it measures
 * @param hasBefore whether the reading has a pressure before the applications
 * @param hasRatedStroke whether it is read at a chamber with a rated stroke
 */
record BoundKind(Dimension dimension, boolean hasBefore, boolean hasRatedStroke) {

    /** A figure that stands by itself, such as that of a circumstance. */
    static BoundKind of(Dimension dimension) {
        return new BoundKind(dimension, false, false);
    }

    /** The limit of a check. */
    static BoundKind of(Check check) {
        Dimension dimension = check.dimension().orElse(Dimension.RATIO);
        boolean atChamber = check.kind() == CheckKind.WHEEL_VALUE && dimension == Dimension.LENGTH;
        return new BoundKind(dimension, check.kind() == CheckKind.RESERVE, atChamber);
    }

    /** Whether another check's reading can be the whole of the share. */
    boolean isShareOf(Check check) {
        return check.kind() == CheckKind.VALUE
                && check.dimension().filter(d -> d == dimension).isPresent();
    }

    /** Whether the share can be one of the reading's own. */
    boolean isShareOf(Bound.Own own) {
        return own == Bound.Own.BEFORE ? hasBefore : hasRatedStroke;
    }
}
