package org.fandown.vehicle;

/** How the running clearance of a brake is kept. */
public enum Adjuster {
    /** A slack adjuster turned by hand. */
    MANUAL,
    /** An automatic slack adjuster. */
    AUTOMATIC,
    /** An adjuster inside the brake itself, as in disc and wedge brakes. */
    INTERNAL,
    /** None. */
    NONE
}
