package org.fandown.vehicle;

/** What the vehicle is used for; many limits differ between the two. */
public enum Use {
    /** Carries goods, or nothing. */
    PROPERTY,
    /** Carries passengers. */
    PASSENGER
}
