package org.fandown.evidence;

import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.vehicle.Vehicle;

/** Reads a written-down inspection, strictly. */
public final class InspectionReader {
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
        Observations observations = new ObservationsReader(vehicle).read(fields);
        List<String> notes = fields.optionalTexts("notes");
        List<EarlierDefect> earlier = EarlierDefect.list(fields);
        boolean simulated = fields.has("simulated") && fields.truth("simulated");
        fields.end();
        return new Inspection(
                place,
                moment,
                vehicle,
                report,
                instruments,
                asPrinted,
                observations,
                notes,
                earlier,
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

    private enum Declared {
        AS_PRINTED,
        AS_NOTED
    }
}
