package org.fandown.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.Component;
import org.fandown.document.Fields;
import org.fandown.document.Nearest;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * Reads what a person observed on one vehicle: the keys {@code circumstances}, {@code readings},
 * {@code wheels} and {@code parts}, each of which may be left out.
 */
final class ObservationsReader {
    private static final List<String> READABLE =
            Stream.of(Check.values())
                    .filter(check -> isOfWholeVehicle(check.kind()))
                    .map(Check::id)
                    .toList();

    private final Vehicle vehicle;

    ObservationsReader(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /** Reads the observations among other keys. */
    Observations read(Fields fields) {
        Circumstances general =
                fields.has("circumstances")
                        ? CircumstancesReader.readAll(fields.fields("circumstances"))
                        : Circumstances.NONE;
        Map<Check, Reading> readings =
                fields.has("readings") ? readings(fields.fields("readings"), general) : Map.of();
        Map<WheelId, WheelReading> wheels =
                fields.has("wheels")
                        ? new WheelsReader(vehicle).read(fields.fields("wheels"), general)
                        : Map.of();
        Map<Component, PartReading> parts = new EnumMap<>(Component.class);
        boolean others = fields.has("parts") && PartsReader.read(fields.fields("parts"), parts);
        return new Observations(readings, wheels, parts, others);
    }

    private static Map<Check, Reading> readings(Fields fields, Circumstances general) {
        Map<Check, Reading> readings = new EnumMap<>(Check.class);
        for (String key : fields.keys()) {
            Check check = readable(fields, key);
            readings.put(check, ReadingReader.read(fields, key, check, general));
        }
        fields.end();
        Contradictions.requireGovernor(fields, readings);
        return readings;
    }

    private static Check readable(Fields fields, String key) {
        Optional<Check> check = Check.byId(key);
        if (check.isEmpty()) {
            throw fields.refuseKey(
                    key,
                    "this is not a check the program knows",
                    "the checks listed in docs/formats.md",
                    Nearest.advice(key, READABLE, "look it up there, or write it under notes"));
        }
        if (!isOfWholeVehicle(check.get().kind())) {
            throw fields.refuseKey(
                    key,
                    "this is not a reading of the vehicle as a whole",
                    "the checks listed in docs/formats.md",
                    home(check.get().kind()));
        }
        return check.get();
    }

    private static String home(CheckKind kind) {
        return switch (kind) {
            case WHEEL_VALUE, WHEEL_YES_NO -> "write it under wheels, at each wheel";
            case WALK_ROUND, COMPONENT -> "write what was looked at under parts";
            case REPORT -> "write the names and plates under report";
            default -> "take it out; the program finds it by itself";
        };
    }

    private static boolean isOfWholeVehicle(CheckKind kind) {
        return switch (kind) {
            case VALUE, BUILD_UP, AIR_LOSS, RESERVE, YES_NO -> true;
            default -> false;
        };
    }
}
