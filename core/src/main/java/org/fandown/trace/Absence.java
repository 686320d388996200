package org.fandown.trace;

/** Why a signal that a message has room for has no value. */
public enum Absence {
    /** The sender does not have it. */
    NOT_AVAILABLE,
    /** The sender says that its sensor or itself is at fault. */
    ERROR,
    /** A code that the standard keeps for other uses. */
    RESERVED,
    /** The message ends before it. */
    TOO_SHORT
}
