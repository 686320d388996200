package org.fandown.vehicle;

import java.util.List;
import java.util.Optional;

/**
 * Where a unit's compressed air comes from and is kept.
 *
 * @param kind supply reservoir or integrated dryer unit, empty if unknown or not a powered unit
 * @param reservoirs the reservoirs, empty if unknown
 * @param compressor the compressor, empty if unknown or not a powered unit
 * @param governor the maker's governor settings, empty if unknown or not a powered unit
 * @param lowAirWarning the low-air warning, empty if unknown or not a powered unit
 */
public record AirSupply(
        Optional<SupplyKind> kind,
        List<Reservoir> reservoirs,
        Optional<Compressor> compressor,
        Optional<Governor> governor,
        Optional<WarningDevice> lowAirWarning) {

    /** Nothing is known. */
    public static final AirSupply UNKNOWN =
            new AirSupply(
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());

    /** Copies the reservoirs in; refuses a supply reservoir beside an integrated dryer unit. */
    public AirSupply {
        reservoirs = List.copyOf(reservoirs);
        boolean listed = reservoirs.stream().anyMatch(r -> r.role() == ReservoirRole.SUPPLY);
        if (listed && kind.isPresent() && kind.get() == SupplyKind.INTEGRATED_DRYER_UNIT) {
            throw new ImpossibleVehicleException(
                    "reservoirs",
                    "a supply reservoir is listed, but the unit has an integrated dryer unit",
                    "one of the two",
                    "write 'supply: supply-reservoir', or take the supply reservoir out");
        }
    }

    void requireFits(UnitKind unit) {
        if (!unit.isPowered()) {
            refuseOnTowed(kind.isPresent(), "supply");
            refuseOnTowed(compressor.isPresent(), "compressor");
            refuseOnTowed(governor.isPresent(), "governor");
            refuseOnTowed(lowAirWarning.isPresent(), "low-air-warning");
        }
        for (Reservoir reservoir : reservoirs) {
            if (!reservoir.role().fits(unit)) {
                throw new ImpossibleVehicleException(
                        "reservoirs",
                        Labels.of(reservoir.role())
                                + " reservoirs are not found on a "
                                + Labels.of(unit),
                        unit.isPowered()
                                ? "supply, primary, secondary, parking, purge"
                                : "trailer, parking",
                        "give the role the reservoir has on this unit");
            }
        }
    }

    private static void refuseOnTowed(boolean present, String key) {
        if (present) {
            throw new ImpossibleVehicleException(
                    key,
                    "a towed unit has no " + key,
                    key + " on a truck, tractor or bus",
                    "take the line out, or move it to the unit in front");
        }
    }
}
