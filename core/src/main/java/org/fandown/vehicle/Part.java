package org.fandown.vehicle;

/**
 * Something a vehicle has, on which the reach of a rule can depend.
 *
 * <p>A part is present only if the vehicle file says so; an unknown part is not present.
 */
public enum Part {
    /** A truck stands in front. */
    TRUCK,
    /** A tractor stands in front. */
    TRACTOR,
    /** A bus stands in front. */
    BUS,
    /** At least one trailer. */
    TRAILER,
    /** At least one converter dolly. */
    DOLLY,
    /** At least one unit with air brakes up to the wheels. */
    AIR_BRAKES,
    /** At least one unit with air-over-hydraulic brakes. */
    AIR_OVER_HYDRAULIC,
    /** At least one towed unit with air brakes. */
    AIR_BRAKED_TRAILER,
    /** At least one spring brake. */
    SPRING_BRAKES,
    /** At least one spring brake on a towed unit. */
    TRAILER_SPRING_BRAKES,
    /** Anti-lock brakes on at least one unit. */
    ABS,
    /** An odometer. */
    ODOMETER,
    /** A supply (wet) reservoir. */
    SUPPLY_RESERVOIR,
    /** An integrated dryer unit in place of a supply reservoir. */
    INTEGRATED_DRYER_UNIT,
    /** At least one drum brake spread by a cam or cylinder. */
    DRUM_BRAKES,
    /** At least one disc brake. */
    DISC_BRAKES,
    /** At least one wedge brake. */
    WEDGE_BRAKES,
    /** At least one manual slack adjuster. */
    MANUAL_ADJUSTERS,
    /** At least one automatic slack adjuster. */
    AUTOMATIC_ADJUSTERS,
    /** At least one long-stroke chamber. */
    LONG_STROKE_CHAMBERS
}
