package org.fandown.plot;

/** What a line or a text is for. A page chooses a colour for each, by day and by night. */
public enum Ink {
    /** Titles and texts. */
    TEXT,
    /** Texts of less weight: axes, times. */
    FAINT,
    /** Lines of the grid. */
    GRID,
    /** The first curve. */
    FIRST,
    /** The second curve. */
    SECOND,
    /** A third curve. */
    THIRD,
    /** The time in which something was done, behind the curves. */
    BAND,
    /** Marks of what a person did, and their leaders. */
    MARK,
    /** What endangers somebody. */
    HAZARD
}
