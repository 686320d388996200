package org.fandown.air;

/**
 * What a builder knows of one way of a link; a lapping valve has two, any other link one.
 *
 * @param kind kind
 * @param link place of its link
 * @param from volume at its first end
 * @param to volume at its second end
 * @param way restriction
 * @param offset opening pressure of a check valve, deadband of an exhaust, Pa
 * @param band band of a lapping valve, Pa
 */
record BranchSpec(
        Kind kind, int link, int from, int to, Restriction way, double offset, double band) {
    enum Kind {
        /** Either direction. */
        PLAIN,
        /** From first to second, above an opening pressure. */
        CHECK,
        /** Supply to delivery of a lapping valve. */
        INLET,
        /** Delivery to atmosphere of a lapping valve. */
        EXHAUST
    }
}
