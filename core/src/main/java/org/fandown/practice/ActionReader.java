package org.fandown.practice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fandown.air.AirOutlet;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.check.Component;
import org.fandown.document.DocumentException;
import org.fandown.document.Names;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.units.Dimension;
import org.fandown.vehicle.Vehicle;

/** Reads what a person does, checked against the vehicle it is done with. */
final class ActionReader {
    private static final Set<Verb> FOR_TRAILERS = EnumSet.of(Verb.TRAILER_VALVE, Verb.HAND_VALVE);
    private static final String DRAIN = "drain-";
    private static final String OF_UNIT = ".reservoir";

    private final Vehicle vehicle;
    private final List<String> reservoirs;

    ActionReader(Vehicle vehicle) {
        this.vehicle = vehicle;
        this.reservoirs = reservoirs(vehicle);
    }

    /** The names of the reservoirs with a drain; those of towed units by their unit alone. */
    private static List<String> reservoirs(Vehicle vehicle) {
        List<String> names = new ArrayList<>();
        for (AirOutlet outlet : AirSystem.of(vehicle, AirSetup.SOUND).outlets()) {
            if (outlet.kind() == AirOutlet.Kind.DRAIN) {
                names.add(outlet.name().substring(DRAIN.length()).replace(OF_UNIT, ""));
            }
        }
        return List.copyOf(names);
    }

    OperatorAction read(Verb verb, Node node) {
        if (FOR_TRAILERS.contains(verb) && !vehicle.isCombination()) {
            throw Values.refuse(
                    node,
                    "this vehicle tows nothing, so there is no such valve",
                    "a vehicle with a trailer",
                    "remove the step, or take another vehicle");
        }
        if (verb.argument() == Argument.WHEEL) {
            return new OperatorAction(verb, WheelNames.read(node, vehicle).toString());
        }
        requireQuantity(verb.argument(), node);
        String value = Values.text(node);
        if (!verb.argument().accepts(value, verb.words())) {
            throw Values.refuse(
                    node,
                    "'" + verb.id() + "' cannot be done so",
                    OperatorAction.allowed(verb),
                    advice(verb, value));
        }
        requireOn(verb, node, value);
        return new OperatorAction(verb, value);
    }

    /** Words a figure without unit and the like as everywhere else. */
    private static void requireQuantity(Argument argument, Node node) {
        if (argument == Argument.TRAVEL) {
            Values.quantity(node, Dimension.RATIO);
        } else if (argument == Argument.ENGINE_SPEED) {
            Values.quantity(node, EnumSet.of(Dimension.RATIO, Dimension.ROTATION));
        }
    }

    private static String advice(Verb verb, String value) {
        return switch (verb.argument()) {
            case WORD -> Nearest.advice(value, verb.words(), "take one of these words");
            case PART ->
                    Nearest.advice(
                            value,
                            Names.byKebab(Component.values()).keySet(),
                            "docs/formats.md lists the parts");
            default -> "correct the value";
        };
    }

    private void requireOn(Verb verb, Node node, String value) {
        Argument argument = verb.argument();
        if (argument == Argument.RESERVOIR && !reservoirs.contains(value)) {
            throw Values.refuse(
                    node,
                    "this vehicle has no such reservoir with a drain",
                    String.join(", ", reservoirs),
                    Nearest.advice(value, reservoirs, "take one of these"));
        }
        if (!argument.isOn(vehicle, value)) {
            throw absent(argument, node);
        }
    }

    private DocumentException absent(Argument argument, Node node) {
        int towed = vehicle.units().size() - 1;
        if (argument == Argument.COUPLING) {
            return Values.refuse(
                    node,
                    "no lines to a trailer are there",
                    towed == 0 ? "a vehicle with a trailer" : "1 to " + towed,
                    "name the unit in front of the lines, the powered one being 1");
        }
        return Values.refuse(
                node,
                "the vehicle has no such place",
                "cab, front, rear, wheels of axles 1 to "
                        + vehicle.axleCount()
                        + ", 'reservoirs 1'"
                        + (towed > 0 ? " to 'reservoirs " + (towed + 1) + "'" : "")
                        + (towed > 0 ? ", 'coupling 1' to 'coupling " + towed + "'" : ""),
                "count units and axles from the front");
    }
}
