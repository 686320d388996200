package org.fandown.vehicle;

import java.util.List;
import java.util.Optional;

/** What makes a unit, or a combination of units, impossible. */
final class UnitRules {
    static final int MOST_AXLES = 16;
    static final int MOST_UNITS = 5;
    private static final int LONGEST_NAME = 200;

    private UnitRules() {}

    static void requireName(String key, String text) {
        if (text.isBlank() || !text.equals(text.strip()) || text.length() > LONGEST_NAME) {
            throw new ImpossibleVehicleException(
                    key,
                    "the text is empty, padded or too long",
                    "1 to " + LONGEST_NAME + " characters",
                    "write a short name");
        }
    }

    static void requireForm(UnitKind kind, Optional<TrailerForm> form) {
        boolean trailer = kind == UnitKind.TRAILER;
        if (form.isPresent() != trailer) {
            throw new ImpossibleVehicleException(
                    "form",
                    trailer ? "a trailer needs a form" : "a " + Labels.of(kind) + " has no form",
                    "semi or full, on a trailer only",
                    trailer ? "write 'form: semi' or 'form: full'" : "take the line out");
        }
    }

    static void requireBody(UnitKind kind, Body body) {
        if (body.seats().isPresent() && kind != UnitKind.BUS) {
            throw new ImpossibleVehicleException(
                    "seats",
                    "seats are given for a " + Labels.of(kind),
                    "seats on a bus only",
                    "take the line out, or write 'kind: bus'");
        }
        if (body.chassis().isPresent() && kind != UnitKind.BUS && kind != UnitKind.TRUCK) {
            throw new ImpossibleVehicleException(
                    "chassis",
                    "a chassis is given for a " + Labels.of(kind),
                    "chassis on a bus or truck only",
                    "take the line out");
        }
    }

    static void requireAxles(UnitKind kind, BrakePower brakes, List<Axle> axles) {
        int least = kind.isPowered() ? 2 : 1;
        if (axles.size() < least || axles.size() > MOST_AXLES) {
            throw new ImpossibleVehicleException(
                    "axles",
                    "a " + Labels.of(kind) + " cannot have " + axles.size() + " axles",
                    least + " to " + MOST_AXLES,
                    "list each axle from front to back");
        }
        for (Axle axle : axles) {
            requirePosition(kind, axle.position());
        }
        if (kind.isPowered() && axles.stream().noneMatch(UnitRules::steers)) {
            throw new ImpossibleVehicleException(
                    "axles",
                    "no axle of the " + Labels.of(kind) + " steers",
                    "at least one axle with position: steer",
                    "give the steering axle its position");
        }
        requirePower(kind, brakes, axles);
    }

    private static boolean steers(Axle axle) {
        return axle.position() == AxlePosition.STEER;
    }

    static void requirePosition(UnitKind kind, AxlePosition position) {
        if (!position.fits(kind)) {
            throw new ImpossibleVehicleException(
                    "position",
                    "a " + Labels.of(kind) + " has no " + Labels.of(position) + " axle",
                    kind.isPowered() ? "steer, drive, tag, other" : "trailer, other",
                    "give the position the axle has on this unit");
        }
    }

    private static void requirePower(UnitKind kind, BrakePower brakes, List<Axle> axles) {
        if (brakes == BrakePower.NONE && kind.isPowered()) {
            throw new ImpossibleVehicleException(
                    "brakes",
                    "a " + Labels.of(kind) + " without air brakes is not looked at here",
                    "air, air-over-hydraulic",
                    "give what works its service brakes");
        }
        boolean air = brakes == BrakePower.AIR;
        for (Axle axle : axles) {
            requireChamber(air, axle.left().isBraked(), axle.left().hasPushRod());
            requireChamber(air, axle.right().isBraked(), axle.right().hasPushRod());
        }
        if (air && axles.stream().noneMatch(Axle::hasPushRod)) {
            throw new ImpossibleVehicleException(
                    "brakes",
                    "the unit has air brakes, but no axle has a brake chamber",
                    "at least one axle with a chamber",
                    "give the chambers, or write what does work the brakes");
        }
    }

    static void requireChamber(boolean air, boolean braked, boolean chamber) {
        if (air && braked && !chamber) {
            throw new ImpossibleVehicleException(
                    "chamber",
                    "an air brake needs its chamber",
                    "for example 'chamber: clamp 30'",
                    "read mount and type on the chamber; without a brake write 'brake: none'");
        }
        if (!air && chamber) {
            throw new ImpossibleVehicleException(
                    "chamber",
                    "a chamber is given, but air does not work the wheels of this unit",
                    "a chamber on a unit with brakes: air",
                    "take the chamber out, or write 'brakes: air'");
        }
    }

    static void requireOrder(List<VehicleUnit> units) {
        if (units.isEmpty() || units.size() > MOST_UNITS) {
            throw new ImpossibleVehicleException(
                    "units",
                    "a vehicle cannot have " + units.size() + " units",
                    "1 to " + MOST_UNITS,
                    "list each unit from front to back");
        }
        for (int i = 0; i < units.size(); i++) {
            UnitKind kind = units.get(i).kind();
            if (kind.isPowered() != (i == 0)) {
                throw new ImpossibleVehicleException(
                        "units",
                        "unit " + (i + 1) + " is a " + Labels.of(kind),
                        "a truck, tractor or bus first, behind it trailers and dollies",
                        "list the units from front to back");
            }
            if (kind == UnitKind.DOLLY && i + 1 < units.size()) {
                requireSemiTrailer(i + 2, units.get(i + 1));
            }
        }
    }

    private static void requireSemiTrailer(int number, VehicleUnit unit) {
        if (unit.form().isEmpty() || unit.form().get() != TrailerForm.SEMI) {
            throw new ImpossibleVehicleException(
                    "units",
                    "unit " + number + " cannot be carried by the dolly in front of it",
                    "a semi-trailer behind a dolly",
                    "write 'form: semi', or take the dolly out");
        }
    }

    static void requireDistinctIds(List<VehicleUnit> units) {
        for (int i = 0; i < units.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (units.get(i).id().equals(units.get(j).id())) {
                    throw new ImpossibleVehicleException(
                            "units",
                            "units "
                                    + (j + 1)
                                    + " and "
                                    + (i + 1)
                                    + " have the same id '"
                                    + units.get(i).id()
                                    + "'",
                            "a different id for each unit",
                            "give the unit number of each");
                }
            }
        }
    }
}
