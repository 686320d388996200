package org.fandown.air;

import org.fandown.air.AirSetup.Spring;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.units.Volume;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;
import org.jspecify.annotations.Nullable;

/** The brake chamber at one wheel: its sizes and its laws. */
final class BrakeEnd {
    private static final double REFERENCE_AREA = 30;

    /** Stroke at which a spring brake parks is sought at this pressure; psi. */
    private static final double PARKED_AT = 55;

    static final double BROKEN_LEFT = 1.0 / 3;
    private static final double DRAG = 60;
    private static final double MOST_TRAVEL = 0.95;

    final WheelId wheel;
    final boolean hasSpring;
    final double area;
    private final double full;
    private final double rated;
    private final double rest;
    private final AirSetup setup;

    BrakeEnd(WheelId wheel, WheelEnd end, Chamber chamber, AirSetup setup) {
        this.wheel = wheel;
        this.setup = setup;
        hasSpring = end.springBrake();
        ChamberEntry entry = chamber.entry().orElse(null);
        area = entry != null ? entry.areaSquareInches() : setup.value(AirDefault.UNLISTED_AREA);
        full = fullStroke(chamber, entry);
        double usual = setup.value(AirDefault.REST_VOLUME) * area;
        if (entry != null && entry.ratedVolume().isPresent()) {
            var volume = entry.ratedVolume().get().value();
            rated = volume.volume().valueIn(Unit.CUBIC_INCH);
            rest = Math.max(usual / 2, rated - area * volume.fromStroke().valueIn(Unit.INCH));
        } else {
            rest = usual;
            rated = usual + area * full;
        }
    }

    private double fullStroke(Chamber chamber, @Nullable ChamberEntry entry) {
        if (chamber.ratedStroke().isPresent()) {
            return chamber.ratedStroke().get().valueIn(Unit.INCH);
        }
        if (entry != null && chamber.longStroke() && entry.longStroke().isPresent()) {
            return inches(entry.longStroke().get().value());
        }
        if (entry != null && entry.fullStroke().isPresent()) {
            return inches(entry.fullStroke().get().value());
        }
        return setup.value(AirDefault.UNLISTED_STROKE);
    }

    private static double inches(Quantity quantity) {
        return quantity.valueIn(Unit.INCH);
    }

    /** Volume the reservoirs are reckoned by, in3. */
    double ratedCubicInches() {
        return rated;
    }

    String serviceName() {
        return wheel + ".service";
    }

    String springName() {
        return wheel + ".spring";
    }

    ChamberLaw serviceLaw() {
        PushRodStroke stroke =
                new PushRodStroke(
                        GaugePressure.ofPsi(setup.value(AirDefault.PUSH_OUT)),
                        GaugePressure.ofPsi(setup.value(AirDefault.CONTACT)),
                        Length.ofInches(freeStroke()),
                        perPsi(),
                        Length.ofInches(full));
        return ChamberLaw.service(Volume.ofCubicInches(rest), area, stroke);
    }

    double freeStroke() {
        Length own = setup.freeStrokes().get(wheel);
        double free = own != null ? own.inInches() : setup.value(AirDefault.FREE_STROKE);
        return Math.min(free, full);
    }

    private double perPsi() {
        return setup.value(AirDefault.POWER_STROKE) * area / REFERENCE_AREA;
    }

    /** Travel of the push rod when the spring alone applies the brake, in. */
    double parkedStroke() {
        if (setup.springs().get(wheel) == Spring.CAGED) {
            return 0;
        }
        double yield = perPsi() * (PARKED_AT - setup.value(AirDefault.CONTACT));
        return Math.min(MOST_TRAVEL * full, freeStroke() + yield);
    }

    ChamberLaw springLaw() {
        Spring state = setup.springs().get(wheel);
        double holdOff = setup.value(AirDefault.HOLD_OFF);
        double travel = Math.max(0.1, parkedStroke());
        double fall = setup.value(AirDefault.SPRING_RATE) * travel;
        if (state == Spring.BROKEN) {
            holdOff *= BROKEN_LEFT;
            fall *= BROKEN_LEFT;
        } else if (state == Spring.DRAGGING) {
            holdOff += DRAG;
        }
        return ChamberLaw.spring(
                Volume.ofCubicInches(setup.value(AirDefault.SPRING_REST) * area),
                area,
                GaugePressure.ofPsi(holdOff - fall),
                GaugePressure.ofPsi(holdOff),
                Length.ofInches(travel));
    }
}
