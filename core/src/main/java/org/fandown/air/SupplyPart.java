package org.fandown.air;

import java.util.Optional;
import org.fandown.air.AirOutlet.Kind;
import org.fandown.air.AirSetup.Defect;
import org.fandown.units.GaugePressure;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.units.Volume;
import org.fandown.vehicle.SupplyKind;
import org.fandown.vehicle.VehicleUnit;

/** Compressor, governor, dryer and the reservoirs of a powered unit. */
final class SupplyPart {
    final AirSource compressor;
    final AirMemory loaded;
    final AirLink purge;
    final AirNode supply;
    final AirNode primary;
    final AirNode secondary;

    /** Reservoir of the parking circuit, if it has one of its own. */
    final Optional<AirNode> parking;

    private final Plumbing parts;
    private final VehicleUnit unit;
    private final boolean integrated;

    SupplyPart(Plumbing parts, VehicleUnit unit, double chambers) {
        this.parts = parts;
        this.unit = unit;
        integrated =
                unit.air().kind().orElse(SupplyKind.SUPPLY_RESERVOIR)
                        == SupplyKind.INTEGRATED_DRYER_UNIT;
        ReservoirSizes sizes =
                new ReservoirSizes(unit, chambers, parts.setup.value(AirDefault.RESERVOIR_RATIO));
        AirNode discharge = parts.line("discharge", AirDefault.DRYER_VOLUME);
        compressor = parts.network.source("compressor", discharge, Ambient.STANDARD.temperature());
        loaded = parts.network.memory("governor", 1);
        supply =
                integrated
                        ? parts.line("supply", AirDefault.GALLERY)
                        : parts.reservoir("supply", sizes.supply());
        purge = addDryer(discharge, sizes);
        primary = parts.reservoir("primary", sizes.primary());
        secondary = parts.reservoir("secondary", sizes.secondary());
        feed("primary", primary, AirDefault.CIRCUIT_OPEN);
        feed("secondary", secondary, AirDefault.CIRCUIT_OPEN);
        parking = addParking(sizes.parking());
        addGovernor(discharge);
        addSafetyValve();
    }

    private AirLink addDryer(AirNode discharge, ReservoirSizes sizes) {
        double size = sizes.purge(parts.setup.value(AirDefault.PURGE_VOLUME));
        AirNode kept = parts.rigid("purge", size);
        parts.way("purge-orifice", discharge, kept, AirDefault.PURGE_HOLE);
        parts.check("dryer-check", discharge, supply, AirDefault.FEED_WAY);
        return parts.outlet(Kind.PURGE, "purge-valve", discharge, AirDefault.PURGE_VALVE);
    }

    private void feed(String name, AirNode reservoir, AirDefault opens) {
        String check = "check-" + name;
        if (integrated) {
            double open = parts.setup.value(opens);
            double shut = open - parts.setup.value(AirDefault.CIRCUIT_RANGE);
            parts.protection(check, supply, reservoir, shut, open);
        } else {
            parts.check(check, supply, reservoir, AirDefault.FEED_WAY);
        }
    }

    private Optional<AirNode> addParking(double cubicInches) {
        if (!(cubicInches > 0)) {
            return Optional.empty();
        }
        AirNode reservoir = parts.reservoir("parking", cubicInches);
        feed("parking", reservoir, AirDefault.CIRCUIT_OPEN_LATE);
        return Optional.of(reservoir);
    }

    private void addGovernor(AirNode discharge) {
        var governor = unit.governor();
        double cutIn = setting(AirDefault.CUT_IN, governor.flatMap(g -> g.cutIn()));
        double cutOut = setting(AirDefault.CUT_OUT, governor.flatMap(g -> g.cutOut()));
        parts.elements.add(new GovernorValve(parts, supply, loaded, cutIn, cutOut));
        parts.elements.add(new PurgeValve(parts, purge, loaded));
        parts.elements.add(new Pump(parts, compressor, discharge, loaded, drive()));
    }

    private double setting(AirDefault what, Optional<Quantity> filed) {
        double psi =
                parts.setup
                        .own(what)
                        .orElse(filed.map(q -> GaugePressure.of(q).inPsi()).orElse(what.number()));
        return GaugePressure.ofPsi(psi).pascals();
    }

    private Pump.Drive drive() {
        AirSetup setup = parts.setup;
        double cubicInches =
                setup.own(AirDefault.DISPLACEMENT)
                        .orElse(
                                unit.compressor()
                                        .flatMap(c -> c.displacement())
                                        .map(q -> q.valueIn(Unit.CUBIC_INCH))
                                        .orElse(AirDefault.DISPLACEMENT.number()));
        double ratio = AirDefault.DRIVE_RATIO.number();
        if (setup.own(AirDefault.DRIVE_RATIO).isPresent()) {
            ratio = setup.value(AirDefault.DRIVE_RATIO);
        } else if (unit.compressor().isPresent()) {
            ratio = unit.compressor().get().driveRatio().orElse(ratio);
        }
        double turns = ratio * setup.value(AirDefault.DRIVE_GRIP);
        return new Pump.Drive(Volume.ofCubicInches(cubicInches), turns);
    }

    private void addSafetyValve() {
        AirLink valve =
                parts.outlet(Kind.SAFETY_VALVE, "safety-valve", supply, AirDefault.FEED_WAY);
        AirMemory open = parts.network.memory("safety-valve", 0);
        parts.elements.add(
                new Latch(
                        supply,
                        valve,
                        open,
                        parts.absolute(AirDefault.SAFETY_OPEN),
                        parts.absolute(AirDefault.SAFETY_CLOSE)));
    }

    /** Adds the gauges and the low-air switch. */
    void addInstruments(AirMemory primaryNeedle, AirMemory secondaryNeedle, AirMemory lowAir) {
        parts.elements.add(
                new GaugeNeedle(
                        parts,
                        primary,
                        primaryNeedle,
                        parts.pascals(AirDefault.PRIMARY_GAUGE_ERROR),
                        parts.setup.has(Defect.PRIMARY_GAUGE_STUCK)));
        parts.elements.add(
                new GaugeNeedle(
                        parts,
                        secondary,
                        secondaryNeedle,
                        parts.pascals(AirDefault.SECONDARY_GAUGE_ERROR),
                        parts.setup.has(Defect.SECONDARY_GAUGE_STUCK)));
        if (!parts.setup.has(Defect.LOW_AIR_SWITCH_DEAD)) {
            parts.elements.add(
                    new PressureSwitch(
                            primary, secondary, lowAir, parts.absolute(AirDefault.LOW_AIR), true));
        }
    }
}
