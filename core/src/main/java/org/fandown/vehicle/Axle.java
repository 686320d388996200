package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * One axle with its two ends.
 *
 * @param position the part it plays in its unit
 * @param left its left end
 * @param right its right end
 * @param grossMass the maker's greatest load on this axle (GAWR), empty if unknown
 * @param load the load that rests on it now, empty if unknown
 */
public record Axle(
        AxlePosition position,
        WheelEnd left,
        WheelEnd right,
        Optional<Quantity> grossMass,
        Optional<Quantity> load) {

    /** Refuses loads no road vehicle has. */
    public Axle {
        grossMass.ifPresent(mass -> Sizes.mass("gross-mass", mass));
        load.ifPresent(mass -> Sizes.mass("load", mass));
    }

    /** Returns an axle with equal ends; masses unknown. */
    public static Axle of(AxlePosition position, WheelEnd bothEnds) {
        return of(position, bothEnds, bothEnds);
    }

    /** Returns an axle with the two ends; masses unknown. */
    public static Axle of(AxlePosition position, WheelEnd left, WheelEnd right) {
        return new Axle(position, left, right, Optional.empty(), Optional.empty());
    }

    /** Returns the same axle with the maker's greatest load. */
    public Axle withGrossMass(Quantity mass) {
        return new Axle(position, left, right, Optional.of(mass), load);
    }

    /** Returns the same axle with the load that rests on it now. */
    public Axle withLoad(Quantity mass) {
        return new Axle(position, left, right, grossMass, Optional.of(mass));
    }

    /** Returns the end on the given side. */
    public WheelEnd end(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Returns whether either end has a brake. */
    public boolean isBraked() {
        return left.isBraked() || right.isBraked();
    }

    /** Returns whether either end has an air chamber, and so a push rod to measure. */
    public boolean hasPushRod() {
        return left.hasPushRod() || right.hasPushRod();
    }

    /** Returns whether either end carries a spring brake. */
    public boolean hasSpringBrake() {
        return left.springBrake() || right.springBrake();
    }
}
