package org.fandown.braking;

/** Something a reader of a stroke should know. */
public enum StrokeNote {
    /** The stroke is used up at the estimated application: no force reaches the brake. */
    BOTTOMED,
    /** The stroke as read is longer than the chamber's full stroke: misread, or another chamber. */
    LONGER_THAN_CHAMBER,
    /** The stroke as read is so short that the brake may be seized, dragging or misread. */
    SUSPICIOUSLY_SHORT
}
