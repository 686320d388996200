package org.fandown.air;

import java.util.List;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Volume;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.VehicleUnit;

/** Foot valve and service brakes of a powered unit. */
final class ServicePart {
    final AirNode primaryDelivery;
    final AirNode secondaryDelivery;

    private final Plumbing parts;
    private final SupplyPart supply;

    ServicePart(Plumbing parts, SupplyPart supply) {
        this.parts = parts;
        this.supply = supply;
        primaryDelivery = parts.line("primary-delivery", AirDefault.SHORT_LINE);
        secondaryDelivery = parts.line("secondary-delivery", AirDefault.SHORT_LINE);
        AirLink primary =
                parts.lapping(
                        "foot-valve-primary",
                        supply.primary,
                        primaryDelivery,
                        AirDefault.FOOT_WAY,
                        AirDefault.FOOT_EXHAUST);
        AirLink secondary =
                parts.lapping(
                        "foot-valve-secondary",
                        supply.secondary,
                        secondaryDelivery,
                        AirDefault.FOOT_WAY,
                        AirDefault.FOOT_EXHAUST);
        parts.elements.add(new FootValve(parts, primary, secondary));
    }

    /** Adds the front brakes behind a quick-release valve of the secondary circuit. */
    AirNode addFront(BrakeGroup group) {
        AirNode manifold = parts.line(group.name() + "-service", AirDefault.SHORT_LINE);
        AirLink valve =
                parts.lapping(
                        "quick-release-" + group.name(),
                        secondaryDelivery,
                        manifold,
                        AirDefault.FOOT_WAY,
                        AirDefault.RELAY_EXHAUST,
                        secondaryDelivery);
        parts.elements.add(new Follower(valve, secondaryDelivery, 0));
        group.addService(parts, manifold);
        return manifold;
    }

    /** Adds rear brakes behind a relay valve of the primary circuit; returns their manifold. */
    AirNode addRear(BrakeGroup group) {
        AirNode manifold = parts.line(group.name() + "-service", AirDefault.SHORT_LINE);
        AirLink valve =
                parts.lapping(
                        "relay-" + group.name(),
                        supply.primary,
                        manifold,
                        AirDefault.RELAY_INLET,
                        AirDefault.RELAY_EXHAUST,
                        primaryDelivery);
        parts.elements.add(
                new Follower(valve, primaryDelivery, parts.pascals(AirDefault.RELAY_CRACK)));
        group.addService(parts, manifold);
        return manifold;
    }

    /** Adds the boosters of air-over-hydraulic brakes, one for each circuit. */
    void addBoosters(VehicleUnit unit) {
        if (unit.brakes() == BrakePower.AIR_OVER_HYDRAULIC) {
            addBooster("primary-booster", primaryDelivery);
            addBooster("secondary-booster", secondaryDelivery);
        }
    }

    private void addBooster(String name, AirNode delivery) {
        List<ChamberLaw.Corner> corners =
                List.of(
                        new ChamberLaw.Corner(
                                GaugePressure.ofPsi(parts.setup.value(AirDefault.PUSH_OUT)),
                                new Length(0)),
                        new ChamberLaw.Corner(
                                GaugePressure.ofPsi(100),
                                Length.ofInches(parts.setup.value(AirDefault.BOOSTER_STROKE))));
        ChamberLaw law =
                new ChamberLaw(
                        Volume.ofCubicInches(parts.setup.value(AirDefault.BOOSTER_REST)),
                        parts.setup.value(AirDefault.BOOSTER_AREA),
                        corners);
        AirNode booster = parts.chamber(name, law);
        parts.way("hose-" + name, delivery, booster, AirDefault.HOSE_WAY);
    }
}
