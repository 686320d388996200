package org.fandown.air;

import org.fandown.air.AirSetup.Defect;
import org.fandown.air.AirSetup.Spring;
import org.fandown.units.Length;
import org.fandown.vehicle.WheelId;

/**
 * Something that can be wrong with an air system: a physical change of its {@link AirSetup}, with
 * what a driver would see, hear or measure.
 *
 * <p>A {@link FaultCase} is a fault with its size and place. A fault of a part that a vehicle has
 * not is refused when its {@link AirSystem} is made.
 */
// A FaultSize holds values alone, and the changes capture nothing.
@SuppressWarnings("ImmutableEnumChecker")
public enum Fault {
    /** Leak at the supply reservoir. */
    SUPPLY_LEAK(
            "supply-leak",
            "Leak at the supply reservoir",
            "Hiss under the supply reservoir; both needles hold behind their "
                    + "check valves while the compressor works more often.",
            Place.FIXED,
            FaultSize.hole(0.3, 1.5, 5),
            (s, x, at) -> s.withLeak("supply", area(x))),
    /** Leak in the primary circuit. */
    PRIMARY_LEAK(
            "primary-leak",
            "Leak in the primary circuit",
            "The primary needle falls with the engine off, brakes released or "
                    + "applied; the secondary one holds.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 5),
            (s, x, at) -> s.withLeak("primary", area(x))),
    /** Leak in the secondary circuit. */
    SECONDARY_LEAK(
            "secondary-leak",
            "Leak in the secondary circuit",
            "The secondary needle falls with the engine off; the primary one " + "holds.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 5),
            (s, x, at) -> s.withLeak("secondary", area(x))),
    /** Leak at the trailer's reservoir. */
    TRAILER_RESERVOIR_LEAK(
            "trailer-reservoir-leak",
            "Leak at the trailer's reservoir",
            "Hiss under the trailer with the trailer supply knob in; both needles "
                    + "fall slowly, and no longer with the knob out.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 5),
            (s, x, at) -> s.withLeak("unit2.reservoir", area(x))),
    /** Leak in the trailer's supply line. */
    SUPPLY_LINE_LEAK(
            "supply-line-leak",
            "Leak in the trailer's supply line",
            "Hiss along the trailer while its supply knob is in; stops when the " + "knob is out.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 5),
            (s, x, at) -> s.withLeak("supply-line-2", area(x))),
    /** Leak in the trailer's control line. */
    CONTROL_LINE_LEAK(
            "control-line-leak",
            "Leak in the trailer's control line",
            "Hiss along the trailer with the brakes applied; the applied leak "
                    + "test is worse than the released one.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 5),
            (s, x, at) -> s.withLeak("control-line-2", area(x))),
    /** Worn seal at the supply glad hand. */
    SUPPLY_GLAD_HAND_LEAK(
            "supply-glad-hand-leak",
            "Worn seal at the supply glad hand",
            "Hiss between tractor and trailer while the trailer supply knob is " + "in.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 5),
            (s, x, at) -> s.withLeak("supply-line-1", area(x))),
    /** Worn seal at the control glad hand. */
    CONTROL_GLAD_HAND_LEAK(
            "control-glad-hand-leak",
            "Worn seal at the control glad hand",
            "Hiss between tractor and trailer with the brakes applied only.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 5),
            (s, x, at) -> s.withLeak("control-line-1", area(x))),
    /** Torn service diaphragm. */
    SERVICE_DIAPHRAGM_LEAK(
            "service-diaphragm-leak",
            "Torn service diaphragm",
            "Hiss at the wheel with the brakes applied; the applied leak test " + "fails.",
            Place.WHEEL,
            FaultSize.hole(0.3, 1.5, 6),
            (s, x, at) -> s.withLeak(at + ".service", area(x))),
    /** Torn spring brake diaphragm. */
    SPRING_DIAPHRAGM_LEAK(
            "spring-diaphragm-leak",
            "Torn spring brake diaphragm",
            "Hiss at the wheel with the parking brake released; stops when it is " + "set.",
            Place.WHEEL,
            FaultSize.hole(0.3, 1.5, 6),
            (s, x, at) -> s.withLeak(at + ".spring", area(x))),
    /** Foot valve does not seat. */
    FOOT_VALVE_SEAT_LEAK(
            "foot-valve-seat-leak",
            "Foot valve does not seat",
            "Air at the foot valve's exhaust with the pedal up; the primary " + "needle falls.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 3),
            (s, x, at) -> s.withBridge("primary", "primary-delivery", area(x))),
    /** Foot valve leaks when applied. */
    FOOT_VALVE_APPLIED_LEAK(
            "foot-valve-applied-leak",
            "Foot valve leaks when applied",
            "Air at the foot valve with the pedal down; the applied leak test is "
                    + "worse than the released one.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 3),
            (s, x, at) -> s.withLeak("primary-delivery", area(x))),
    /** Relay valve does not seat. */
    RELAY_SEAT_LEAK(
            "relay-seat-leak",
            "Relay valve does not seat",
            "Air at the rear relay valve's exhaust with the brakes released; the "
                    + "primary needle falls.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 3),
            (s, x, at) -> s.withBridge("primary", "rear-service", area(x))),
    /** Relay valve leaks when applied. */
    RELAY_APPLIED_LEAK(
            "relay-applied-leak",
            "Relay valve leaks when applied",
            "Air at the rear relay valve with the brakes applied; the primary " + "needle falls.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 4),
            (s, x, at) -> s.withLeak("rear-service", area(x))),
    /** Leak behind the spring brake valve. */
    SPRING_RELAY_LEAK(
            "spring-relay-leak",
            "Leak behind the spring brake valve",
            "Hiss at the rear axle with the parking brake released.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 4),
            (s, x, at) -> s.withLeak("rear-spring", area(x))),
    /** Leak at the parking valve. */
    PARKING_VALVE_LEAK(
            "parking-valve-leak",
            "Leak at the parking valve",
            "Hiss behind the dash while the parking knob is in.",
            Place.FIXED,
            FaultSize.hole(0.3, 1, 3),
            (s, x, at) -> s.withLeak("park-line", area(x))),
    /** Governor cut-out too high. */
    GOVERNOR_HIGH(
            "governor-high",
            "Governor cut-out too high",
            "Pumping stops later than it should; no purge until then.",
            Place.FIXED,
            FaultSize.of(136, 142, 149, "psi"),
            (s, x, at) -> s.with(AirDefault.CUT_OUT, x)),
    /** Governor cut-out too low. */
    GOVERNOR_LOW(
            "governor-low",
            "Governor cut-out too low",
            "Pumping stops early; the needles never reach the usual pressure.",
            Place.FIXED,
            FaultSize.of(104, 112, 118, "psi"),
            (s, x, at) -> s.with(AirDefault.CUT_OUT, x)),
    /** Governor cut-in too low. */
    CUT_IN_LOW(
            "cut-in-low",
            "Governor cut-in too low",
            "After applications the needles fall far before pumping starts again.",
            Place.FIXED,
            FaultSize.of(50, 78, 99, "psi"),
            (s, x, at) -> s.with(AirDefault.CUT_IN, x)),
    /** Governor does not unload. */
    GOVERNOR_STUCK_LOADED(
            "governor-stuck-loaded",
            "Governor does not unload",
            "Pressure rises until the safety valve blows; no purge.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.GOVERNOR_STUCK_LOADED)),
    /** Governor does not load. */
    GOVERNOR_STUCK_UNLOADED(
            "governor-stuck-unloaded",
            "Governor does not load",
            "No build-up at all; the purge valve stays open.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.GOVERNOR_STUCK_UNLOADED)),
    /** Worn compressor. */
    COMPRESSOR_WORN(
            "compressor-worn",
            "Worn compressor",
            "Build-up takes too long at every speed.",
            Place.FIXED,
            FaultSize.of(0.2, 0.4, 0.8, ""),
            (s, x, at) -> s.with(AirDefault.COMPRESSOR_HEALTH, x)),
    /** Compressor drive slips. */
    COMPRESSOR_SLIPPING(
            "compressor-slipping",
            "Compressor drive slips",
            "Build-up takes too long; worse than the engine speed suggests.",
            Place.FIXED,
            FaultSize.of(0.2, 0.4, 0.9, ""),
            (s, x, at) -> s.with(AirDefault.DRIVE_RATIO, x)),
    /** Purge valve stuck open. */
    PURGE_STUCK_OPEN(
            "purge-stuck-open",
            "Purge valve stuck open",
            "Air blows from the dryer while the engine runs; no or slow build-up.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.PURGE_STUCK_OPEN)),
    /** Dryer does not purge. */
    PURGE_STUCK_SHUT(
            "purge-stuck-shut",
            "Dryer does not purge",
            "No sneeze at cut-out; in time water in the reservoirs.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.PURGE_STUCK_SHUT)),
    /** Dryer blocked. */
    DRYER_BLOCKED(
            "dryer-blocked",
            "Dryer blocked",
            "Build-up slows down and the pumping may stop early.",
            Place.FIXED,
            FaultSize.of(0.001, 0.01, 0.1, ""),
            (s, x, at) -> s.withRestriction("dryer-check", x)),
    /** Water in the supply reservoir. */
    WATER_IN_SUPPLY(
            "water-in-supply",
            "Water in the supply reservoir",
            "Water and oil at the drain; quick build-up, and quick fall when " + "braking.",
            Place.FIXED,
            FaultSize.of(0.1, 0.4, 0.8, ""),
            (s, x, at) -> s.withWater("supply", x)),
    /** Water in the primary reservoir. */
    WATER_IN_PRIMARY(
            "water-in-primary",
            "Water in the primary reservoir",
            "Water at the drain; the primary needle falls far with each " + "application.",
            Place.FIXED,
            FaultSize.of(0.1, 0.4, 0.8, ""),
            (s, x, at) -> s.withWater("primary", x)),
    /** Water in the secondary reservoir. */
    WATER_IN_SECONDARY(
            "water-in-secondary",
            "Water in the secondary reservoir",
            "Water at the drain; the secondary needle falls far with each " + "application.",
            Place.FIXED,
            FaultSize.of(0.1, 0.4, 0.8, ""),
            (s, x, at) -> s.withWater("secondary", x)),
    /** Primary check valve stuck open. */
    PRIMARY_CHECK_OPEN(
            "primary-check-open",
            "Primary check valve stuck open",
            "When the supply reservoir is drained the primary needle falls too.",
            Place.FIXED,
            FaultSize.hole(1, 4, 7),
            (s, x, at) -> s.withBridge("primary", "supply", area(x))),
    /** Secondary check valve stuck open. */
    SECONDARY_CHECK_OPEN(
            "secondary-check-open",
            "Secondary check valve stuck open",
            "When the supply reservoir is drained the secondary needle falls too.",
            Place.FIXED,
            FaultSize.hole(1, 4, 7),
            (s, x, at) -> s.withBridge("secondary", "supply", area(x))),
    /** Primary check valve stuck shut. */
    PRIMARY_CHECK_SHUT(
            "primary-check-shut",
            "Primary check valve stuck shut",
            "The primary needle does not rise; the low-air warning stays on.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.withJam("check-primary", 0)),
    /** Secondary check valve stuck shut. */
    SECONDARY_CHECK_SHUT(
            "secondary-check-shut",
            "Secondary check valve stuck shut",
            "The secondary needle does not rise; the low-air warning stays on.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.withJam("check-secondary", 0)),
    /** Leak between the circuits. */
    CIRCUITS_JOINED(
            "circuits-joined",
            "Leak between the circuits",
            "Both needles fall together when one reservoir is drained.",
            Place.FIXED,
            FaultSize.hole(1, 3, 7),
            (s, x, at) -> s.withBridge("primary", "secondary", area(x))),
    /** Low-air switch set too low. */
    LOW_AIR_SET_LOW(
            "low-air-set-low",
            "Low-air switch set too low",
            "Lamp and buzzer come on too late in the fan down.",
            Place.FIXED,
            FaultSize.of(30, 48, 54, "psi"),
            (s, x, at) -> s.with(AirDefault.LOW_AIR, x)),
    /** Low-air lamp dead. */
    LOW_AIR_LAMP_DEAD(
            "low-air-lamp-dead",
            "Low-air lamp dead",
            "The buzzer sounds without the lamp.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.LOW_AIR_LAMP_DEAD)),
    /** Low-air buzzer dead. */
    LOW_AIR_BUZZER_DEAD(
            "low-air-buzzer-dead",
            "Low-air buzzer dead",
            "The lamp lights without the buzzer.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.LOW_AIR_BUZZER_DEAD)),
    /** Low-air switch dead. */
    LOW_AIR_SWITCH_DEAD(
            "low-air-switch-dead",
            "Low-air switch dead",
            "Neither lamp nor buzzer at any pressure.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.LOW_AIR_SWITCH_DEAD)),
    /** Primary gauge reads wrong. */
    PRIMARY_GAUGE_OFF(
            "primary-gauge-off",
            "Primary gauge reads wrong",
            "The needles differ at cut-out although the circuits are equal.",
            Place.FIXED,
            FaultSize.of(-25, 12, 25, "psi"),
            (s, x, at) -> s.with(AirDefault.PRIMARY_GAUGE_ERROR, x)),
    /** Secondary gauge reads wrong. */
    SECONDARY_GAUGE_OFF(
            "secondary-gauge-off",
            "Secondary gauge reads wrong",
            "The needles differ at cut-out although the circuits are equal.",
            Place.FIXED,
            FaultSize.of(-25, 12, 25, "psi"),
            (s, x, at) -> s.with(AirDefault.SECONDARY_GAUGE_ERROR, x)),
    /** Primary gauge stuck. */
    PRIMARY_GAUGE_STUCK(
            "primary-gauge-stuck",
            "Primary gauge stuck",
            "The primary needle does not move.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.PRIMARY_GAUGE_STUCK)),
    /** Secondary gauge stuck. */
    SECONDARY_GAUGE_STUCK(
            "secondary-gauge-stuck",
            "Secondary gauge stuck",
            "The secondary needle does not move.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.SECONDARY_GAUGE_STUCK)),
    /** Broken spring in a spring brake. */
    SPRING_BROKEN(
            "spring-broken",
            "Broken spring in a spring brake",
            "The push rod hardly leaves its place when the parking brake is set; "
                    + "rattle at the chamber.",
            Place.WHEEL,
            FaultSize.NONE,
            (s, x, at) -> s.withSpring(WheelId.parse(at), Spring.BROKEN)),
    /** Spring brake caged. */
    SPRING_CAGED(
            "spring-caged",
            "Spring brake caged",
            "A release bolt stands out of the chamber; the push rod does not move "
                    + "when the parking brake is set.",
            Place.WHEEL,
            FaultSize.NONE,
            (s, x, at) -> s.withSpring(WheelId.parse(at), Spring.CAGED)),
    /** Spring brake drags. */
    SPRING_DRAGGING(
            "spring-dragging",
            "Spring brake drags",
            "The push rod is not fully back with the parking brake released; a " + "hot wheel.",
            Place.WHEEL,
            FaultSize.NONE,
            (s, x, at) -> s.withSpring(WheelId.parse(at), Spring.DRAGGING)),
    /** Parking knob pops out too early. */
    PARKING_POPS_EARLY(
            "parking-pops-early",
            "Parking knob pops out too early",
            "The knob comes out above the usual range in the fan down.",
            Place.FIXED,
            FaultSize.of(46, 56, 75, "psi"),
            (s, x, at) -> s.with(AirDefault.PARKING_POP, x)),
    /** Parking knob pops out too late. */
    PARKING_POPS_LATE(
            "parking-pops-late",
            "Parking knob pops out too late",
            "The knob stays in below the usual range.",
            Place.FIXED,
            FaultSize.of(2, 10, 19, "psi"),
            (s, x, at) -> s.with(AirDefault.PARKING_POP, x)),
    /** Parking knob does not pop out. */
    PARKING_KNOB_STICKS(
            "parking-knob-sticks",
            "Parking knob does not pop out",
            "The knob stays in down to nothing; springs come on only as their air " + "is lost.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.PARKING_KNOB_STICKS)),
    /** Trailer supply knob pops out too early. */
    TRAILER_KNOB_POPS_EARLY(
            "trailer-knob-pops-early",
            "Trailer supply knob pops out too early",
            "The knob comes out above the usual range in the fan down.",
            Place.FIXED,
            FaultSize.of(46, 56, 75, "psi"),
            (s, x, at) -> s.with(AirDefault.TRAILER_POP, x)),
    /** Trailer supply knob pops out too late. */
    TRAILER_KNOB_POPS_LATE(
            "trailer-knob-pops-late",
            "Trailer supply knob pops out too late",
            "The knob stays in below the usual range.",
            Place.FIXED,
            FaultSize.of(2, 10, 19, "psi"),
            (s, x, at) -> s.with(AirDefault.TRAILER_POP, x)),
    /** Trailer supply knob does not pop out. */
    TRAILER_KNOB_STICKS(
            "trailer-knob-sticks",
            "Trailer supply knob does not pop out",
            "With the supply line apart the tractor loses its air.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.TRAILER_KNOB_STICKS)),
    /** Tractor protection stuck open. */
    PROTECTION_STUCK_OPEN(
            "protection-stuck-open",
            "Tractor protection stuck open",
            "With the trailer supply knob out the pedal still sends air to the " + "control line.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.PROTECTION_STUCK_OPEN)),
    /** Tractor protection stuck shut. */
    PROTECTION_STUCK_SHUT(
            "protection-stuck-shut",
            "Tractor protection stuck shut",
            "The trailer's service brakes do not apply.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.PROTECTION_STUCK_SHUT)),
    /** Supply and control line crossed. */
    LINES_CROSSED(
            "lines-crossed",
            "Supply and control line crossed",
            "With the trailer supply knob in the trailer's service brakes apply, "
                    + "and its spring brakes do not release.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> crossed(s)),
    /** Supply line kinked. */
    SUPPLY_LINE_NARROW(
            "supply-line-narrow",
            "Supply line kinked",
            "The trailer charges slowly.",
            Place.FIXED,
            FaultSize.of(0.005, 0.05, 0.3, ""),
            (s, x, at) -> s.withRestriction("glad-hand-supply-1", x)),
    /** Control line kinked. */
    CONTROL_LINE_NARROW(
            "control-line-narrow",
            "Control line kinked",
            "The trailer's brakes come on and go off late.",
            Place.FIXED,
            FaultSize.of(0.005, 0.05, 0.3, ""),
            (s, x, at) -> s.withRestriction("glad-hand-control-1", x)),
    /** Hose to a chamber collapsed inside. */
    HOSE_NARROW(
            "hose-narrow",
            "Hose to a chamber collapsed inside",
            "The brake at the wheel comes on and goes off late.",
            Place.WHEEL,
            FaultSize.of(0.005, 0.03, 0.3, ""),
            (s, x, at) -> s.withRestriction("hose-" + at + ".service", x)),
    /** Relay valve clogged. */
    RELAY_SLOW(
            "relay-slow",
            "Relay valve clogged",
            "The rear brakes come on and go off late.",
            Place.FIXED,
            FaultSize.of(0.01, 0.05, 0.3, ""),
            (s, x, at) -> s.withRestriction("relay-rear", x)),
    /** Foot valve clogged. */
    FOOT_VALVE_NARROW(
            "foot-valve-narrow",
            "Foot valve clogged",
            "The rear brakes come on and go off late.",
            Place.FIXED,
            FaultSize.of(0.005, 0.02, 0.2, ""),
            (s, x, at) -> s.withRestriction("foot-valve-primary", x)),
    /** Brake out of adjustment. */
    ADJUSTER_OUT(
            "adjuster-out",
            "Brake out of adjustment",
            "Applied stroke beyond the limit at the wheel.",
            Place.WHEEL,
            FaultSize.of(0.9, 1.3, 2, "in"),
            (s, x, at) -> s.withFreeStroke(WheelId.parse(at), Length.ofInches(x))),
    /** Brake adjusted too tight. */
    BRAKE_TOO_TIGHT(
            "brake-too-tight",
            "Brake adjusted too tight",
            "Free stroke hardly there; a warm wheel.",
            Place.WHEEL,
            FaultSize.of(0.05, 0.15, 0.3, "in"),
            (s, x, at) -> s.withFreeStroke(WheelId.parse(at), Length.ofInches(x))),
    /** Hot drums. */
    HOT_DRUMS(
            "hot-drums",
            "Hot drums",
            "All strokes grow; back to normal when cool.",
            Place.FIXED,
            FaultSize.of(0.1, 0.4, 0.7, "in"),
            (s, x, at) -> s.with(AirDefault.FREE_STROKE, s.value(AirDefault.FREE_STROKE) + x)),
    /** Primary drain frozen. */
    DRAIN_FROZEN(
            "drain-frozen",
            "Primary drain frozen",
            "Nothing comes out of the primary drain.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.withJam("drain-primary", 0)),
    /** Primary drain does not close. */
    DRAIN_LEAKING(
            "drain-leaking",
            "Primary drain does not close",
            "Hiss under the primary reservoir; its needle falls.",
            Place.FIXED,
            FaultSize.of(0.005, 0.05, 1, ""),
            (s, x, at) -> s.withJam("drain-primary", x)),
    /** Safety valve opens too early. */
    SAFETY_VALVE_WEAK(
            "safety-valve-weak",
            "Safety valve opens too early",
            "The safety valve blows before the cut-out.",
            Place.FIXED,
            FaultSize.of(90, 110, 120, "psi"),
            (s, x, at) -> s.with(AirDefault.SAFETY_OPEN, x).with(AirDefault.SAFETY_CLOSE, x - 15)),
    /** Stop lamp switch dead. */
    STOP_LAMP_SWITCH_DEAD(
            "stop-lamp-switch-dead",
            "Stop lamp switch dead",
            "No stop lamps with the pedal down.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.STOP_LAMP_SWITCH_DEAD)),
    /** Service and spring force add up. */
    NO_ANTI_COMPOUND(
            "no-anti-compound",
            "Service and spring force add up",
            "Pedal down with the parking brake set: the push rods of spring "
                    + "brakes are loaded twice.",
            Place.FIXED,
            FaultSize.NONE,
            (s, x, at) -> s.with(Defect.NO_ANTI_COMPOUND));

    /** Part of a hole's area that counts, for a sharp edge. */
    private static final double SHARP = 0.65;

    /** Whether a fault is at a wheel that must be named. */
    private enum Place {
        FIXED,
        WHEEL
    }

    /** How a fault changes a setup. */
    @FunctionalInterface
    interface Change {
        AirSetup apply(AirSetup setup, double size, String place);
    }

    private final String id;
    private final String title;
    private final String shows;
    private final Place place;
    private final FaultSize size;
    private final Change change;

    Fault(String id, String title, String shows, Place place, FaultSize size, Change change) {
        this.id = id;
        this.title = title;
        this.shows = shows;
        this.place = place;
        this.size = size;
        this.change = change;
    }

    /** Returns the name used in files: {@code primary-leak}. */
    public String id() {
        return id;
    }

    /** Returns what is wrong, in words. */
    public String title() {
        return title;
    }

    /** Returns what a driver would see, hear or measure. */
    public String shows() {
        return shows;
    }

    /** Returns whether it is at a wheel, which must then be named. */
    public boolean atWheel() {
        return place == Place.WHEEL;
    }

    /** Returns how large it can be. */
    public FaultSize size() {
        return size;
    }

    Change change() {
        return change;
    }

    private static double area(double millimetres) {
        return SHARP * Math.PI / 4 * millimetres * millimetres;
    }

    private static AirSetup crossed(AirSetup setup) {
        return setup.withJam("glad-hand-supply-1", 0)
                .withJam("glad-hand-control-1", 0)
                .withJam("crossed-supply-1", 1)
                .withJam("crossed-control-1", 1);
    }
}
