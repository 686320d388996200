package org.fandown.air;

import java.util.List;

/**
 * What a builder knows of one way of a link; a lapping valve has two, any other link one.
 *
 * @param kind kind
 * @param link place of its link
 * @param from volume at its first end
 * @param to volume at its second end
 * @param way restriction
 * @param crack opening pressure of a check or protection valve, Pa
 * @param offset deadband of an exhaust, absolute pressure at which a protection valve is shut, Pa
 * @param band band of a lapping or protection valve, Pa
 * @param pilots volumes whose pressure may command it
 */
record BranchSpec(
        Kind kind,
        int link,
        int from,
        int to,
        Restriction way,
        double crack,
        double offset,
        double band,
        List<Integer> pilots) {
    BranchSpec {
        pilots = List.copyOf(pilots);
    }

    enum Kind {
        /** Either direction. */
        PLAIN,
        /** From first to second, above an opening pressure. */
        CHECK,
        /** From first to second, the wider the higher the pressure before it. */
        PROTECTION,
        /** Supply to delivery of a lapping valve. */
        INLET,
        /** Delivery to atmosphere of a lapping valve. */
        EXHAUST
    }
}
