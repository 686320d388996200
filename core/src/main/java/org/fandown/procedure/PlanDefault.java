package org.fandown.procedure;

/**
 * A number the planner goes by where the vehicle file does not give it. All are assumptions of
 * ours; those of the air system are the same as the air engine's.
 */
public enum PlanDefault {
    /** Governor cut-out. */
    CUT_OUT("governor cut-out, where not given", 125, "psi"),
    /** Governor cut-in. */
    CUT_IN("governor cut-in, where not given", 102, "psi"),
    /** Compressor displacement. */
    DISPLACEMENT("compressor displacement, where not given", 20, "in3"),
    /** Turns of the compressor for one of the engine. */
    DRIVE_RATIO("compressor turns for one engine turn, where not given", 1, ""),
    /** Clearance of the compressor's cylinders. */
    CLEARANCE("compressor clearance ratio", 0.05, ""),
    /** Exponent with which the air left in the cylinder expands. */
    RE_EXPANSION("re-expansion exponent", 1.3, ""),
    /** Filling of the compressor's cylinders at no speed. */
    FILLING("filling at no speed", 0.988816, ""),
    /** Loss of filling with speed. */
    FILLING_LOSS("filling lost for each rpm", 7.34969e-5, "1/rpm"),
    /** Pressure of the air around. */
    AMBIENT("pressure of the air around", 14.7, "psi"),
    /** Reservoirs of a powered unit. */
    RESERVOIR_RATIO(
            "reservoirs of a powered unit over its service chambers, where not given", 14, ""),
    /** Reservoir of a towed unit. */
    TOWED_RATIO("reservoir of a towed unit over its service chambers, where not given", 8.2, ""),
    /** Lines of a towed unit. */
    TOWED_LINES("lines of a towed unit", 115, "in3"),
    /** Discharge line, dryer and short lines. */
    OTHER_VOLUME("discharge line, dryer and short lines", 250, "in3"),
    /** How far a push rod goes in a full application. */
    TRAVEL("travel of a push rod in a full application", 2, "in"),
    /** Area of an actuator that is not in the tables. */
    AREA("area of an actuator no table lists", 30, "in2"),
    /** Air of a spring-brake chamber. */
    SPRING_VOLUME("hold-off volume of a spring brake for each square inch", 1.5, "in"),
    /** Speed of the idling engine. */
    IDLE("idle speed", 700, "rpm"),
    /** Fast idle. */
    FAST_IDLE("fast idle", 1200, "rpm"),
    /** One full application when the pedal is pumped. */
    PUMP_CYCLE("one full application and its release", 3, "s"),
    /** Walking. */
    PACE("walking pace", 1.2, "m/s"),
    /** Climbing in or out of the cab. */
    CLIMB("climbing in or out of the cab", 6, "s"),
    /** From the front to the first axle. */
    FRONT("from the front to the first axle", 1.5, "m"),
    /** From one axle to the next. */
    AXLE_STEP("from one axle to the next", 1.4, "m"),
    /** From one group of axles to the next. */
    GROUP_STEP("from one group of axles or unit to the next", 4, "m"),
    /** Rest before a leak test. */
    SETTLING("rest after the pressure changed quickly", 120, "s");

    private final String label;
    private final double number;
    private final String unit;

    PlanDefault(String label, double number, String unit) {
        this.label = label;
        this.number = number;
        this.unit = unit;
    }

    /** Returns what it is, in words. */
    public String label() {
        return label;
    }

    /** Returns the number, in its {@link #unit}. */
    public double number() {
        return number;
    }

    /** Returns the unit, empty text if it has none. */
    public String unit() {
        return unit;
    }
}
