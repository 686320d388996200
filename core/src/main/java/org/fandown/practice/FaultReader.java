package org.fandown.practice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.air.FaultSize;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.document.Values;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Vehicle;

/** Reads the faults of a scenario, each checked against the vehicle. */
final class FaultReader {
    private static final String FAULT = "fault";
    private static final String AT = "at";
    private static final String SIZE = "size";
    private static final String LIST = "`fandown drive --list-faults` lists them all";

    /** Faults of the trailer supply knob, which a vehicle that tows nothing has not. */
    private static final Set<Fault> OF_TRAILER_KNOB =
            EnumSet.of(
                    Fault.TRAILER_KNOB_POPS_EARLY,
                    Fault.TRAILER_KNOB_POPS_LATE,
                    Fault.TRAILER_KNOB_STICKS,
                    Fault.PROTECTION_STUCK_OPEN,
                    Fault.PROTECTION_STUCK_SHUT);

    /** Faults of the parking knob, which only vehicles with spring brakes have. */
    private static final Set<Fault> OF_PARKING_KNOB =
            EnumSet.of(
                    Fault.PARKING_POPS_EARLY, Fault.PARKING_POPS_LATE, Fault.PARKING_KNOB_STICKS);

    private final Vehicle vehicle;
    private final AirSystem sound;
    private AirSetup setup = AirSetup.SOUND;

    FaultReader(Vehicle vehicle, AirSystem sound) {
        this.vehicle = vehicle;
        this.sound = sound;
    }

    List<FaultCase> read(List<Node> items) {
        List<FaultCase> faults = new ArrayList<>();
        for (Node item : items) {
            faults.add(read(Fields.of(item)));
        }
        return faults;
    }

    private FaultCase read(Fields fields) {
        Map<String, Fault> byId = new TreeMap<>();
        for (Fault fault : Fault.values()) {
            byId.put(fault.id(), fault);
        }
        String id = fields.text(FAULT);
        Fault fault = byId.get(id);
        if (fault == null) {
            throw fields.refuse(
                    FAULT,
                    "this is not a fault the program knows",
                    "a fault of the catalogue, such as primary-leak",
                    Nearest.advice(id, byId.keySet(), LIST));
        }
        String at = place(fields, fault);
        double size = fields.has(SIZE) ? size(fields, fault) : fault.size().usual();
        fields.end();
        FaultCase made = new FaultCase(fault, size, at);
        requireFit(fields, made);
        return made;
    }

    private String place(Fields fields, Fault fault) {
        if (!fault.atWheel()) {
            if (fields.has(AT)) {
                throw fields.refuse(
                        AT, "this fault has no place to choose", "no 'at' here", "remove 'at'");
            }
            return "";
        }
        if (!fields.has(AT)) {
            throw fields.missing(AT, "a wheel such as 2L");
        }
        return WheelNames.read(fields.node(AT), vehicle).toString();
    }

    private static double size(Fields fields, Fault fault) {
        FaultSize range = fault.size();
        if (range.equals(FaultSize.NONE)) {
            throw fields.refuse(
                    SIZE, "this fault is there or not", "no 'size' here", "remove 'size'");
        }
        double size =
                range.unit().isEmpty()
                        ? part(fields.node(SIZE))
                        : inUnit(fields, FaultUnits.of(range));
        if (!(size >= range.least() && size <= range.most())) {
            throw fields.refuse(
                    SIZE,
                    "this fault cannot have that size",
                    FaultUnits.range(range),
                    "correct the size, or leave it out for the usual one");
        }
        return size;
    }

    private static double inUnit(Fields fields, Unit unit) {
        Quantity size = fields.quantity(SIZE, unit.dimension());
        return size.valueIn(unit);
    }

    /** A part of the whole, as a share or as a plain number. */
    private static double part(Node node) {
        if (node instanceof ScalarNode scalar && scalar.kind() == ScalarNode.Kind.NUMBER) {
            return Values.number(node, 0, 1);
        }
        return Values.quantity(node, Dimension.RATIO).valueIn(Unit.PERCENT) / 100;
    }

    private void requireFit(Fields fields, FaultCase fault) {
        requireKnob(fields, fault.fault());
        try {
            setup = fault.in(setup);
            AirSystem unused = AirSystem.of(vehicle, setup);
        } catch (IllegalArgumentException e) {
            throw unfit(fields, String.valueOf(e.getMessage()));
        }
    }

    private void requireKnob(Fields fields, Fault fault) {
        if (OF_TRAILER_KNOB.contains(fault) && sound.trailerKnobIn().isEmpty()) {
            throw unfit(fields, "it tows nothing");
        }
        if (OF_PARKING_KNOB.contains(fault) && sound.parkingKnobIn().isEmpty()) {
            throw unfit(fields, "it has no parking knob");
        }
    }

    private static DocumentException unfit(Fields fields, String why) {
        return fields.refuse(
                FAULT,
                "this vehicle cannot have this fault: " + why,
                "a fault of a part that the vehicle has",
                "take another fault, or another vehicle; " + LIST);
    }
}
