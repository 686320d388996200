package org.fandown.app.cli;

import java.util.List;
import org.fandown.air.Fault;
import org.fandown.air.FaultGroup;
import org.fandown.air.FaultSize;
import org.fandown.practice.FaultUnits;

/** Prints the catalogue of faults. */
final class FaultsText {
    private FaultsText() {}

    static void print(List<Fault> faults, Screen screen) {
        for (FaultGroup group : FaultGroup.values()) {
            List<Fault> those = faults.stream().filter(f -> f.group() == group).toList();
            if (!those.isEmpty()) {
                screen.heading(group.title());
                those.forEach(fault -> fault(fault, screen));
            }
        }
        screen.line("");
        screen.line(faults.size() + " faults. In a scenario:");
        screen.line("    faults:");
        screen.line("      - { fault: service-diaphragm-leak, at: 2L, size: 1.5 mm }");
        screen.done();
    }

    private static void fault(Fault fault, Screen screen) {
        screen.line("  " + fault.id());
        screen.wrapped("    ", fault.title() + place(fault) + size(fault));
        screen.wrapped("    ", fault.shows());
    }

    private static String place(Fault fault) {
        if (fault.atWheel()) {
            return ", at a wheel";
        }
        return fault.atUnit() ? ", at a towed unit" : "";
    }

    private static String size(Fault fault) {
        FaultSize size = fault.size();
        return size.equals(FaultSize.NONE)
                ? "."
                : ", " + FaultUnits.range(size) + " (usually " + FaultUnits.usual(size) + ").";
    }
}
