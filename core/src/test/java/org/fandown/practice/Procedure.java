package org.fandown.practice;

/** One check as a person carries it out, tried on a vehicle. */
@FunctionalInterface
interface Procedure {
    Outcome of(Trial trial);
}
