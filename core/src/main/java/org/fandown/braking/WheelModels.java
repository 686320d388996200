package org.fandown.braking;

import java.util.Optional;
import java.util.Set;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Quantity;
import org.fandown.vehicle.AxlePosition;
import org.fandown.vehicle.Basis;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.ChamberEntry;
import org.fandown.vehicle.Mount;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/** Makes the model of each wheel from the vehicle, and notes what it assumes. */
final class WheelModels {
    private final Vehicle vehicle;
    private final double measuredAt;
    private final Assumed assumed;

    WheelModels(Vehicle vehicle, double measuredAtPsi, Assumed assumed) {
        this.vehicle = vehicle;
        this.measuredAt = measuredAtPsi;
        this.assumed = assumed;
    }

    WheelModel of(WheelId id, Optional<Length> stroke) {
        WheelEnd end = vehicle.wheel(id);
        if (!end.isBraked()) {
            return new WheelModel.Unbraked();
        }
        if (end.chamber().isEmpty()) {
            return new WheelModel.Unknown(
                    "wheel " + id + " has a brake without a push rod, of which no force is known");
        }
        Chamber chamber = end.chamber().get();
        Optional<ChamberEntry> entry = chamber.entry();
        if (entry.isEmpty()) {
            return new WheelModel.Unknown(
                    "wheel " + id + " has an unlisted actuator, whose area is not known");
        }
        return brake(id, end, chamber, entry.get(), stroke);
    }

    private BrakeModel brake(
            WheelId id, WheelEnd end, Chamber chamber, ChamberEntry entry, Optional<Length> read) {
        noteCurves(entry);
        double area = entry.areaSquareInches();
        Length full = Length.ofInches(Strokes.full(chamber, entry, assumed));
        Length free = Length.ofInches(assumed.use(Assumption.ADJUSTED_FREE_STROKE));
        GaugePressure at = GaugePressure.ofPsi(measuredAt);
        return new BrakeModel(
                PushRodForce.of(area, full),
                StrokeModel.ofFreeStroke(area, full, free),
                read.map(stroke -> StrokeModel.ofAppliedStroke(area, full, stroke, at)),
                notes(area, full, read, at),
                foundation(id, end),
                end.brake() != BrakeKind.DISC,
                parking(end, chamber));
    }

    private Set<StrokeNote> notes(
            double area, Length full, Optional<Length> read, GaugePressure at) {
        if (read.isEmpty()) {
            assumed.note(Assumption.UNREAD_WHEELS);
            return Set.of();
        }
        if (StrokeModel.isSuspiciouslyShort(area, read.get(), at)) {
            assumed.note(Assumption.SHORT_STROKE);
            return Set.of(StrokeNote.SUSPICIOUSLY_SHORT);
        }
        boolean longer = read.get().compareTo(full) > 0;
        return longer ? Set.of(StrokeNote.LONGER_THAN_CHAMBER) : Set.of();
    }

    private void noteCurves(ChamberEntry entry) {
        assumed.note(Assumption.PUSH_OUT_PRESSURE);
        assumed.note(Assumption.CONTACT_PRESSURE);
        assumed.note(Assumption.POWER_STROKE);
        assumed.note(Assumption.POWER_STROKE_BY_AREA);
        assumed.note(Assumption.FORCE_KNEE);
        assumed.note(Assumption.FORCE_LOSS);
        assumed.note(Assumption.NO_FORCE_AT_END);
        if (entry.area().basis() == Basis.FROM_MEMORY) {
            assumed.note(Assumption.AREA_REMEMBERED);
        }
    }

    private BrakeModel.Parking parking(WheelEnd end, Chamber chamber) {
        if (chamber.mount() == Mount.DD3) {
            return BrakeModel.Parking.ROLLERS;
        }
        if (!end.springBrake()) {
            return BrakeModel.Parking.NOTHING;
        }
        assumed.note(Assumption.SPRING_FORCE);
        assumed.note(Assumption.SPRING_RATE);
        assumed.note(Assumption.SPRING_BY_AREA);
        return BrakeModel.Parking.SPRING;
    }

    private FoundationBrake foundation(WheelId id, WheelEnd end) {
        double friction = assumed.use(Assumption.LINING_FRICTION);
        Length tyre = given(end.tyreRadius(), Assumption.TYRE_RADIUS);
        if (end.brake() == BrakeKind.DISC) {
            assumed.note(Assumption.NO_DISC_GROWTH);
            return FoundationBrake.disc(
                    assumed.use(Assumption.DISC_LEVER),
                    friction,
                    Length.ofInches(assumed.use(Assumption.DISC_RADIUS)),
                    tyre);
        }
        if (end.brake() == BrakeKind.WEDGE) {
            assumed.note(Assumption.WEDGE_AS_CAM);
        }
        assumed.note(Assumption.CAM_RADIUS);
        assumed.note(Assumption.CAM_EFFICIENCY);
        boolean steers = vehicle.axle(id.axle()).position() == AxlePosition.STEER;
        Assumption drum = steers ? Assumption.STEER_DRUM_RADIUS : Assumption.DRUM_RADIUS;
        return FoundationBrake.cam(
                given(end.arm(), Assumption.ARM), friction, given(end.drumRadius(), drum), tyre);
    }

    private Length given(Optional<Quantity> length, Assumption otherwise) {
        return length.isPresent()
                ? Length.of(length.get())
                : Length.ofInches(assumed.use(otherwise));
    }
}
