package org.fandown.practice;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fandown.check.Component;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.QuantityFormatException;
import org.fandown.units.Unit;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** What a {@link Verb} is done to, or how far. */
public enum Argument {
    /** One of the verb's words. */
    WORD("one of its words"),
    /** A share of a pedal's or handle's travel, 0 to 100 %. */
    TRAVEL("a share of the travel, 0 % to 100 %"),
    /** An engine speed (0 to 3000 rpm), or a share of the pedal's travel. */
    ENGINE_SPEED("an engine speed up to 3000 rpm, or 0 % to 100 % of the pedal's travel"),
    /** A wheel of the vehicle. */
    WHEEL("a wheel of the vehicle, such as 2L"),
    /** The name of a reservoir. */
    RESERVOIR("a reservoir: supply, primary, secondary, parking or, of a towed unit, unit2"),
    /** The number of the unit before the lines. */
    COUPLING("the number of the unit in front of the lines, the powered one being 1"),
    /** A place to stand. */
    STATION("cab, front, rear, a wheel such as 2L, 'coupling 1' or 'reservoirs 1'"),
    /** A component of the walk-round. */
    PART("a component of the walk-round, such as air-lines"),
    /** Free text. */
    TEXT("a text");

    private static final double MOST_RPM = 3000;
    private static final double MOST_TRAVEL = 100;

    private final String allowed;

    Argument(String allowed) {
        this.allowed = allowed;
    }

    /** Returns what is allowed, in words. */
    String allowed(List<String> words) {
        return this == WORD ? String.join(", ", words) : allowed;
    }

    /** Returns whether a text is such an argument, of whatever vehicle. */
    boolean accepts(String text, List<String> words) {
        return switch (this) {
            case WORD -> words.contains(text);
            case TRAVEL -> inRange(text, EnumSet.of(Dimension.RATIO));
            case ENGINE_SPEED -> inRange(text, EnumSet.of(Dimension.RATIO, Dimension.ROTATION));
            case WHEEL -> isWheel(text);
            case RESERVOIR -> !text.isBlank();
            case COUPLING -> text.length() == 1 && text.charAt(0) >= '1' && text.charAt(0) <= '9';
            case STATION -> isStation(text);
            case PART -> component(text).isPresent();
            case TEXT -> !text.isBlank();
        };
    }

    /** Returns whether the vehicle has what is named. Reservoirs are known to its air system. */
    boolean isOn(Vehicle vehicle, String text) {
        return switch (this) {
            case WHEEL -> vehicle.hasWheel(WheelId.parse(text));
            case COUPLING -> Integer.parseInt(text) < vehicle.units().size();
            case STATION -> Station.parse(text).isAt(vehicle);
            default -> true;
        };
    }

    static java.util.Optional<Component> component(String text) {
        for (Component component : Component.values()) {
            if (component.id().equals(text)) {
                return java.util.Optional.of(component);
            }
        }
        return java.util.Optional.empty();
    }

    private static boolean inRange(String text, Set<Dimension> dimensions) {
        try {
            Quantity quantity = Quantity.parse(text, dimensions);
            boolean share = quantity.dimension() == Dimension.RATIO;
            double value = quantity.valueIn(share ? Unit.PERCENT : Unit.RPM);
            return value >= 0 && value <= (share ? MOST_TRAVEL : MOST_RPM);
        } catch (QuantityFormatException e) {
            return false;
        }
    }

    private static boolean isWheel(String text) {
        try {
            return WheelId.parse(text).axle() > 0;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static boolean isStation(String text) {
        try {
            return Station.parse(text).unit() >= 0;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
