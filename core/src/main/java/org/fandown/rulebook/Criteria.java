package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fandown.rulebook.Applies.Criterion;
import org.fandown.units.Unit;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.BuildDate;
import org.fandown.vehicle.BuildStandard;
import org.fandown.vehicle.Chassis;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.VehicleUnit;

/** The criteria on a vehicle as a whole that a rule's {@code applies} can name. */
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

    static Fit built(VehicleUnit unit, Optional<LocalDate> from, Optional<LocalDate> before) {
        if (unit.built().isEmpty()) {
            return Fit.unknown("when unit " + unit.id() + " was built");
        }
        BuildDate built = unit.built().get();
        boolean first = between(built.day(), from, before);
        boolean last = between(lastPossible(built), from, before);
        return first == last
                ? Fit.of(first)
                : Fit.unknown("on which day of " + built + " unit " + unit.id() + " was built");
    }

    private static boolean between(
            LocalDate day, Optional<LocalDate> from, Optional<LocalDate> before) {
        return from.map(f -> !day.isBefore(f)).orElse(true)
                && before.map(day::isBefore).orElse(true);
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

    /** Edges on a plain number. */
    record Edges(double least, boolean leastPasses, double most, boolean mostPasses) {
        boolean hold(double value) {
            boolean aboveLeast = leastPasses ? value >= least : value > least;
            boolean belowMost = mostPasses ? value <= most : value < most;
            return aboveLeast && belowMost;
        }
    }
}
