package org.fandown.practice;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.FaultCase;
import org.fandown.check.Component;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Names;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.evidence.CommonKeys;
import org.fandown.evidence.VehicleSource;
import org.fandown.units.Dimension;
import org.fandown.units.GaugePressure;
import org.fandown.units.Quantity;
import org.fandown.units.Temperature;
import org.fandown.units.Unit;
import org.fandown.vehicle.Vehicle;

/**
 * Reads a scenario, strictly.
 *
 * <p>Only {@code title} and {@code vehicle} must be there. What is left out is as in {@link
 * Scenario#of}: found empty and parked, level ground at 20 C, gearbox with clutch, nothing wrong.
 */
public final class ScenarioReader {
    /** The greatest seed that files can hold. */
    static final int MOST_SEED = 999_999_999;

    private static final double MOST_PSI = 150;
    private static final double MOST_PERCENT = 30;
    private static final double MOST_CELSIUS = 60;
    private static final Quantity STANDARD_AIR = Quantity.of(20, Unit.CELSIUS);

    private final VehicleSource vehicles;

    /**
     * A reader that fetches named vehicle documents from the given source.
     *
     * @param vehicles where a vehicle that is named rather than written out is found
     */
    public ScenarioReader(VehicleSource vehicles) {
        this.vehicles = vehicles;
    }

    /**
     * Reads one scenario.
     *
     * @throws DocumentException if the document is not a scenario, or names a fault that its
     *     vehicle cannot have
     */
    public Scenario read(Node document) {
        Fields fields = Fields.of(document);
        String title = fields.text("title");
        String told = fields.optionalText("told").orElse("");
        Optional<PlaceCode> place = CommonKeys.optionalPlace(fields);
        Vehicle vehicle = CommonKeys.vehicle(fields, vehicles);
        boolean tows = tows(fields, vehicle);
        List<FaultCase> faults = new FaultReader(vehicle).read(fields.optionalList("faults"));
        Map<Component, List<String>> parts =
                fields.has("parts") ? parts(fields.fields("parts")) : Map.of();
        StartState start =
                fields.has("start") ? start(fields.fields("start"), tows) : StartState.EMPTY;
        Ground ground = fields.has("ground") ? ground(fields.fields("ground")) : Ground.LEVEL;
        Scenario.Transmission transmission =
                fields.optionalChoice("transmission", Scenario.Transmission.values())
                        .orElse(Scenario.Transmission.MANUAL);
        int seed = fields.optionalInteger("seed", 0, MOST_SEED).orElse(1);
        fields.end();
        return new Scenario(
                title, told, place, vehicle, faults, parts, start, ground, transmission, seed);
    }

    /** Whether it has a trailer supply knob. */
    private static boolean tows(Fields fields, Vehicle vehicle) {
        try {
            return AirSystem.of(vehicle, AirSetup.SOUND).trailerKnobIn().isPresent();
        } catch (IllegalArgumentException e) {
            throw fields.refuse(
                    "vehicle",
                    "this vehicle has no air system to practise with: " + e.getMessage(),
                    "a vehicle whose powered unit has brakes worked by air",
                    "name another vehicle");
        }
    }

    private static Map<Component, List<String>> parts(Fields fields) {
        Map<String, Component> byId = Names.byKebab(Component.values());
        Map<Component, List<String>> parts = new EnumMap<>(Component.class);
        for (String key : fields.keys()) {
            Component part = byId.get(key);
            if (part == null) {
                throw fields.refuseKey(
                        key,
                        "this is not a part the program knows",
                        String.join(", ", byId.keySet()),
                        Nearest.advice(key, byId.keySet(), "take one of these"));
            }
            List<String> found = fields.optionalTexts(key);
            if (found.isEmpty()) {
                throw fields.refuse(
                        key,
                        "the list is empty",
                        "what is wrong with the part, such as low-tread",
                        "say what is wrong, or remove the part");
            }
            parts.put(part, found);
        }
        fields.end();
        return parts;
    }

    private static StartState start(Fields fields, boolean tows) {
        Quantity pressure =
                fields.optionalQuantity("pressure", Dimension.GAUGE_PRESSURE)
                        .orElse(Quantity.of(0, Unit.PSI));
        double psi = pressure.valueIn(Unit.PSI);
        if (!(psi >= 0 && psi <= MOST_PSI)) {
            throw fields.refuse(
                    "pressure",
                    "no vehicle is found with that pressure",
                    "0 psi to 150 psi",
                    "correct the pressure or its unit");
        }
        boolean parked =
                fields.optionalChoice("parking-brake", Brake.values()).orElse(Brake.SET)
                        == Brake.SET;
        boolean charged =
                fields.optionalChoice("trailer-supply", Supply.values()).orElse(Supply.CLOSED)
                        == Supply.OPEN;
        if (charged && !tows) {
            throw fields.refuse(
                    "trailer-supply",
                    "this vehicle tows nothing",
                    "closed",
                    "remove the key, or name a vehicle with a trailer");
        }
        fields.end();
        return new StartState(new GaugePressure(Amounts.pascals(pressure)), parked, charged);
    }

    private static Ground ground(Fields fields) {
        Quantity grade =
                fields.optionalQuantity("grade", Dimension.RATIO)
                        .orElse(Quantity.of(0, Unit.PERCENT));
        require(fields, "grade", grade.valueIn(Unit.PERCENT), MOST_PERCENT, "-30 % to 30 %");
        Quantity air = fields.optionalQuantity("air", Dimension.TEMPERATURE).orElse(STANDARD_AIR);
        require(fields, "air", air.valueIn(Unit.CELSIUS), MOST_CELSIUS, "-60 C to 60 C");
        fields.end();
        return new Ground(Amounts.share(grade), Temperature.ofKelvins(Amounts.kelvins(air)));
    }

    private static void require(
            Fields fields, String key, double value, double most, String allowed) {
        if (!(Math.abs(value) <= most)) {
            throw fields.refuse(key, "this is out of range", allowed, "correct it");
        }
    }

    /** The parking brakes at the start. */
    enum Brake {
        SET,
        RELEASED
    }

    /** The trailer supply knob at the start. */
    enum Supply {
        OPEN,
        CLOSED
    }
}
