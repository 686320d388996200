package org.fandown.vehicle;

/** The foundation brake at one end of an axle. */
public enum BrakeKind {
    /** Shoes spread inside a drum by a cam (or, without air at the wheel, by a cylinder). */
    DRUM,
    /** Pads clamped on a disc. */
    DISC,
    /** Shoes spread inside a drum by a wedge. */
    WEDGE,
    /** No brake at this wheel. */
    NONE
}
