package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.check.Component;

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
    private static java.util.Optional<String> sign(FaultCase fault, Component part) {
        String text =
                switch (part) {
                    case BRAKE_CHAMBERS -> chamber(fault);
                    case TRAILER_CONNECTIONS ->
                            fault.fault() == Fault.LINES_CROSSED ? "lines crossed" : "";
                    case AIR_LINES -> line(fault.fault());
                    default -> "";
                };
        return text.isEmpty() ? java.util.Optional.empty() : java.util.Optional.of(text);
    }

    private static String chamber(FaultCase fault) {
        return fault.fault() == Fault.SPRING_CAGED
                ? "a release bolt stands out of the chamber at " + fault.place()
                : "";
    }

    private static String line(Fault fault) {
        return switch (fault) {
            case SUPPLY_LINE_NARROW -> "supply line kinked";
            case CONTROL_LINE_NARROW -> "control line kinked";
            default -> "";
        };
    }
}
