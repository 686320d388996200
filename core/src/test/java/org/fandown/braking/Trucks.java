package org.fandown.braking;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.units.Length;
import org.fandown.units.Quantity;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/** Vehicles and strokes of our own invention. */
final class Trucks {
    private Trucks() {}

    /** Two axles, type 20 in front and type 30 with spring brakes behind, 12 000 and 20 000 lb. */
    static Vehicle twoAxle() {
        return truck(
                steer(BrakeKind.DRUM).withLoad(Quantity.parse("12 000 lb")),
                drive(BrakeKind.DRUM).withLoad(Quantity.parse("20 000 lb")));
    }

    static Axle steer(BrakeKind brake) {
        return Axle.of(AxlePosition.STEER, WheelEnd.of(brake, Chamber.clamp(20), false));
    }

    static Axle drive(BrakeKind brake) {
        return Axle.of(AxlePosition.DRIVE, WheelEnd.of(brake, Chamber.clamp(30), true));
    }

    static Vehicle truck(Axle... axles) {
        VehicleUnit unit = VehicleUnit.builder(UnitKind.TRUCK, "12").axles(List.of(axles)).build();
        return new Vehicle("Number 12", Use.PROPERTY, List.of(unit));
    }

    /** Strokes (in) in the order 1L, 1R, 2L, 2R; a negative one was not read. */
    static Map<WheelId, Length> strokes(double... inches) {
        Map<WheelId, Length> strokes = new LinkedHashMap<>();
        for (int i = 0; i < inches.length; i++) {
            if (inches[i] >= 0) {
                String name = (i / 2 + 1) + (i % 2 == 0 ? "L" : "R");
                strokes.put(WheelId.parse(name), Length.ofInches(inches[i]));
            }
        }
        return strokes;
    }
}
