package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.air.FaultSize;
import org.fandown.document.Fields;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;
import org.fandown.document.Values;
import org.fandown.units.Dimension;
import org.fandown.units.Unit;
import org.fandown.vehicle.Vehicle;

/** Reads the faults of a scenario, each checked against the vehicle. */
final class FaultReader {
    private static final String FAULT = "fault";
    private static final String AT = "at";
    private static final String SIZE = "size";
    private static final String UNIT = "unit";
    private static final String LIST = "`fandown drive --list-faults` lists them all";

    private final Vehicle vehicle;

    FaultReader(Vehicle vehicle) {
        this.vehicle = vehicle;
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
        FaultCase made = make(fields, fault, size, at);
        requireFit(fields, made);
        return made;
    }

    /** Some sizes within the range are none, such as a gauge that is off by nothing. */
    private static FaultCase make(Fields fields, Fault fault, double size, String at) {
        try {
            return new FaultCase(fault, size, at);
        } catch (IllegalArgumentException e) {
            throw fields.refuse(
                    SIZE,
                    "that would be no fault: " + e.getMessage(),
                    FaultUnits.range(fault.size()),
                    "correct the size, or leave it out for the usual one");
        }
    }

    private String place(Fields fields, Fault fault) {
        if (fault.atWheel()) {
            if (!fields.has(AT)) {
                throw fields.missing(AT, "a wheel such as 2L");
            }
            return WheelNames.read(fields.node(AT), vehicle).toString();
        }
        if (!fields.has(AT)) {
            return "";
        }
        if (!fault.atUnit()) {
            throw fields.refuse(
                    AT, "this fault has no place to choose", "no 'at' here", "remove 'at'");
        }
        return unit(fields);
    }

    private String unit(Fields fields) {
        String unit = fields.text(AT);
        int last = vehicle.units().size();
        for (int number = 2; number <= last; number++) {
            if (unit.equals(UNIT + number)) {
                return unit;
            }
        }
        throw fields.refuse(
                AT,
                "the vehicle tows no such unit",
                last < 2
                        ? "a vehicle with a trailer"
                        : last == 2 ? "unit2" : "unit2 to unit" + last,
                "count the units from the front, the powered one being unit1");
    }

    private static double size(Fields fields, Fault fault) {
        FaultSize range = fault.size();
        if (range.equals(FaultSize.NONE)) {
            throw fields.refuse(
                    SIZE, "this fault is there or not", "no 'size' here", "remove 'size'");
        }
        double size = number(fields, range);
        if (!(size >= range.least() && size <= range.most())) {
            throw fields.refuse(
                    SIZE,
                    "this fault cannot have that size",
                    FaultUnits.range(range),
                    "correct the size, or leave it out for the usual one");
        }
        return size;
    }

    private static double number(Fields fields, FaultSize range) {
        if (range.unit().isEmpty()) {
            return part(fields.node(SIZE));
        }
        Optional<Unit> unit = FaultUnits.of(range);
        if (unit.isEmpty()) {
            return Amounts.plain(fields.number(SIZE, range.least(), range.most()));
        }
        return Amounts.size(fields.quantity(SIZE, unit.get().dimension()), unit.get());
    }

    /** What is missing, without the list of all there is. */
    private static String clause(String problem) {
        int end = problem.indexOf("; it has ");
        return end < 0 ? problem : problem.substring(0, end);
    }

    /** A part of the whole, as a share or as a plain number. */
    private static double part(Node node) {
        if (node instanceof ScalarNode scalar && scalar.kind() == ScalarNode.Kind.NUMBER) {
            return Amounts.plain(Values.number(node, 0, 1));
        }
        return Amounts.share(Values.quantity(node, Dimension.RATIO));
    }

    private void requireFit(Fields fields, FaultCase fault) {
        Optional<String> problem = fault.refusal(vehicle);
        if (problem.isPresent()) {
            throw fields.refuse(
                    FAULT,
                    "this vehicle cannot have this fault: " + clause(problem.get()),
                    "a fault of a part that the vehicle has",
                    "take another fault, or another vehicle; " + LIST);
        }
    }
}
