package org.fandown.braking;

/** What is known of one wheel for the estimate. */
public enum WheelStatus {
    /** Its stroke was read. */
    READ,
    /** It has a push rod, but no stroke was read: the estimate is a range. */
    NOT_READ,
    /** It has no brake: its force is zero. */
    UNBRAKED,
    /** It has a brake of which no force can be estimated. */
    NOT_ESTIMABLE
}
