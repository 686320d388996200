package org.fandown.air;

import java.util.Optional;
import org.fandown.air.AirSetup.Spring;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.units.Volume;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.Cited;
import org.fandown.vehicle.RatedVolume;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/** The brake chamber at one wheel: its sizes and its laws. */
final class BrakeEnd {
    private static final double REFERENCE_AREA = 30;

    /** Stroke at which a spring brake parks is sought at this pressure; psi. */
    private static final double PARKED_AT = 55;

    static final double BROKEN_LEFT = 1.0 / 3;
    private static final double DRAG = 60;
    private static final double MOST_TRAVEL = 0.95;

    /** A brake that yields less for each psi does not yield; in/psi. */
    private static final double LEAST_YIELD = 0.001;

    final WheelId wheel;
    final boolean hasSpring;
    final double area;
    private final double full;
    private final double rated;
    private final double rest;
    private final Chamber filed;
    private final AirSetup setup;
    private final WheelSetup state;

    BrakeEnd(WheelId wheel, WheelEnd end, Chamber filed, AirSetup setup) {
        this.wheel = wheel;
        this.setup = setup;
        this.filed = filed;
        state = setup.wheel(wheel);
        Chamber chamber = state.chamber().orElse(filed);
        hasSpring = end.springBrake();
        area = area(chamber);
        full = fullStroke(chamber);
        rest = rest(chamber);
        rated = rated(filed);
    }

    private double area(Chamber chamber) {
        return chamber.entry()
                .map(ChamberEntry::areaSquareInches)
                .orElse(setup.value(AirDefault.UNLISTED_AREA));
    }

    private static Optional<RatedVolume> tabled(Chamber chamber) {
        return chamber.entry().flatMap(ChamberEntry::ratedVolume).map(Cited::value);
    }

    private double rest(Chamber chamber) {
        double usual = setup.value(AirDefault.REST_VOLUME) * area(chamber);
        return tabled(chamber)
                .map(r -> cubicInches(r) - area(chamber) * inches(r.fromStroke()))
                .map(below -> Math.max(usual / 2, below))
                .orElse(usual);
    }

    private double rated(Chamber chamber) {
        double usual = setup.value(AirDefault.REST_VOLUME) * area(chamber);
        return tabled(chamber)
                .map(BrakeEnd::cubicInches)
                .orElse(usual + area(chamber) * fullStroke(chamber));
    }

    private static double cubicInches(RatedVolume volume) {
        return volume.volume().valueIn(Unit.CUBIC_INCH);
    }

    private double fullStroke(Chamber chamber) {
        ChamberEntry entry = chamber.entry().orElse(null);
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

    /** Returns whether the chamber is of the size the vehicle file gives. */
    boolean isAsFiled() {
        return state.chamber().map(filed::sameSizeAs).orElse(true);
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

    /** Stroke until the linings touch, in. */
    double freeStroke() {
        double free =
                state.freeStroke()
                        .map(Length::inInches)
                        .orElse(setup.value(AirDefault.FREE_STROKE));
        double hot = free + setup.value(AirDefault.HOT_STROKE);
        return Math.min(hot, full) * state.movement().orElse(1);
    }

    private double perPsi() {
        double yield = setup.value(AirDefault.POWER_STROKE) * area / REFERENCE_AREA;
        double left = yield * state.movement().orElse(1);
        return left < LEAST_YIELD ? 0 : left;
    }

    /** Travel of the push rod when the spring alone applies the brake, in. */
    double parkedStroke() {
        if (has(Spring.CAGED)) {
            return 0;
        }
        double force = has(Spring.BROKEN) ? BROKEN_LEFT * PARKED_AT : PARKED_AT;
        double yield = perPsi() * (force - setup.value(AirDefault.CONTACT));
        return Math.min(MOST_TRAVEL * full, freeStroke() + yield);
    }

    private boolean has(Spring condition) {
        return state.spring().filter(is -> is == condition).isPresent();
    }

    ChamberLaw springLaw() {
        double holdOff = setup.value(AirDefault.HOLD_OFF);
        double travel = Math.max(0.1, parkedStroke());
        double fall = setup.value(AirDefault.SPRING_RATE) * travel;
        if (has(Spring.BROKEN)) {
            holdOff *= BROKEN_LEFT;
            fall *= BROKEN_LEFT;
        } else if (has(Spring.DRAGGING)) {
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
