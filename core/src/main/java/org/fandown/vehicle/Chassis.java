package org.fandown.vehicle;

/** The chassis a passenger vehicle is built on; one United States rule depends on it. */
public enum Chassis {
    /** A passenger-car chassis. */
    CAR,
    /** A truck or bus chassis. */
    TRUCK
}
