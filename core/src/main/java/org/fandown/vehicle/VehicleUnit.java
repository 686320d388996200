package org.fandown.vehicle;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.fandown.units.Quantity;

/**
 * One unit of a combination: the powered unit, a trailer or a dolly.
 *
 * @param id the unit number its operator knows it by; not its plate
 * @param kind its kind
 * @param form for a trailer how it carries its weight, empty for every other kind
 * @param build when and to what standards it was built
 * @param brakes what works its service brakes
 * @param abs whether anti-lock brakes are fitted, empty if unknown
 * @param ratings the masses on its plate and papers
 * @param body odometer, seats and chassis
 * @param air where its compressed air comes from and is kept
 * @param axles its axles from front to back, 1 to {@value UnitRules#MOST_AXLES}
 */
public record VehicleUnit(
        String id,
        UnitKind kind,
        Optional<TrailerForm> form,
        Build build,
        BrakePower brakes,
        Optional<Boolean> abs,
        Ratings ratings,
        Body body,
        AirSupply air,
        List<Axle> axles) {

    /** Copies the axles in; refuses parts that this kind of unit cannot have. */
    public VehicleUnit {
        axles = List.copyOf(axles);
        UnitRules.requireName("id", id);
        UnitRules.requireForm(kind, form);
        UnitRules.requireBody(kind, body);
        air.requireFits(kind);
        UnitRules.requireAxles(kind, brakes, axles);
    }

    /** Returns a builder for a unit of the given kind with the given unit number. */
    public static VehicleUnitBuilder builder(UnitKind kind, String id) {
        return new VehicleUnitBuilder(kind, id);
    }

    /** Returns the build date, empty if unknown. */
    public Optional<BuildDate> built() {
        return build.date();
    }

    /** Returns the braking standards it was built to, empty if unknown. */
    public Set<BuildStandard> standards() {
        return build.standards();
    }

    /** Returns the maker's greatest laden mass, empty if unknown. */
    public Optional<Quantity> grossMass() {
        return ratings.gross();
    }

    /** Returns the registered mass, empty if unknown. */
    public Optional<Quantity> registeredMass() {
        return ratings.registered();
    }

    /** Returns whether an odometer is fitted. */
    public boolean hasOdometer() {
        return body.odometer();
    }

    /** Returns the number of seats with the driver's, empty if unknown. */
    public OptionalInt seats() {
        return body.seats();
    }

    /** Returns the chassis it is built on, empty if unknown. */
    public Optional<Chassis> chassis() {
        return body.chassis();
    }

    /** Returns the reservoirs, empty if unknown. */
    public List<Reservoir> reservoirs() {
        return air.reservoirs();
    }

    /** Returns the maker's governor settings, empty if unknown. */
    public Optional<Governor> governor() {
        return air.governor();
    }

    /** Returns the compressor, empty if unknown. */
    public Optional<Compressor> compressor() {
        return air.compressor();
    }

    /** Returns the low-air warning, empty if unknown. */
    public Optional<WarningDevice> lowAirWarning() {
        return air.lowAirWarning();
    }

    /** Returns whether the unit has an engine and a driver. */
    public boolean isPowered() {
        return kind.isPowered();
    }

    /** Returns whether compressed air works the brakes up to the wheels. */
    public boolean hasAirBrakes() {
        return brakes == BrakePower.AIR;
    }
}
