package org.fandown.vehicle;

/** The form of the friction material, on which least-thickness rules depend. */
public enum Lining {
    /** One continuous strip on each shoe. */
    STRIP,
    /** Two pads on each shoe. */
    TWO_PAD,
    /** Pads of a disc brake. */
    PADS
}
