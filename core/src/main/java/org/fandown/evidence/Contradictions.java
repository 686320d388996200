package org.fandown.evidence;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.units.Quantity;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.jspecify.annotations.Nullable;

/** Refuses entries of an inspection that cannot hold together: one of them is a slip. */
final class Contradictions {
    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2099;

    private Contradictions() {}

    static void requireYear(Fields inspection, int year) {
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw inspection.refuse(
                    "moment",
                    "nothing can have been inspected in the year " + year,
                    "the years " + FIRST_YEAR + " to " + LAST_YEAR,
                    "correct the year");
        }
    }

    /** A vehicle is built before it is inspected. */
    static void requireBuilt(Fields inspection, Vehicle vehicle, LocalDate day) {
        for (VehicleUnit unit : vehicle.units()) {
            Optional<LocalDate> built = unit.build().date().map(date -> date.day());
            if (built.isPresent() && built.get().isAfter(day)) {
                throw inspection.refuse(
                        "moment",
                        "unit " + unit.id() + " was not built before " + unit.build().date().get(),
                        "a moment after every unit was built",
                        "correct the moment, or the build date in the vehicle file");
            }
        }
    }

    /** The compressor begins to pump at less pressure than it stops at. */
    static void requireGovernor(Fields readings, Map<Check, Reading> noted) {
        Optional<Quantity> cutIn = lowest(noted.get(Check.GOVERNOR_CUT_IN));
        Optional<Quantity> cutOut = highest(noted.get(Check.GOVERNOR_CUT_OUT));
        if (cutIn.isPresent()
                && cutOut.isPresent()
                && cutIn.get().valueIn(cutOut.get().unit()) >= cutOut.get().value()) {
            throw readings.refuse(
                    Check.GOVERNOR_CUT_IN.id(),
                    "the cut-in " + cutIn.get() + " is not below the cut-out " + cutOut.get(),
                    "less than " + cutOut.get(),
                    "look whether the two are swapped");
        }
    }

    private static Optional<Quantity> lowest(@Nullable Reading reading) {
        return reading instanceof Reading.Value value
                ? value.values().stream().reduce((a, b) -> b.value() < a.value() ? b : a)
                : Optional.empty();
    }

    private static Optional<Quantity> highest(@Nullable Reading reading) {
        return reading instanceof Reading.Value value
                ? value.values().stream().reduce((a, b) -> b.value() > a.value() ? b : a)
                : Optional.empty();
    }
}
