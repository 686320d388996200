package org.fandown.vehicle;

import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;

/**
 * Reads a vehicle from the tree of a vehicle file.
 *
 * <p>Strict: unknown keys, impossible values and parts that contradict each other are refused with
 * their place in the file. Nothing is guessed; what the file leaves out stays unknown, but for the
 * documented defaults (a trailer is a semi-trailer, brakes are air brakes, an odometer is on a
 * powered unit only, an axle of a towed unit has the position {@code trailer}).
 */
public final class VehicleReader {
    private VehicleReader() {}

    /**
     * Reads a vehicle.
     *
     * @param node the tree of a vehicle file, or the part of another file that holds a vehicle
     * @return the vehicle
     * @throws DocumentException if the tree is not a vehicle that can exist
     */
    public static Vehicle read(Node node) {
        Fields fields = Fields.of(node);
        String name = fields.text("name");
        Use use = fields.choice("use", Use.values());
        List<Node> unitNodes = fields.list("units");
        fields.end();
        List<VehicleUnit> units = unitNodes.stream().map(UnitReader::read).toList();
        return Guard.at(() -> new Vehicle(name, use, units), fields);
    }
}
