package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.fandown.units.Quantity;

/**
 * Collects the parts of a {@link VehicleUnit}.
 *
 * <p>What is not given stays unknown, but for the defaults of the vehicle file: air brakes, a
 * semi-trailer, an odometer on a powered unit and none on a towed one.
 */
public final class VehicleUnitBuilder {
    private final UnitKind kind;
    private final String id;
    private final List<Axle> axles = new ArrayList<>();
    private Optional<TrailerForm> form;
    private Build build = Build.UNKNOWN;
    private BrakePower brakes = BrakePower.AIR;
    private Optional<Boolean> abs = Optional.empty();
    private Ratings ratings = Ratings.UNKNOWN;
    private Body body;
    private AirSupply air = AirSupply.UNKNOWN;

    VehicleUnitBuilder(UnitKind kind, String id) {
        this.kind = kind;
        this.id = id;
        this.form = kind == UnitKind.TRAILER ? Optional.of(TrailerForm.SEMI) : Optional.empty();
        this.body = new Body(kind.isPowered(), OptionalInt.empty(), Optional.empty());
    }

    /** Sets how a trailer carries its weight. */
    public VehicleUnitBuilder form(TrailerForm value) {
        form = Optional.of(value);
        return this;
    }

    /** Sets the build date and keeps the standards. */
    public VehicleUnitBuilder built(BuildDate date) {
        build = new Build(Optional.of(date), build.standards());
        return this;
    }

    /** Sets the braking standards it was built to and keeps the date. */
    public VehicleUnitBuilder standards(Set<BuildStandard> standards) {
        build = new Build(build.date(), standards);
        return this;
    }

    /** Sets what works the service brakes. */
    public VehicleUnitBuilder brakes(BrakePower value) {
        brakes = value;
        return this;
    }

    /** Sets whether anti-lock brakes are fitted. */
    public VehicleUnitBuilder abs(boolean fitted) {
        abs = Optional.of(fitted);
        return this;
    }

    /** Sets the maker's greatest laden mass and keeps the registered mass. */
    public VehicleUnitBuilder grossMass(Quantity mass) {
        ratings = new Ratings(Optional.of(mass), ratings.registered());
        return this;
    }

    /** Sets the registered mass and keeps the maker's greatest laden mass. */
    public VehicleUnitBuilder registeredMass(Quantity mass) {
        ratings = new Ratings(ratings.gross(), Optional.of(mass));
        return this;
    }

    /** Sets whether an odometer is fitted. */
    public VehicleUnitBuilder odometer(boolean fitted) {
        body = new Body(fitted, body.seats(), body.chassis());
        return this;
    }

    /** Sets the number of seats, the driver's included. */
    public VehicleUnitBuilder seats(int number) {
        body = new Body(body.odometer(), OptionalInt.of(number), body.chassis());
        return this;
    }

    /** Sets the chassis it is built on. */
    public VehicleUnitBuilder chassis(Chassis value) {
        body = new Body(body.odometer(), body.seats(), Optional.of(value));
        return this;
    }

    /** Sets where its compressed air comes from and is kept. */
    public VehicleUnitBuilder air(AirSupply value) {
        air = value;
        return this;
    }

    /** Adds an axle behind those already given. */
    public VehicleUnitBuilder axle(Axle axle) {
        axles.add(axle);
        return this;
    }

    /** Adds axles behind those already given. */
    public VehicleUnitBuilder axles(List<Axle> more) {
        axles.addAll(more);
        return this;
    }

    /**
     * Makes the unit.
     *
     * @throws ImpossibleVehicleException if the parts contradict each other
     */
    public VehicleUnit build() {
        return new VehicleUnit(id, kind, form, build, brakes, abs, ratings, body, air, axles);
    }
}
