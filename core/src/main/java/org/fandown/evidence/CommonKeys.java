package org.fandown.evidence;

import java.util.Optional;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/** Reads the keys {@code place} and {@code vehicle}, which several kinds of file have. */
public final class CommonKeys {
    private static final String PLACE = "place";
    private static final String VEHICLE = "vehicle";
    private static final String VEHICLE_FORM =
            "the path of a vehicle file from this file, or the vehicle itself";

    private CommonKeys() {}

    /**
     * Reads the place.
     *
     * @throws DocumentException if it is missing or not a place code
     */
    public static PlaceCode place(Fields fields) {
        if (!fields.has(PLACE)) {
            throw fields.missing(PLACE, "the code of a place, such as CA-ON or US");
        }
        String code = fields.text(PLACE);
        if (!PlaceCode.isWellFormed(code)) {
            throw fields.refuse(
                    PLACE,
                    "this is not a place code",
                    "an ISO 3166 code such as CA-ON or US",
                    "write the code in capitals; `fandown rules` lists the places");
        }
        return new PlaceCode(code);
    }

    /**
     * Reads the place, if the key is there.
     *
     * @throws DocumentException if it is not a place code
     */
    public static Optional<PlaceCode> optionalPlace(Fields fields) {
        return fields.has(PLACE) ? Optional.of(place(fields)) : Optional.empty();
    }

    /**
     * Reads the vehicle, written out or named.
     *
     * @param fields the keys of the file
     * @param vehicles where a named vehicle is found
     * @throws DocumentException if it is missing, cannot be fetched or is not a vehicle
     */
    public static Vehicle vehicle(Fields fields, VehicleSource vehicles) {
        if (!fields.has(VEHICLE)) {
            throw fields.missing(VEHICLE, VEHICLE_FORM);
        }
        if (fields.isMap(VEHICLE)) {
            return VehicleReader.read(fields.node(VEHICLE));
        }
        return VehicleReader.read(fetch(fields, vehicles));
    }

    /** Where the named document cannot even be opened, the place to mend is the name. */
    private static Node fetch(Fields fields, VehicleSource vehicles) {
        String name = fields.text(VEHICLE);
        try {
            return vehicles.fetch(name);
        } catch (IllegalArgumentException e) {
            throw fields.refuse(
                    VEHICLE,
                    "this cannot be fetched: " + e.getMessage(),
                    VEHICLE_FORM,
                    "correct the path");
        } catch (DocumentException e) {
            if (e.line() > 0) {
                throw e;
            }
            throw fields.refuse(
                    VEHICLE,
                    e.problem() + ": " + e.file(),
                    e.allowed().isEmpty() ? VEHICLE_FORM : e.allowed(),
                    e.nextStep());
        }
    }
}
