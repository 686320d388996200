package org.fandown.check;

/**
 * What sort of observation establishes a {@link Check}; decides the shape of a reading and of a
 * limit.
 */
public enum CheckKind {
    /** A single quantity read off a gauge, a clock, a rule or a tester. */
    VALUE,
    /** The time in which pressure climbs from one figure to another. */
    BUILD_UP,
    /** Pressure lost over a stretch of time with no air being added. */
    AIR_LOSS,
    /** Pressure left after brake applications, beside the pressure before them. */
    RESERVE,
    /** A length or angle measured at one wheel. */
    WHEEL_VALUE,
    /** Something that is or is not so at one wheel. */
    WHEEL_YES_NO,
    /** How many of the vehicle's brakes are beyond their limit. */
    BRAKE_COUNT,
    /** Two ends of an axle compared, from the vehicle file. */
    AXLE_MATCH,
    /** A ratio that follows from the vehicle file alone. */
    DESIGN,
    /** Something that is or is not so; every such check is worded so that yes is good. */
    YES_NO,
    /** A list of parts that have to be looked at. */
    WALK_ROUND,
    /** A condition found on a part. */
    COMPONENT,
    /** What the written report has to hold. */
    REPORT,
    /** A duty of a person or a firm; listed, never judged from readings. */
    DUTY
}
