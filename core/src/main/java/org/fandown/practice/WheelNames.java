package org.fandown.practice;

import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** Reads the name of a wheel that a vehicle has. */
final class WheelNames {
    private static final String COUNT =
            "count the axles from the front through the whole combination";

    private WheelNames() {}

    static WheelId read(Node node, Vehicle vehicle) {
        String text = Values.text(node);
        WheelId wheel;
        try {
            wheel = WheelId.parse(text);
        } catch (IllegalArgumentException e) {
            throw Values.refuse(
                    node,
                    "this is not a wheel",
                    "the number of the axle and the side, such as 1L or 3R",
                    text.endsWith("l") || text.endsWith("r")
                            ? "write the side as a capital, L or R"
                            : COUNT);
        }
        if (!vehicle.hasWheel(wheel)) {
            throw Values.refuse(
                    node,
                    "this wheel is not on the vehicle",
                    "axles 1 to " + vehicle.axleCount() + ", left or right",
                    COUNT);
        }
        return wheel;
    }
}
