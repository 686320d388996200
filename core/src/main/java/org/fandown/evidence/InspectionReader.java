package org.fandown.evidence;

import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.Component;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** Reads a written-down inspection, strictly. */
public final class InspectionReader {
    private static final List<String> READABLE =
            Stream.of(Check.values())
                    .filter(check -> isOfWholeVehicle(check.kind()))
                    .map(Check::id)
                    .toList();

    private final VehicleSource vehicles;

    /**
     * A reader that fetches named vehicle documents from the given source.
     *
     * @param vehicles where a vehicle that is named rather than written out is found
     */
    public InspectionReader(VehicleSource vehicles) {
        this.vehicles = vehicles;
    }

    /**
     * Reads one inspection.
     *
     * @throws DocumentException if the document is not an inspection
     */
    public Inspection read(Node document) {
        Fields fields = Fields.of(document);
        PlaceCode place = CommonKeys.place(fields);
        OffsetDateTime moment = fields.moment("moment");
        Contradictions.requireYear(fields, moment.getYear());
        Vehicle vehicle = CommonKeys.vehicle(fields, vehicles);
        Contradictions.requireBuilt(fields, vehicle, moment.toLocalDate());
        Report report =
                fields.has("report") ? report(fields.fields("report")) : new Report(Map.of());
        Instruments instruments = InstrumentsReader.read(fields);
        boolean asPrinted = asPrinted(fields);
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
        List<String> notes = fields.optionalTexts("notes");
        boolean simulated = fields.has("simulated") && fields.truth("simulated");
        fields.end();
        return new Inspection(
                place,
                moment,
                vehicle,
                report,
                instruments,
                asPrinted,
                readings,
                wheels,
                parts,
                others,
                notes,
                simulated);
    }

    private static Report report(Fields fields) {
        Map<Report.Entry, String> entries = new EnumMap<>(Report.Entry.class);
        for (Report.Entry entry : Report.Entry.values()) {
            String key = org.fandown.document.Names.kebab(entry);
            if (!fields.has(key)) {
                continue;
            }
            if (!entry.isYesNo()) {
                entries.put(entry, fields.text(key));
            } else if (fields.truth(key)) {
                entries.put(entry, "yes");
            }
        }
        fields.end();
        return new Report(entries);
    }

    private static boolean asPrinted(Fields fields) {
        return fields.optionalChoice("conditions", Declared.values()).orElse(Declared.AS_NOTED)
                == Declared.AS_PRINTED;
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

    private enum Declared {
        AS_PRINTED,
        AS_NOTED
    }
}
