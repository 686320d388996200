package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.units.Quantity;

/**
 * One end of an axle: its foundation brake and what works it.
 *
 * @param brake the foundation brake
 * @param chamber the brake chamber, empty if no air chamber works this brake
 * @param springBrake whether the chamber carries a spring brake
 * @param adjuster how the clearance is kept, empty if unknown
 * @param arm the slack adjuster's effective length, empty if unknown or there is none
 * @param lining the form of the lining, empty if unknown
 * @param drumRadius the radius of the drum's rubbing face, empty if unknown or there is none
 * @param tyreRadius the rolling radius of the tyre, empty if unknown
 */
public record WheelEnd(
        BrakeKind brake,
        Optional<Chamber> chamber,
        boolean springBrake,
        Optional<Adjuster> adjuster,
        Optional<Quantity> arm,
        Optional<Lining> lining,
        Optional<Quantity> drumRadius,
        Optional<Quantity> tyreRadius) {

    /** Refuses parts that the kind of brake cannot have. */
    public WheelEnd {
        arm.ifPresent(Sizes::arm);
        drumRadius.ifPresent(Sizes::drumRadius);
        tyreRadius.ifPresent(Sizes::tyreRadius);
        WheelEndRules.require(brake, chamber, springBrake);
        WheelEndRules.requireParts(
                brake,
                chamber.isPresent(),
                adjuster,
                arm.isPresent(),
                lining,
                drumRadius.isPresent());
    }

    /** Returns an end without a brake. */
    public static WheelEnd unbraked() {
        return of(BrakeKind.NONE);
    }

    /** Returns a brake without an air chamber, for example a hydraulic one. */
    public static WheelEnd of(BrakeKind brake) {
        return plain(brake, Optional.empty(), false);
    }

    /** Returns a brake worked by a chamber; all else unknown. */
    public static WheelEnd of(BrakeKind brake, Chamber chamber, boolean springBrake) {
        return plain(brake, Optional.of(chamber), springBrake);
    }

    private static WheelEnd plain(BrakeKind brake, Optional<Chamber> chamber, boolean spring) {
        return new WheelEnd(
                brake,
                chamber,
                spring,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Returns the same end with another chamber. */
    public WheelEnd withChamber(Chamber other) {
        return new WheelEnd(
                brake,
                Optional.of(other),
                springBrake,
                adjuster,
                arm,
                lining,
                drumRadius,
                tyreRadius);
    }

    /** Returns the same end with the given adjuster. */
    public WheelEnd withAdjuster(Adjuster kind) {
        return new WheelEnd(
                brake,
                chamber,
                springBrake,
                Optional.of(kind),
                arm,
                lining,
                drumRadius,
                tyreRadius);
    }

    /** Returns the same end with the given effective length of its slack adjuster. */
    public WheelEnd withArm(Quantity length) {
        return new WheelEnd(
                brake,
                chamber,
                springBrake,
                adjuster,
                Optional.of(length),
                lining,
                drumRadius,
                tyreRadius);
    }

    /** Returns the same end with the given form of lining. */
    public WheelEnd withLining(Lining form) {
        return new WheelEnd(
                brake,
                chamber,
                springBrake,
                adjuster,
                arm,
                Optional.of(form),
                drumRadius,
                tyreRadius);
    }

    /** Returns the same end with the given radius of the drum's rubbing face. */
    public WheelEnd withDrumRadius(Quantity radius) {
        return new WheelEnd(
                brake,
                chamber,
                springBrake,
                adjuster,
                arm,
                lining,
                Optional.of(radius),
                tyreRadius);
    }

    /** Returns the same end with the given rolling radius of the tyre. */
    public WheelEnd withTyreRadius(Quantity radius) {
        return new WheelEnd(
                brake,
                chamber,
                springBrake,
                adjuster,
                arm,
                lining,
                drumRadius,
                Optional.of(radius));
    }

    /** Returns whether there is a brake at all. */
    public boolean isBraked() {
        return brake != BrakeKind.NONE;
    }

    /** Returns whether a push rod can be measured here: a brake with an air chamber. */
    public boolean hasPushRod() {
        return chamber.isPresent();
    }
}
