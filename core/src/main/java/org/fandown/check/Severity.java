package org.fandown.check;

/** How bad it is when a rule is not met. */
public enum Severity {
    /** Reported and repaired in the time the place allows; the vehicle may move. */
    MINOR,
    /** The vehicle may not move until it is repaired. */
    MAJOR
}
