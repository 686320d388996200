package org.fandown.vehicle;

/** The family of a brake chamber, by how its two halves are held together. */
public enum Mount {
    /** Halves held by a clamp ring. */
    CLAMP,
    /** Halves held by bolts. */
    BOLT,
    /** Rolling-diaphragm chamber. */
    ROTOCHAMBER,
    /** Double-diaphragm chamber that parks by locking rollers instead of a spring. */
    DD3,
    /** An actuator that no table lists; only what its maker marked on it is known. */
    OTHER
}
