package org.fandown.air;

import org.fandown.units.Decimals;
import org.fandown.vehicle.Basis;

/**
 * A size or setting of an air system, with the value it has where neither the vehicle file nor an
 * {@link AirSetup} says otherwise.
 *
 * <p>{@link Basis#ASSUMED} marks what was chosen here so that the model can run at all. The table
 * in {@code docs/model.md} is made from this list.
 */
public enum AirDefault {
    /** Pressure at which the governor stops the pumping. */
    CUT_OUT("governor cut-out", 125, "psi", Basis.PUBLISHED_SECONDHAND, "driver manuals"),
    /** Pressure at which pumping starts again. */
    CUT_IN(
            "governor cut-in",
            102,
            "psi",
            Basis.ASSUMED,
            "a little above the least for trucks, 49 CFR 571.121 S5.1.1.1: 100 psi"),
    /** How long the governor waits beyond its settings. */
    GOVERNOR_LAG("the governor acts late by", 0, "s", Basis.ASSUMED, ""),
    /** Volume swept by the compressor in one turn. */
    DISPLACEMENT(
            "compressor displacement",
            20,
            "in3",
            Basis.FROM_MEMORY,
            "12 to 16 cfm with one cylinder, 18.7 to 31.6 cfm with two, at 1250 rpm; 20 in3 gives 14.5"),
    /** Turns of the compressor for one of the engine. */
    DRIVE_RATIO("compressor turns for one engine turn", 1, "", Basis.FROM_MEMORY, "0.5 to 1.3"),
    /** Part of the engine's speed that reaches the compressor. */
    DRIVE_GRIP("part of the drive's speed that reaches the compressor", 1, "", Basis.ASSUMED, ""),
    /** Clearance of the compressor's cylinders. */
    CLEARANCE("compressor clearance ratio", 0.05, "", Basis.DERIVED, "fit to a service data sheet"),
    /** Exponent with which the air left in the cylinder expands. */
    RE_EXPANSION("re-expansion exponent", 1.3, "", Basis.DERIVED, "fit to a service data sheet"),
    /** Efficiency of the compressor at no speed. */
    FILLING("filling at no speed", 0.988816, "", Basis.DERIVED, "fit to a service data sheet"),
    /** Loss of efficiency with speed. */
    FILLING_LOSS(
            "filling lost for each rpm",
            7.34969e-5,
            "1/rpm",
            Basis.DERIVED,
            "fit to a service data sheet"),
    /** Part of its air the compressor still delivers. */
    COMPRESSOR_HEALTH("part of the compressor's air that is delivered", 1, "", Basis.ASSUMED, ""),
    /** Volume of discharge line and dryer. */
    DRYER_VOLUME("volume of discharge line and dryer sump", 120, "in3", Basis.ASSUMED, ""),
    /** Volume that is kept to dry the dryer. */
    PURGE_VOLUME("purge volume", 200, "in3", Basis.FROM_MEMORY, "100 to 550 in3"),
    /** Hole between purge volume and dryer. */
    PURGE_HOLE("effective area of the purge orifice", 2.5, "mm2", Basis.ASSUMED, ""),
    /** Way through the open purge valve. */
    PURGE_VALVE("effective area of the purge valve", 40, "mm2", Basis.ASSUMED, ""),
    /** Way through the dryer and each reservoir's feed. */
    FEED_WAY("effective area of dryer and reservoir feeds", 40, "mm2", Basis.ASSUMED, ""),
    /** Opening pressure of a one-way check valve. */
    CHECK_CRACK(
            "opening pressure of a one-way check valve",
            0.5,
            "psi",
            Basis.FROM_MEMORY,
            "0.5 to 2 psi"),
    /** Reservoirs of a powered unit over its service chambers. */
    RESERVOIR_RATIO(
            "reservoirs of a powered unit over its service chambers, where not given",
            14,
            "",
            Basis.ASSUMED,
            "above the least of 49 CFR 571.121 S5.1.2.1: 12"),
    /** Reservoir of a towed unit over its service chambers. */
    TOWED_RATIO(
            "reservoir of a towed unit over its service chambers, where not given",
            8.2,
            "",
            Basis.ASSUMED,
            "above the least of 49 CFR 571.121 S5.2.1.1: 8"),
    /** Volume of a gallery that stands in for a supply reservoir. */
    GALLERY("gallery of an integrated dryer unit", 60, "in3", Basis.ASSUMED, ""),
    /** Time constant of heat between the air in a reservoir and its wall. */
    WALL_TIME(
            "time constant of a reservoir's wall",
            20,
            "s",
            Basis.DERIVED,
            "30 L of steel at 120 psi with 20 W/(m2 K), the upper end of 5 to 20"),
    /** Leak of a sound reservoir and its fittings. */
    SOUND_LEAK("leak of each sound reservoir at 100 psi", 0.3, "psi/min", Basis.ASSUMED, ""),
    /** Pedal travel before the foot valve delivers. */
    FOOT_FREE("free part of the pedal travel", 0.08, "", Basis.ASSUMED, ""),
    /** Pressure the foot valve jumps to when it opens. */
    FOOT_CRACK("least pressure the foot valve delivers", 4, "psi", Basis.FROM_MEMORY, "3 to 5 psi"),
    /** Pressure the foot valve is set to at full travel. */
    FOOT_FULL(
            "pressure at full pedal travel, by the line of travel", 130, "psi", Basis.ASSUMED, ""),
    /** How far the secondary side of the foot valve stays behind. */
    FOOT_LAG("secondary delivery below primary", 1.5, "psi", Basis.FROM_MEMORY, "1 to 3 psi"),
    /** Way through the foot valve. */
    FOOT_WAY("effective area of the foot valve, each side", 40, "mm2", Basis.ASSUMED, ""),
    /** Way through the foot valve's exhaust. */
    FOOT_EXHAUST("effective area of the foot valve's exhausts", 80, "mm2", Basis.ASSUMED, ""),
    /** Way through a relay valve's inlet. */
    RELAY_INLET("effective area of a relay valve's inlet", 50, "mm2", Basis.ASSUMED, ""),
    /** Way through a relay valve's exhaust. */
    RELAY_EXHAUST("effective area of a relay valve's exhaust", 120, "mm2", Basis.ASSUMED, ""),
    /** Pressure a relay valve delivers less than it is told. */
    RELAY_CRACK("relay valve delivery below control", 3, "psi", Basis.FROM_MEMORY, "2 to 6 psi"),
    /** Way through a hose to a chamber. */
    HOSE_WAY("effective area of a hose to a chamber", 30, "mm2", Basis.ASSUMED, ""),
    /** Way through a line between units. */
    LINE_WAY("effective area of the lines of a unit", 26, "mm2", Basis.ASSUMED, ""),
    /** Volume of a control line of a towed unit. */
    CONTROL_LINE(
            "volume of the control line of a towed unit",
            50,
            "in3",
            Basis.DERIVED,
            "12 m of 9.5 mm bore"),
    /** Volume of a supply line of a towed unit. */
    SUPPLY_LINE(
            "volume of the supply line of a towed unit",
            65,
            "in3",
            Basis.DERIVED,
            "15 m of 9.5 mm bore"),
    /** Volume of the lines of a powered unit to its coupling. */
    TRACTOR_LINE("volume of each line to the coupling in front", 25, "in3", Basis.ASSUMED, ""),
    /** Volume of other short lines. */
    SHORT_LINE("volume of a valve with its short lines", 12, "in3", Basis.ASSUMED, ""),
    /** Band in which a valve laps. */
    LAP_BAND("band over which a valve opens fully", 2, "psi", Basis.ASSUMED, ""),
    /** Hysteresis of a lapping valve. */
    LAP_DEADBAND("hysteresis of a lapping valve", 1, "psi", Basis.FROM_MEMORY, "1 to 2 psi"),
    /** Pressure at which the parking knob pops out. */
    PARKING_POP("parking knob pops out below", 30, "psi", Basis.PUBLISHED_SECONDHAND, "20 to 45"),
    /** Pressure at which a knob stays in. */
    KNOB_HOLD("a knob stays in from", 60, "psi", Basis.PUBLISHED, "truck operator's manual"),
    /** Pressure at which the trailer supply knob pops out. */
    TRAILER_POP(
            "trailer supply knob pops out below",
            38,
            "psi",
            Basis.PUBLISHED_SECONDHAND,
            "20 to 45 psi"),
    /** Way through the valves behind the knobs. */
    KNOB_WAY("effective area of the knobs' valves", 30, "mm2", Basis.ASSUMED, ""),
    /** Supply pressure that opens tractor protection. */
    PROTECTION_OPEN(
            "tractor protection opens at a supply line of",
            45,
            "psi",
            Basis.PUBLISHED,
            "provincial manual"),
    /** Supply pressure that closes tractor protection. */
    PROTECTION_CLOSE(
            "tractor protection closes below",
            35,
            "psi",
            Basis.PUBLISHED_SECONDHAND,
            "20 to 45 psi"),
    /** Supply line pressure that fills the reservoir of a towed unit. */
    TOWED_FILL_OPEN(
            "reservoir of a towed unit fills from a supply line of",
            60,
            "psi",
            Basis.ASSUMED,
            "so that its spring brakes come first"),
    /** Supply line pressure below which it no longer fills. */
    TOWED_FILL_CLOSE("it no longer fills below", 52, "psi", Basis.ASSUMED, ""),
    /** Supply line pressure below which a towed unit without spring brakes brakes by itself. */
    TOWED_EMERGENCY(
            "a towed unit without spring brakes applies its service brakes below",
            35,
            "psi",
            Basis.PUBLISHED_SECONDHAND,
            "20 to 45 psi"),
    /** Pressure at which the first protection valves of an integrated unit are open. */
    CIRCUIT_OPEN(
            "protection valves of the service circuits open",
            103,
            "psi",
            Basis.PUBLISHED,
            "service manual"),
    /** Pressure at which the others are open. */
    CIRCUIT_OPEN_LATE(
            "protection valve of the parking circuit opens",
            109,
            "psi",
            Basis.PUBLISHED,
            "service manual"),
    /** How far below that they are shut. */
    CIRCUIT_RANGE("a protection valve is shut that far below", 20, "psi", Basis.ASSUMED, ""),
    /** Pressure that opens the safety valve. */
    SAFETY_OPEN("safety valve opens", 150, "psi", Basis.PUBLISHED, "service data: system at most"),
    /** Pressure at which it closes. */
    SAFETY_CLOSE("safety valve closes", 135, "psi", Basis.ASSUMED, ""),
    /** Pressure of the low-air warning. */
    LOW_AIR(
            "low-air warning comes on below",
            66,
            "psi",
            Basis.ASSUMED,
            "above the least of 49 CFR 571.121 S5.1.5: 60 psi"),
    /** Pressure that lights the stop lamps. */
    STOP_LAMP(
            "stop lamps light from",
            5,
            "psi",
            Basis.ASSUMED,
            "below the most of 49 CFR 571.121 S5.1.7: 6 psi"),
    /** Lag of a gauge. */
    GAUGE_LAG("time constant of a gauge's needle", 0.3, "s", Basis.ASSUMED, ""),
    /** Error of the primary gauge. */
    PRIMARY_GAUGE_ERROR("primary gauge reads too high by", 0, "psi", Basis.ASSUMED, ""),
    /** Error of the secondary gauge. */
    SECONDARY_GAUGE_ERROR("secondary gauge reads too high by", 0, "psi", Basis.ASSUMED, ""),
    /** Hole of an open drain valve. */
    DRAIN_HOLE("effective area of an open drain valve", 12, "mm2", Basis.ASSUMED, ""),
    /** Hole of an open line. */
    OPEN_LINE("effective area of an open coupling", 40, "mm2", Basis.ASSUMED, ""),
    /** Pressure that overcomes a return spring. */
    PUSH_OUT("chamber pressure that moves the push rod", 5, "psi", Basis.FROM_MEMORY, "3 to 8 psi"),
    /** Pressure at which linings touch. */
    CONTACT("chamber pressure at which the linings touch", 8, "psi", Basis.ASSUMED, ""),
    /** Free stroke. */
    FREE_STROKE(
            "free stroke of an adjusted brake",
            0.5,
            "in",
            Basis.PUBLISHED_SECONDHAND,
            "3/8 to 5/8 in"),
    /** Stroke that hot drums add. */
    HOT_STROKE("stroke added by hot drums", 0, "in", Basis.ASSUMED, ""),
    /** Yield of a brake with a 30 square inch chamber. */
    POWER_STROKE("stroke for each psi, 30 in2 chamber", 0.0105, "in/psi", Basis.ASSUMED, "fit"),
    /** Volume before the stroke for each square inch. */
    REST_VOLUME(
            "chamber volume at rest, where not tabled", 0.45, "in3/in2", Basis.DERIVED, "type 30"),
    /** Area of an actuator no table lists. */
    UNLISTED_AREA("area of an actuator that no table lists", 22, "in2", Basis.ASSUMED, ""),
    /** Stroke of a chamber no table gives a stroke for. */
    UNLISTED_STROKE("full stroke of a chamber, where not tabled", 2.5, "in", Basis.ASSUMED, ""),
    /** Pressure that holds a spring brake fully off. */
    HOLD_OFF(
            "pressure that holds a spring brake fully off",
            65,
            "psi",
            Basis.ASSUMED,
            "force balance"),
    /** Pressure lost with travel of the spring. */
    SPRING_RATE(
            "that pressure falls with travel by", 6.6667, "psi/in", Basis.ASSUMED, "200 lbf/in"),
    /** Volume of a spring brake's chamber before it gives way. */
    SPRING_REST("spring chamber volume at rest", 0.5, "in3/in2", Basis.ASSUMED, ""),
    /** Volume of an air-over-hydraulic booster before it moves. */
    BOOSTER_REST("volume of a hydraulic booster at rest", 10, "in3", Basis.ASSUMED, ""),
    /** Area of its piston. */
    BOOSTER_AREA("area of a hydraulic booster's piston", 20, "in2", Basis.ASSUMED, ""),
    /** Stroke of its piston. */
    BOOSTER_STROKE("stroke of a hydraulic booster at 100 psi", 2.5, "in", Basis.ASSUMED, "");

    private final String label;
    private final double number;
    private final String unit;
    private final Basis basis;
    private final String source;

    AirDefault(String label, double number, String unit, Basis basis, String source) {
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

    /** Returns the number, in {@link #unit}. */
    public double number() {
        return number;
    }

    /** Returns the unit, empty text if it has none. */
    public String unit() {
        return unit;
    }

    /** Returns the number with its unit. */
    public String value() {
        String text = Decimals.formatShort(number, 10);
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
