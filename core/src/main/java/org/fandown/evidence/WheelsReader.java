package org.fandown.evidence;

import java.util.Map;
import java.util.TreeMap;
import org.fandown.document.Fields;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** Reads what was noted at the wheels, one after the other. */
final class WheelsReader {
    /** The key under which stands what held at every wheel. */
    private static final String ALL = "all";

    private static final String COUNT =
            "count the axles from the front through the whole combination";

    private final Vehicle vehicle;

    WheelsReader(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /**
     * Reads the wheels.
     *
     * @param general what held during the whole inspection; what is noted for all wheels goes
     *     before it, and what is noted at one wheel before both
     */
    Map<WheelId, WheelReading> read(Fields fields, Circumstances general) {
        Circumstances common =
                fields.has(ALL)
                        ? CircumstancesReader.readAll(fields.fields(ALL)).orElse(general)
                        : general;
        Map<WheelId, WheelReading> wheels = new TreeMap<>();
        for (String key : fields.keys()) {
            if (!key.equals(ALL)) {
                WheelId id = wheel(fields, key);
                WheelReadingReader reader = new WheelReadingReader(id, vehicle.wheel(id), common);
                wheels.put(
                        id,
                        fields.isMap(key)
                                ? reader.read(fields.fields(key))
                                : reader.brief(fields, key));
            }
        }
        fields.end();
        return wheels;
    }

    private WheelId wheel(Fields fields, String key) {
        WheelId id;
        try {
            id = WheelId.parse(key);
        } catch (IllegalArgumentException e) {
            throw fields.refuseKey(
                    key,
                    "this is not a wheel",
                    "the number of the axle and the side, such as 1L or 3R, or " + ALL,
                    key.endsWith("l") || key.endsWith("r")
                            ? "write the side as a capital, L or R"
                            : COUNT);
        }
        if (!vehicle.hasWheel(id)) {
            throw fields.refuseKey(
                    key,
                    "this wheel is not on the vehicle",
                    "axles 1 to " + vehicle.axleCount(),
                    COUNT);
        }
        return id;
    }
}
