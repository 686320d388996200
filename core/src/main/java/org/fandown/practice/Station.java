package org.fandown.practice;

import java.util.Optional;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * Where a person stands. Text forms: {@code cab}, {@code front}, {@code rear}, a wheel such as
 * {@code 2L}, {@code coupling 1} (the glad hands behind unit 1), {@code reservoirs 2} (those of
 * unit 2).
 *
 * @param spot the sort of place
 * @param wheel the wheel, empty unless it is at a wheel
 * @param unit the unit, counted from 1 in front; 0 where none is meant
 */
public record Station(Spot spot, Optional<WheelId> wheel, int unit) {
    /** Sorts of places. */
    public enum Spot {
        /** At the wheel, doors shut. */
        CAB,
        /** Before the vehicle. */
        FRONT,
        /** Behind the vehicle. */
        REAR,
        /** At one wheel. */
        WHEEL,
        /** At the lines behind a unit. */
        COUPLING,
        /** Beside the reservoirs of a unit. */
        RESERVOIRS
    }

    /** In the driver's seat. */
    public static final Station CAB = new Station(Spot.CAB, Optional.empty(), 0);

    /** Before the vehicle. */
    public static final Station FRONT = new Station(Spot.FRONT, Optional.empty(), 0);

    /** Behind the vehicle. */
    public static final Station REAR = new Station(Spot.REAR, Optional.empty(), 0);

    private static final String COUPLING = "coupling ";
    private static final String RESERVOIRS = "reservoirs ";

    /** Returns the place at a wheel. */
    public static Station at(WheelId wheel) {
        return new Station(Spot.WHEEL, Optional.of(wheel), 0);
    }

    /** Returns the place at the lines behind a unit, the powered one being 1. */
    public static Station coupling(int unit) {
        return new Station(Spot.COUPLING, Optional.empty(), unit);
    }

    /** Returns the place beside the reservoirs of a unit. */
    public static Station reservoirs(int unit) {
        return new Station(Spot.RESERVOIRS, Optional.empty(), unit);
    }

    /**
     * Reads a text form.
     *
     * @throws IllegalArgumentException if it is none of the forms
     */
    public static Station parse(String text) {
        for (Station fixed : new Station[] {CAB, FRONT, REAR}) {
            if (fixed.toString().equals(text)) {
                return fixed;
            }
        }
        if (text.startsWith(COUPLING)) {
            return coupling(number(text, COUPLING.length()));
        }
        if (text.startsWith(RESERVOIRS)) {
            return reservoirs(number(text, RESERVOIRS.length()));
        }
        try {
            return at(WheelId.parse(text));
        } catch (IllegalArgumentException e) {
            throw unreadable(text);
        }
    }

    private static int number(String text, int from) {
        char digit = text.length() == from + 1 ? text.charAt(from) : '0';
        if (digit < '1' || digit > '9') {
            throw unreadable(text);
        }
        return digit - '0';
    }

    private static IllegalArgumentException unreadable(String text) {
        return new IllegalArgumentException(
                "'"
                        + text
                        + "' is not a place to stand. Write cab, front, rear, a wheel such as 2L,"
                        + " 'coupling 1' or 'reservoirs 1'.");
    }

    /** Returns whether the vehicle has this place. */
    public boolean isAt(Vehicle vehicle) {
        return switch (spot) {
            case CAB, FRONT, REAR -> true;
            case WHEEL -> wheel.isPresent() && vehicle.hasWheel(wheel.get());
            case COUPLING -> unit >= 1 && unit < vehicle.units().size();
            case RESERVOIRS -> unit >= 1 && unit <= vehicle.units().size();
        };
    }

    /** Returns the form that {@link #parse} reads. */
    @Override
    public String toString() {
        return switch (spot) {
            case CAB -> "cab";
            case FRONT -> "front";
            case REAR -> "rear";
            case WHEEL -> wheel.map(WheelId::toString).orElse("");
            case COUPLING -> COUPLING + unit;
            case RESERVOIRS -> RESERVOIRS + unit;
        };
    }
}
