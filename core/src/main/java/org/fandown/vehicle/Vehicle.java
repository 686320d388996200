package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A single vehicle or a combination, from front to back.
 *
 * <p>Axles are counted through the whole combination, starting at 1 in front. Immutable.
 *
 * @param name free text by which people know it
 * @param use what it is used for
 * @param units its units, 1 to {@value UnitRules#MOST_UNITS}; the first is powered, no other is
 */
public record Vehicle(String name, Use use, List<VehicleUnit> units) {

    /** Copies the units in; refuses an impossible order and equal unit numbers. */
    public Vehicle {
        units = List.copyOf(units);
        UnitRules.requireName("name", name);
        UnitRules.requireOrder(units);
        UnitRules.requireDistinctIds(units);
    }

    /** Returns the powered unit, which stands in front. */
    public VehicleUnit powerUnit() {
        return units.get(0);
    }

    /** Returns whether there is more than one unit. */
    public boolean isCombination() {
        return units.size() > 1;
    }

    /** Returns the trailers, without the dollies, from front to back. */
    public List<VehicleUnit> trailers() {
        List<VehicleUnit> trailers = new ArrayList<>();
        for (VehicleUnit unit : units) {
            if (unit.kind() == UnitKind.TRAILER) {
                trailers.add(unit);
            }
        }
        return List.copyOf(trailers);
    }

    /** Returns all units behind the powered one, from front to back. */
    public List<VehicleUnit> towedUnits() {
        return units.subList(1, units.size());
    }

    /** Returns the units whose brakes compressed air works up to the wheels. */
    public List<VehicleUnit> unitsWithAirBrakes() {
        return units.stream().filter(VehicleUnit::hasAirBrakes).toList();
    }

    /** Returns all axles from front to back; the first has number 1. */
    public List<Axle> axles() {
        return units.stream().flatMap(unit -> unit.axles().stream()).toList();
    }

    /** Returns the number of axles of the whole combination. */
    public int axleCount() {
        int count = 0;
        for (VehicleUnit unit : units) {
            count += unit.axles().size();
        }
        return count;
    }

    /**
     * Returns an axle by its number.
     *
     * @param number 1 to {@link #axleCount()}
     * @throws IllegalArgumentException if there is no such axle
     */
    public Axle axle(int number) {
        int first = 1;
        for (VehicleUnit unit : units) {
            int next = first + unit.axles().size();
            if (first <= number && number < next) {
                return unit.axles().get(number - first);
            }
            first = next;
        }
        throw noSuchAxle(number);
    }

    /**
     * Returns the unit an axle belongs to.
     *
     * @param axle the number of the axle, 1 to {@link #axleCount()}
     * @throws IllegalArgumentException if there is no such axle
     */
    public VehicleUnit unitOf(int axle) {
        int last = 0;
        for (VehicleUnit unit : units) {
            last += unit.axles().size();
            if (1 <= axle && axle <= last) {
                return unit;
            }
        }
        throw noSuchAxle(axle);
    }

    /**
     * Returns the number of the first axle of a unit.
     *
     * @param unit one of this vehicle's units
     * @throws IllegalArgumentException if it is not
     */
    public int firstAxleOf(VehicleUnit unit) {
        int first = 1;
        for (VehicleUnit each : units) {
            if (each.id().equals(unit.id())) {
                return first;
            }
            first += each.axles().size();
        }
        throw new IllegalArgumentException("Unit '" + unit.id() + "' is not in '" + name + "'.");
    }

    /** Returns both ends of every axle, braked or not: 1L, 1R, 2L and so on. */
    public List<WheelId> wheels() {
        List<WheelId> wheels = new ArrayList<>();
        for (int axle = 1; axle <= axleCount(); axle++) {
            wheels.add(new WheelId(axle, Side.LEFT));
            wheels.add(new WheelId(axle, Side.RIGHT));
        }
        return List.copyOf(wheels);
    }

    /** Returns the wheels that have a push rod to measure, in the order of {@link #wheels()}. */
    public List<WheelId> wheelsWithPushRod() {
        return wheels().stream().filter(id -> wheel(id).hasPushRod()).toList();
    }

    /** Returns whether the vehicle has such a wheel. */
    public boolean hasWheel(WheelId id) {
        return id.axle() <= axleCount();
    }

    /**
     * Returns one end of one axle.
     *
     * @throws IllegalArgumentException if there is no such axle
     */
    public WheelEnd wheel(WheelId id) {
        return axle(id.axle()).end(id.side());
    }

    /** Returns one end of one axle, empty if there is no such axle. */
    public Optional<WheelEnd> findWheel(WheelId id) {
        return hasWheel(id) ? Optional.of(wheel(id)) : Optional.empty();
    }

    /** Returns the parts the vehicle is known to have, in the order of the enumeration. */
    public Set<Part> parts() {
        return Parts.of(this);
    }

    /** Returns whether the vehicle is known to have the part. */
    public boolean has(Part part) {
        return parts().contains(part);
    }

    private IllegalArgumentException noSuchAxle(int number) {
        return new IllegalArgumentException(
                "Axle "
                        + number
                        + " is not one of the "
                        + axleCount()
                        + " axles of '"
                        + name
                        + "'.");
    }
}
