package org.fandown.practice;

import org.fandown.units.Decimals;
import org.fandown.vehicle.Basis;

/**
 * A number of the practice truck that is not of its air system: engine, gears, road, ear and rule.
 * The table in {@code docs/model.md} is made from this list.
 */
public enum PracticeDefault {
    /** Speed of the idling engine. */
    IDLE("idle speed", 700, "rpm", Basis.ASSUMED, "within the 600 to 900 rpm of handbooks"),
    /** Highest speed of the engine. */
    GOVERNED("governed speed", 2200, "rpm", Basis.ASSUMED, ""),
    /** Speed below which the engine stalls. */
    STALL("the engine stalls below", 350, "rpm", Basis.ASSUMED, ""),
    /** Speed at which the starter turns the engine. */
    CRANK("the starter turns the engine at", 200, "rpm", Basis.ASSUMED, ""),
    /** Time the starter needs. */
    CRANK_TIME("the engine starts after", 1, "s", Basis.ASSUMED, ""),
    /** Inertia of engine and flywheel. */
    INERTIA("inertia of the engine", 3, "kg m2", Basis.ASSUMED, ""),
    /** Most torque of the engine. */
    TORQUE("greatest torque of the engine", 1500, "N m", Basis.ASSUMED, ""),
    /** Torque for each rpm below the speed the pedal asks for. */
    GOVERNOR_GAIN("torque for each rpm below the speed asked for", 6, "N m/rpm", Basis.ASSUMED, ""),
    /** Torque that turns the engine against compression. */
    DRAG("torque that drags the engine", 250, "N m", Basis.ASSUMED, ""),
    /** Most torque the clutch passes. */
    CLUTCH_TORQUE("greatest torque of the clutch", 1800, "N m", Basis.ASSUMED, ""),
    /** Torque the clutch or converter passes for each rpm of slip. */
    SLIP("torque for each rpm of slip", 10, "N m/rpm", Basis.ASSUMED, ""),
    /** Torque a converter passes at idle in gear. */
    CREEP("greatest torque of a converter at idle", 350, "N m", Basis.ASSUMED, ""),
    /** Engine turns for one of the wheels in low or reverse gear. */
    LOW_RATIO("engine turns for one of the wheels in low gear", 50, "", Basis.ASSUMED, ""),
    /** Rolling radius of the tyres. */
    TYRE_RADIUS("rolling radius of a tyre", 0.5, "m", Basis.FROM_MEMORY, "19.5 to 20.5 in"),
    /** Rolling resistance. */
    ROLLING("rolling resistance, part of the weight", 0.007, "", Basis.ASSUMED, ""),
    /** Friction of tyre on road. */
    ROAD_FRICTION("friction of tyre on road", 0.7, "", Basis.ASSUMED, "hard, dry road"),
    /** What a chocked wheel holds. */
    CHOCK("a chocked wheel holds, part of the load on it", 0.6, "", Basis.ASSUMED, ""),
    /** Load on an axle that the vehicle file does not tell. */
    AXLE_LOAD("load on an axle, where not given", 5000, "kg", Basis.ASSUMED, ""),
    /** What brakes without air chambers hold. */
    HYDRAULIC("hydraulic brakes hold at 100 psi, part of the weight", 0.6, "", Basis.ASSUMED, ""),
    /** What a parking brake without air holds. */
    MECHANICAL_PARKING(
            "a parking brake without air holds, part of the weight", 0.25, "", Basis.ASSUMED, ""),
    /** How long a hand stays at a knob. */
    KNOB_TIME("a hand stays at a knob for", 0.5, "s", Basis.ASSUMED, ""),
    /** How long the ABS lamp checks itself. */
    ABS_TIME("the ABS lamp goes out after", 3, "s", Basis.ASSUMED, ""),
    /** Air flow that is heard beside it. */
    HEARD("a hiss is heard beside it from", 2, "L/min", Basis.ASSUMED, "free air"),
    /** How much less is heard elsewhere on the same unit. */
    UNIT_DISTANCE("elsewhere at the same unit a hiss counts as", 0.1, "", Basis.ASSUMED, ""),
    /** How much less is heard at another unit. */
    FAR_DISTANCE("at another unit, and from outside in the cab, as", 0.01, "", Basis.ASSUMED, ""),
    /** How much less is heard beside a running engine. */
    ENGINE_NOISE("with the engine running, times", 0.1, "", Basis.ASSUMED, ""),
    /** Fineness of a rule. */
    RULE_STEP("a rule is read to", 0.0625, "in", Basis.COMMON_PRACTICE, ""),
    /** Error of a person with a rule. */
    RULE_ERROR("a rule is held wrong by up to", 0.03125, "in", Basis.ASSUMED, "");

    private final String label;
    private final double number;
    private final String unit;
    private final Basis basis;
    private final String source;

    PracticeDefault(String label, double number, String unit, Basis basis, String source) {
        this.label = label;
        this.number = number;
        this.unit = unit;
        this.basis = basis;
        this.source = source;
    }

    /** Returns what it is, in words. */
    public String label() {
        return label;
    }

    /** Returns the number, in its unit. */
    public double number() {
        return number;
    }

    /** Returns the number with its unit. */
    public String value() {
        String text = Decimals.formatShort(number, 6);
        return unit.isEmpty() ? text : text + " " + unit;
    }

    /** Returns how well it is founded. */
    public Basis basis() {
        return basis;
    }

    /** Returns what it rests on, empty text if on nothing but our choice. */
    public String source() {
        return source;
    }
}
