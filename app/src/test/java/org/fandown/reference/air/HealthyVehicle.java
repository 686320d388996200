package org.fandown.reference.air;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirDefault;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSystem;
import org.fandown.air.InCab;
import org.fandown.app.files.DocumentFiles;
import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Reservoir;
import org.fandown.vehicle.ReservoirRole;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.fandown.vehicle.VehicleUnit;

/**
 * A sound example vehicle, and what tests find on it. Its governor is set to the defaults of the
 * model even where the file sets it.
 */
final class HealthyVehicle {
    static final AirSetup SETUP =
            AirSetup.SOUND
                    .with(AirDefault.CUT_IN, AirDefault.CUT_IN.number())
                    .with(AirDefault.CUT_OUT, AirDefault.CUT_OUT.number());

    /** Rated volumes of clamp chambers, in3, as printed. */
    private static final Map<String, Double> TABLE_V =
            Map.of("16", 46.0, "20", 54.0, "24", 67.0, "30", 89.0, "36", 135.0);

    private static final Set<ReservoirRole> COUNTED =
            EnumSet.of(
                    ReservoirRole.SUPPLY,
                    ReservoirRole.PRIMARY,
                    ReservoirRole.SECONDARY,
                    ReservoirRole.TRAILER);

    /** The reservoir that stands for a trailer in a timing, 49 CFR 571.121 S5.3.3.1, in3. */
    private static final double TEST_RESERVOIR = 50;

    final String name;
    final Vehicle vehicle;
    final InCab tests;
    private final Map<Figure, Double> found = new EnumMap<>(Figure.class);
    private final List<Timed> timed = new ArrayList<>();

    /** A unit of the vehicle as it is timed: behind the powered unit alone. */
    record Timed(String what, UnitKind kind, boolean tows, double apply, double release) {}

    private HealthyVehicle(String name, Vehicle vehicle) {
        this.name = name;
        this.vehicle = vehicle;
        tests = new InCab(vehicle, SETUP);
    }

