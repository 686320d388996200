package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fandown.rulebook.Applies.Criterion;
import org.fandown.rulebook.Applies.WheelCriterion;
import org.fandown.units.Unit;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.BuildDate;
import org.fandown.vehicle.BuildStandard;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Chassis;
import org.fandown.vehicle.Lining;
import org.fandown.vehicle.Part;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.VehicleUnit;

/** The criteria a rule's {@code applies} can name. */
final class Criteria {
    private Criteria() {}

    static Criterion vehicles(int least, int most) {
        return vehicle -> {
            int count = CheckScope.airBrakedVehicles(vehicle);
            return Fit.of(count >= least && count <= most);
        };
    }

    static Criterion kinds(List<UnitKind> kinds) {
        return vehicle -> Fit.of(kinds.contains(vehicle.powerUnit().kind()));
    }

    static Criterion has(Part part, boolean wanted) {
        return vehicle -> {
            if (part == Part.ABS && vehicle.units().stream().anyMatch(u -> u.abs().isEmpty())) {
                return vehicle.has(part) ? Fit.of(wanted) : Fit.unknown("whether it has ABS");
            }
            return Fit.of(vehicle.has(part) == wanted);
        };
    }

    static Criterion exposedPushRods(boolean wanted) {
        return vehicle -> Fit.of(CheckScope.hasExposedPushRods(vehicle) == wanted);
    }

    static Criterion use(Use use) {
        return vehicle -> Fit.of(vehicle.use() == use);
    }

    static Criterion brakes(BrakePower power) {
        return vehicle -> Fit.of(vehicle.powerUnit().brakes() == power);
    }

    static Criterion standard(BuildStandard standard, boolean wanted) {
        return vehicle -> Fit.of(vehicle.powerUnit().standards().contains(standard) == wanted);
    }

    static Criterion built(Optional<LocalDate> from, Optional<LocalDate> before) {
        return vehicle -> built(vehicle.powerUnit(), from, before);
    }

    static Criterion trailersBuilt(Optional<LocalDate> from, Optional<LocalDate> before) {
        return vehicle -> {
            Fit fit = Fit.of(!vehicle.trailers().isEmpty());
            for (VehicleUnit trailer : vehicle.trailers()) {
                fit = fit.and(built(trailer, from, before));
            }
            return fit;
        };
    }

    static WheelCriterion wheelUnitBuilt(Optional<LocalDate> from, Optional<LocalDate> before) {
        return (vehicle, wheel) -> built(vehicle.unitOf(wheel.axle()), from, before);
    }

    private static Fit built(
            VehicleUnit unit, Optional<LocalDate> from, Optional<LocalDate> before) {
        if (unit.built().isEmpty()) {
            return Fit.unknown("when unit " + unit.id() + " was built");
        }
        BuildDate built = unit.built().get();
        boolean lateEnough = from.map(f -> !lastPossible(built).isBefore(f)).orElse(true);
        boolean earlyEnough = before.map(built.day()::isBefore).orElse(true);
        return Fit.of(lateEnough && earlyEnough);
    }

    private static LocalDate lastPossible(BuildDate built) {
        return built.precision() == BuildDate.Precision.MONTH
                ? built.day().plusMonths(1).minusDays(1)
                : built.day();
    }

    static Criterion mass(Edges edges) {
        return vehicle -> {
            double kilograms = 0;
            for (VehicleUnit unit : vehicle.units()) {
                Optional<Double> mass =
                        unit.registeredMass()
                                .or(unit::grossMass)
                                .map(m -> m.valueIn(Unit.KILOGRAM));
                if (mass.isEmpty()) {
                    return Fit.unknown("the gross mass of unit " + unit.id());
                }
                kilograms += mass.get();
            }
            return Fit.of(edges.hold(kilograms));
        };
    }

    static Criterion chassis(Chassis wanted) {
        return vehicle ->
                vehicle.powerUnit()
                        .chassis()
                        .map(c -> Fit.of(c == wanted))
                        .orElseGet(() -> Fit.unknown("the chassis it is built on"));
    }

    static Criterion seats(Edges edges) {
        return vehicle ->
                vehicle.powerUnit().seats().isEmpty()
                        ? Fit.unknown("the number of seats")
                        : Fit.of(edges.hold(vehicle.powerUnit().seats().getAsInt()));
    }

    static WheelCriterion steerAxle(boolean wanted) {
        return (vehicle, wheel) ->
                Fit.of((vehicle.axle(wheel.axle()).position() == AxlePosition.STEER) == wanted);
    }

    static WheelCriterion brake(BrakeKind kind) {
        return (vehicle, wheel) -> Fit.of(vehicle.wheel(wheel).brake() == kind);
    }

    static WheelCriterion chamber(Chamber wanted) {
        return (vehicle, wheel) ->
                Fit.of(
                        vehicle.wheel(wheel)
                                .chamber()
                                .map(
                                        c ->
                                                c.sameSizeAs(wanted)
                                                        && c.longStroke() == wanted.longStroke())
                                .orElse(false));
    }

    static WheelCriterion lining(Lining lining) {
        return (vehicle, wheel) ->
                vehicle.wheel(wheel)
                        .lining()
                        .map(l -> Fit.of(l == lining))
                        .orElseGet(() -> Fit.unknown("the form of the lining at " + wheel));
    }

    /** Edges on a plain number. */
    record Edges(double least, boolean leastPasses, double most, boolean mostPasses) {
        boolean hold(double value) {
            boolean aboveLeast = leastPasses ? value >= least : value > least;
            boolean belowMost = mostPasses ? value <= most : value < most;
            return aboveLeast && belowMost;
        }
    }
}
