package org.fandown.air;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fandown.units.Decimals;
import org.fandown.units.Length;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.WheelId;

/**
 * What is special about one air system: sizes and settings that are not as usual, leaks, parts that
 * are stuck, strokes. Immutable; the {@code with} methods change one thing.
 *
 * @param values numbers that differ from {@link AirDefault}, in its units
 * @param wheels brakes that are not as usual, by wheel
 * @param leaks holes to the outside, by the name of the volume, mm2 of effective area
 * @param bridges holes between two volumes that ought to be apart, mm2 of effective area
 * @param jams parts stuck at an opening of 0 to 1, by the name of the link
 * @param restrictions links narrowed to a part of their size, more than 0 to 1, by name
 * @param water part of a reservoir that is full of water, 0 to 0.95, by name
 * @param defects other things that are wrong
 * @param needs volumes and parts the vehicle must have, because something is wrong with them
 */
public record AirSetup(
        Map<AirDefault, Double> values,
        Map<WheelId, WheelSetup> wheels,
        Map<String, Double> leaks,
        Map<Bridge, Double> bridges,
        Map<String, Double> jams,
        Map<String, Double> restrictions,
        Map<String, Double> water,
        Set<Defect> defects,
        Set<String> needs) {
    /**
     * Two volumes that ought to be apart.
     *
     * @param from one, by name
     * @param to the other, by name
     */
    public record Bridge(String from, String to) implements Comparable<Bridge> {
        @Override
        public int compareTo(Bridge other) {
            int first = from.compareTo(other.from);
            return first != 0 ? first : to.compareTo(other.to);
        }
    }

    /** How a spring brake is that is not sound. */
    public enum Spring {
        /** The spring is broken and has a third of its force left. */
        BROKEN,
        /** The spring is held back by its release bolt, so that it cannot act. */
        CAGED,
        /** The spring is not fully held off by the pressure there is. */
        DRAGGING
    }

    /** What else can be wrong. */
    public enum Defect {
        /** The low-air lamp does not light. */
        LOW_AIR_LAMP_DEAD,
        /** The low-air buzzer is silent. */
        LOW_AIR_BUZZER_DEAD,
        /** The low-air switch never closes. */
        LOW_AIR_SWITCH_DEAD,
        /** The stop lamp switch never closes. */
        STOP_LAMP_SWITCH_DEAD,
        /** The needle of the primary gauge is stuck. */
        PRIMARY_GAUGE_STUCK,
        /** The needle of the secondary gauge is stuck. */
        SECONDARY_GAUGE_STUCK,
        /** The governor does not stop the pumping. */
        GOVERNOR_STUCK_LOADED,
        /** The governor does not start the pumping. */
        GOVERNOR_STUCK_UNLOADED,
        /** The dryer's purge valve stays shut. */
        PURGE_STUCK_SHUT,
        /** The dryer's purge valve stays open. */
        PURGE_STUCK_OPEN,
        /** The parking knob does not pop out by itself. */
        PARKING_KNOB_STICKS,
        /** The trailer supply knob does not pop out by itself. */
        TRAILER_KNOB_STICKS,
        /** Tractor protection stays open. */
        PROTECTION_STUCK_OPEN,
        /** Tractor protection stays shut. */
        PROTECTION_STUCK_SHUT,
        /**
         * Nothing keeps service and spring force from adding up, as an anti-compound valve does.
         */
        NO_ANTI_COMPOUND,
        /** The spring brakes are not modulated when the primary circuit has failed. */
        NO_MODULATION,
        /** Oil comes over from the compressor; it shows at the drains. */
        OIL_CARRIED_OVER,
        /**
         * The lamp of the powered unit's anti-lock brakes stays lit; the air knows nothing of it.
         */
        ABS_LAMP_STAYS_ON,
        /** That lamp does not light. */
        ABS_LAMP_DEAD,
        /** The lamp of a towed unit's anti-lock brakes stays lit; the air knows nothing of it. */
        TRAILER_ABS_LAMP_STAYS_ON,
        /** That lamp does not light. */
        TRAILER_ABS_LAMP_DEAD
    }

    /** Everything as it should be. */
    public static final AirSetup SOUND =
            new AirSetup(
                    Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Set.of(),
                    Set.of());

    /** The part of a reservoir that water can take at most. */
    static final double MOST_WATER = 0.95;

    /**
     * Copies the collections and checks the ranges.
     *
     * @throws IllegalArgumentException if a number is out of range
     */
    public AirSetup {
        Map<AirDefault, Double> numbers = new EnumMap<>(AirDefault.class);
        numbers.putAll(values);
        values = Collections.unmodifiableMap(numbers);
        wheels = sorted(wheels);
        leaks = sorted(leaks);
        bridges = sorted(bridges);
        jams = sorted(jams);
        restrictions = sorted(restrictions);
        water = sorted(water);
        Set<Defect> wrong = EnumSet.noneOf(Defect.class);
        wrong.addAll(defects);
        defects = Collections.unmodifiableSet(wrong);
        needs = Collections.unmodifiableSet(new TreeSet<>(needs));
        numbers.forEach((what, x) -> require(what.label(), x, -1e6, 1e6));
        leaks.forEach((what, x) -> require("the leak of " + what, x, 0, 1e4));
        bridges.forEach((what, x) -> require("the hole from " + what.from(), x, 0, 1e4));
        jams.forEach((what, x) -> require("the opening of " + what, x, 0, 1));
        restrictions.forEach((what, x) -> require("the size of " + what, x, 1e-6, 1));
        water.forEach((what, x) -> require("the water in " + what, x, 0, MOST_WATER));
    }

    private static void require(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "A value is out of range: "
                            + what
                            + " must be "
                            + Decimals.formatShort(least, 6)
                            + " to "
                            + Decimals.formatShort(most, 6)
                            + ".");
        }
    }

    private static <K, V> Map<K, V> sorted(Map<K, V> map) {
        return Collections.unmodifiableMap(new TreeMap<>(map));
    }

    /** Returns the number this setup gives, or else the default. */
    public double value(AirDefault what) {
        Double own = values.get(what);
        return own != null ? own : what.number();
    }

    /** Returns the number this setup gives, empty if it gives none. */
    public OptionalDouble own(AirDefault what) {
        Double own = values.get(what);
        return own != null ? OptionalDouble.of(own) : OptionalDouble.empty();
    }

    /** Returns whether something is wrong. */
    public boolean has(Defect defect) {
        return defects.contains(defect);
    }

    /** Returns what is special about the brake at a wheel. */
    public WheelSetup wheel(WheelId wheel) {
        return wheels.getOrDefault(wheel, WheelSetup.SOUND);
    }

    /** Returns the same with another number, in the unit of the default. */
    public AirSetup with(AirDefault what, double number) {
        Draft draft = new Draft(this);
        draft.values = with(values, what, number);
        return draft.made();
    }

    /** Returns the same with another free stroke at a wheel. */
    public AirSetup withFreeStroke(WheelId wheel, Length stroke) {
        return with(wheel, wheel(wheel).withFreeStroke(stroke));
    }

    /** Returns the same with a spring brake that is not sound. */
    public AirSetup withSpring(WheelId wheel, Spring state) {
        return with(wheel, wheel(wheel).withSpring(state));
    }

    /** Returns the same with another chamber fitted at a wheel than the vehicle file says. */
    public AirSetup withChamber(WheelId wheel, Chamber fitted) {
        return with(wheel, wheel(wheel).withChamber(fitted));
    }

    /** Returns the same with a brake that lets its push rod make a part of its stroke alone. */
    public AirSetup withMovement(WheelId wheel, double part) {
        return with(wheel, wheel(wheel).withMovement(part));
    }

    private AirSetup with(WheelId wheel, WheelSetup state) {
        Draft draft = new Draft(this);
        draft.wheels = with(wheels, wheel, state);
        return draft.made();
    }

    /** Returns the same with one more hole to the outside, mm2 of effective area. */
    public AirSetup withLeak(String volume, double squareMillimetres) {
        double area = leaks.getOrDefault(volume, 0.0) + squareMillimetres;
        Draft draft = new Draft(this);
        draft.leaks = with(leaks, volume, area);
        return draft.made();
    }

    /** Returns the same with one more hole between two volumes, mm2 of effective area. */
    public AirSetup withBridge(String from, String to, double squareMillimetres) {
        Bridge bridge = new Bridge(from, to);
        double area = bridges.getOrDefault(bridge, 0.0) + squareMillimetres;
        Draft draft = new Draft(this);
        draft.bridges = with(bridges, bridge, area);
        return draft.made();
    }

    /** Returns the same with a part stuck at an opening of 0 to 1. */
    public AirSetup withJam(String link, double opening) {
        Draft draft = new Draft(this);
        draft.jams = with(jams, link, opening);
        return draft.made();
    }

    /** Returns the same with a link narrowed to a part of its size. */
    public AirSetup withRestriction(String link, double part) {
        Draft draft = new Draft(this);
        draft.restrictions = with(restrictions, link, part);
        return draft.made();
    }

    /** Returns the same with water in a part of a reservoir. */
    public AirSetup withWater(String reservoir, double part) {
        Draft draft = new Draft(this);
        draft.water = with(water, reservoir, part);
        return draft.made();
    }

    /** Returns the same with something more wrong. */
    public AirSetup with(Defect defect) {
        Set<Defect> more = EnumSet.of(defect);
        more.addAll(defects);
        Draft draft = new Draft(this);
        draft.defects = more;
        return draft.made();
    }

    /** Returns the same for vehicles alone that have a volume or part of this name. */
    public AirSetup withNeed(String part) {
        Set<String> more = new TreeSet<>(needs);
        more.add(part);
        Draft draft = new Draft(this);
        draft.needs = more;
        return draft.made();
    }

    private static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
        Map<K, V> more = new LinkedHashMap<>(map);
        more.put(key, value);
        return more;
    }

    /** A setup in the making. */
    private static final class Draft {
        private Map<AirDefault, Double> values;
        private Map<WheelId, WheelSetup> wheels;
        private Map<String, Double> leaks;
        private Map<Bridge, Double> bridges;
        private Map<String, Double> jams;
        private Map<String, Double> restrictions;
        private Map<String, Double> water;
        private Set<Defect> defects;
        private Set<String> needs;

        Draft(AirSetup from) {
            values = from.values;
            wheels = from.wheels;
            leaks = from.leaks;
            bridges = from.bridges;
            jams = from.jams;
            restrictions = from.restrictions;
            water = from.water;
            defects = from.defects;
            needs = from.needs;
        }

        AirSetup made() {
            return new AirSetup(
                    values, wheels, leaks, bridges, jams, restrictions, water, defects, needs);
        }
    }
}