    static List<HealthyVehicle> all() throws IOException {
        List<HealthyVehicle> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("..", "examples", "vehicles"))) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString().replace(".yaml", "");
                Vehicle vehicle = VehicleReader.read(DocumentFiles.read(file));
                all.add(new HealthyVehicle(name, vehicle));
            }
        }
        return all;
    }

    int units() {
        return vehicle.unitsWithAirBrakes().size();
    }

    boolean hasChambers() {
        return units() > 0;
    }

    boolean isBus() {
        return vehicle.powerUnit().kind() == UnitKind.BUS;
    }

    boolean tows() {
        return vehicle.powerUnit().kind() == UnitKind.TRACTOR || units() > 1;
    }

    /** Returns the seconds of the powered unit alone, as when new, from 85 to 100 psi. */
    double buildUpAlone(double rpm) {
        return new InCab(of(vehicle.powerUnit()), SETUP).buildUp(rpm);
    }

    /**
     * Returns the service and supply reservoirs of a unit over its chambers by the volumes of 49
     * CFR 571.121 Table V; 0 if it has no chambers or one that the table does not list.
     */
    static double reservoirRatio(VehicleUnit unit) {
        double chambers = 0;
        for (Axle axle : unit.axles()) {
            for (Side side : Side.values()) {
                Optional<Chamber> chamber = axle.end(side).chamber();
                if (chamber.isPresent()) {
                    Double volume = TABLE_V.get(chamber.get().type());
                    if (volume == null) {
                        return 0;
                    }
                    chambers += volume;
                }
            }
        }
        double reservoirs = 0;
        for (Reservoir reservoir : unit.reservoirs()) {
            if (COUNTED.contains(reservoir.role())) {
                reservoirs += reservoir.volume().orElseThrow().valueIn(Unit.CUBIC_INCH);
            }
        }
        return chambers == 0 ? 0 : reservoirs / chambers;
    }

    private Vehicle of(VehicleUnit... units) {
        return new Vehicle(name, vehicle.use(), List.of(units));
    }

    /** Returns a figure, found once. */
    double found(Figure figure) {
        return found.computeIfAbsent(figure, f -> f.of(this));
    }

    /** Returns the lower of primary and secondary after one full application from 100 psi. */
    double left() {
        AirSystem system = tests.charged(100);
        system.control(system.controls().withFoot(1));
        system.advance(2);
        return low(system);
    }

    /** Returns the least chamber pressure over that of the fullest reservoir, full application. */
    double percentInChambers() {
        AirSystem system = tests.charged(100);
        system.control(system.controls().withFoot(1));
        system.advance(5);
        double least = 100;
        for (String chamber : chambers(system)) {
            least = Math.min(least, system.pressure(chamber).inPsi());
        }
        double most = system.pressure("primary").inPsi();
        return 100 * least / Math.max(most, system.pressure("secondary").inPsi());
    }

    /** Returns the pressure delivered when the stop lamps light, psi. */
    double stopLampsAt() {
        AirSystem system = tests.charged(100);
        for (double foot = 0; foot < 0.3 && !system.stopLamps(); foot += 0.002) {
            system.control(system.controls().withFoot(foot));
            system.advance(0.05);
        }
        double primary = system.pressure("primary-delivery").inPsi();
        return Math.max(primary, system.pressure("secondary-delivery").inPsi());
    }

    /** Returns what the powered unit keeps two minutes after the lines to the trailer parted. */
    double keptAfterLinesParted() {
        AirSystem system = tests.charged(100);
        system.control(AirControls.NONE.withCoupling(1, Coupling.OPEN));
        system.advance(120);
        return low(system);
    }

    private static double low(AirSystem system) {
        double primary = system.pressure("primary").inPsi();
        return Math.min(primary, system.pressure("secondary").inPsi());
    }

    /** Times the powered unit with the test reservoir, and each towed unit behind it alone. */
    List<Timed> timed() {
        if (timed.isEmpty()) {
            timed.addAll(time());
        }
        return timed;
    }

    private List<Timed> time() {
        List<Timed> all = new ArrayList<>();
        VehicleUnit front = vehicle.powerUnit();
        if (!front.hasAirBrakes()) {
            return all;
        }
        double line = AirDefault.TRACTOR_LINE.number() + (tows() ? TEST_RESERVOIR : 0);
        AirSetup rig = SETUP.with(AirDefault.TRACTOR_LINE, line);
        all.add(timed(new InCab(of(front), rig), front, tows(), 1));
        for (VehicleUnit unit : vehicle.towedUnits()) {
            boolean last = unit.equals(vehicle.towedUnits().get(vehicle.towedUnits().size() - 1));
            InCab pair = new InCab(of(front, unit), SETUP);
            all.add(timed(pair, unit, !last, front.axles().size() + 1));
        }
        return all;
    }

    private static Timed timed(InCab tests, VehicleUnit unit, boolean tows, int firstAxle) {
        double apply = 0;
        double release = 0;
        for (int axle = firstAxle; axle < firstAxle + unit.axles().size(); axle++) {
            String chamber = axle + "L.service";
            AirSystem system = tests.chargedForTiming(100);
            system.control(system.controls().withFoot(1));
            apply = Math.max(apply, limit(InCab.seconds(system, chamber, 60, true)));
            system = tests.chargedForTiming(105);
            system.control(system.controls().withFoot(1));
            system.advance(3);
            system.control(system.controls().withFoot(0));
            release = Math.max(release, limit(InCab.seconds(system, chamber, 5, false)));
        }
        return new Timed(unit.id(), unit.kind(), tows, apply, release);
    }

    private static double limit(double seconds) {
        return seconds == InCab.NEVER ? Double.POSITIVE_INFINITY : seconds;
    }

    private static List<String> chambers(AirSystem system) {
        return system.volumes().stream().filter(v -> v.matches("[0-9]+[LR]\\.service")).toList();
    }

    @Override
    public String toString() {
        return name;
    }
}
