package org.fandown.procedure;

/** How much an order of work takes in. */
public enum Scope {
    /** What the rules in force ask for. */
    ASKED,
    /** Beside that every check a person can make on this vehicle. */
    THOROUGH
}
