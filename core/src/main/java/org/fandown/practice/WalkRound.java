package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.check.Component;
import org.fandown.units.Decimals;

/** What a person sees who looks at a part of the vehicle. */
final class WalkRound {
    private WalkRound() {}

    /** Returns what is wrong with a part, in words or as conditions; empty if nothing is seen. */
    static List<String> found(PracticeTruck truck, Component part) {
        List<String> found = new ArrayList<>();
        found.addAll(truck.scenario().parts().getOrDefault(part, List.of()));
        for (FaultCase fault : truck.scenario().faults()) {
            sign(fault, part).ifPresent(found::add);
        }
        return found;
    }

    /** Faults of the air system that are seen from outside. */
    private static Optional<String> sign(FaultCase fault, Component part) {
        String text =
                switch (part) {
                    case BRAKE_CHAMBERS -> chamber(fault);
                    case TRAILER_CONNECTIONS ->
                            fault.fault() == Fault.LINES_CROSSED ? "lines crossed" : "";
                    case AIR_LINES -> line(fault.fault());
                    default -> "";
                };
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static String chamber(FaultCase fault) {
        return switch (fault.fault()) {
            case SPRING_CAGED -> "a release bolt stands out of the chamber at " + fault.place();
            case CHAMBER_UNEQUAL ->
                    "type "
                            + Decimals.format(fault.size(), 0)
                            + " stands on the chamber at "
                            + fault.place();
            default -> "";
        };
    }

    private static String line(Fault fault) {
        return switch (fault) {
            case SUPPLY_LINE_NARROW -> "supply line kinked";
            case CONTROL_LINE_NARROW -> "control line kinked";
            default -> "";
        };
    }
}
