package org.fandown.air;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirSetup.Defect;
import org.fandown.air.AirSetup.Spring;

/**
 * What a fault is and what it changes. Immutable; each method returns one that says or changes
 * more.
 *
 * <p>Names of volumes and ways may hold {@code {wheel}}, {@code {unit}} and {@code {front}}, which
 * the place of the fault fills in.
 */
record FaultSpec(
        FaultGroup group,
        String title,
        String shows,
        Place place,
        FaultSize size,
        List<Change> changes) {
    /** Part of a hole's area that counts, for a sharp edge. */
    private static final double SHARP = 0.65;

    /** What place a fault needs to be told. */
    enum Place {
        FIXED,
        WHEEL,
        UNIT
    }

    /** How a fault changes a setup. */
    @FunctionalInterface
    interface Change {
        AirSetup apply(AirSetup setup, double size, FaultSite site);
    }

    FaultSpec {
        changes = List.copyOf(changes);
    }

    static FaultSpec of(FaultGroup group, String title, String shows) {
        return new FaultSpec(group, title, shows, Place.FIXED, FaultSize.NONE, List.of());
    }

    FaultSpec atWheel() {
        return new FaultSpec(group, title, shows, Place.WHEEL, size, changes);
    }

    FaultSpec atUnit() {
        return new FaultSpec(group, title, shows, Place.UNIT, size, changes);
    }

    FaultSpec size(double least, double usual, double most, String unit) {
        FaultSize range = FaultSize.of(least, usual, most, unit);
        return new FaultSpec(group, title, shows, place, range, changes);
    }

    /** A size that is a part of what is usual. */
    FaultSpec part(double least, double usual, double most) {
        return size(least, usual, most, "");
    }

    /** A size that is the diameter of a hole. */
    FaultSpec hole(double least, double usual, double most) {
        return size(least, usual, most, "mm");
    }

    FaultSpec leak(String volume) {
        return change((s, x, at) -> s.withLeak(at.name(volume), area(x)));
    }

    FaultSpec bridge(String from, String to) {
        return change((s, x, at) -> s.withBridge(at.name(from), at.name(to), area(x)));
    }

    FaultSpec jam(String link, double opening) {
        return change((s, x, at) -> s.withJam(at.name(link), opening));
    }

    /** Its size is the opening at which a part is stuck. */
    FaultSpec stuck(String link) {
        return change((s, x, at) -> s.withJam(at.name(link), x));
    }

    /** Its size is the part that is left of a way. */
    FaultSpec narrow(String link) {
        return change((s, x, at) -> s.withRestriction(at.name(link), x));
    }

    /** Its size is the part of a reservoir that is full of water. */
    FaultSpec water(String reservoir) {
        return change((s, x, at) -> flooded(s, at.name(reservoir), x));
    }

    /** Its size is the number to set. */
    FaultSpec set(AirDefault what) {
        return change((s, x, at) -> s.with(what, x));
    }

    FaultSpec defect(Defect what) {
        return change((s, x, at) -> s.with(what));
    }

    FaultSpec spring(Spring state) {
        return change((s, x, at) -> s.withSpring(at.wheel(), state));
    }

    /** Says that a vehicle must have a volume or part, where the change itself names none. */
    FaultSpec needs(String part) {
        return change((s, x, at) -> s.withNeed(at.name(part)));
    }

    FaultSpec change(Change more) {
        List<Change> all = new ArrayList<>(changes);
        all.add(more);
        return new FaultSpec(group, title, shows, place, size, all);
    }

    AirSetup apply(AirSetup setup, double x, FaultSite site) {
        AirSetup changed = setup;
        for (Change each : changes) {
            changed = each.apply(changed, x, site);
        }
        return changed;
    }

    private static AirSetup flooded(AirSetup setup, String reservoir, double part) {
        double before = setup.water().getOrDefault(reservoir, 0.0);
        return setup.withWater(reservoir, Math.min(AirSetup.MOST_WATER, before + part));
    }

    private static double area(double millimetres) {
        return SHARP * Math.PI / 4 * millimetres * millimetres;
    }
}
