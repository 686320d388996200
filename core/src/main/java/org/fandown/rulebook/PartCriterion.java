package org.fandown.rulebook;

import java.util.Optional;
import org.fandown.rulebook.Applies.Criterion;
import org.fandown.vehicle.Part;
import org.fandown.vehicle.Vehicle;

/** Whether a vehicle has a part, where its file may not say. */
final class PartCriterion {
    private PartCriterion() {}

    static Criterion has(Part part, boolean wanted) {
        return vehicle -> {
            if (vehicle.has(part)) {
                return Fit.of(wanted);
            }
            return unsaid(part, vehicle).map(Fit::unknown).orElseGet(() -> Fit.of(!wanted));
        };
    }

    /** What the vehicle file leaves out, so that the part may be there though it is not named. */
    private static Optional<String> unsaid(Part part, Vehicle vehicle) {
        boolean unknown =
                switch (part) {
                    case ABS -> vehicle.units().stream().anyMatch(u -> u.abs().isEmpty());
                    case MANUAL_ADJUSTERS, AUTOMATIC_ADJUSTERS ->
                            vehicle.wheels().stream()
                                    .map(vehicle::wheel)
                                    .anyMatch(
                                            end ->
                                                    CheckScope.isExposed(end)
                                                            && end.adjuster().isEmpty());
                    case SUPPLY_RESERVOIR ->
                            vehicle.powerUnit().air().kind().isEmpty()
                                    && vehicle.powerUnit().reservoirs().isEmpty();
                    default -> false;
                };
        return unknown ? Optional.of("whether it has " + name(part)) : Optional.empty();
    }

    private static String name(Part part) {
        return switch (part) {
            case ABS -> "ABS";
            case MANUAL_ADJUSTERS -> "manual slack adjusters";
            case AUTOMATIC_ADJUSTERS -> "automatic slack adjusters";
            default -> "a supply reservoir";
        };
    }
}
