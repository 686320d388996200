package org.fandown.vehicle;

/** How a trailer carries its weight. */
public enum TrailerForm {
    /** Part of the weight rests on the unit in front. */
    SEMI,
    /** All of the weight rests on the trailer's own axles. */
    FULL
}
