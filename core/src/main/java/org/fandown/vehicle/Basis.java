package org.fandown.vehicle;

/** How well a number of the chamber table, or of a calculation on it, is founded. */
public enum Basis {
    /** The source was read. */
    PUBLISHED,
    /** Another text was read that reports the source. */
    PUBLISHED_SECONDHAND,
    /** Widely used without a source that could be named. */
    COMMON_PRACTICE,
    /** Remembered from the literature, not read. */
    FROM_MEMORY,
    /** Calculated from other numbers. */
    DERIVED,
    /** Chosen here so that something can be calculated at all. */
    ASSUMED
}
