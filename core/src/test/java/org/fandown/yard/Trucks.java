package org.fandown.yard;

import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/** Vehicles of our own invention, written as a vehicle file is. */
public final class Trucks {
    /** A steering axle with type 20 chambers. */
    public static final String STEER =
            "{'position': 'steer', 'brake': 'drum', 'chamber': 'clamp 20', 'spring-brake': 'no',"
                    + " 'adjuster': 'automatic', 'arm': '5.5 in'}";

    /** A drive axle with type 30 chambers and spring brakes. */
    public static final String DRIVE =
            "{'position': 'drive', 'brake': 'drum', 'chamber': 'clamp 30', 'spring-brake': 'yes',"
                    + " 'adjuster': 'automatic', 'arm': '5.5 in'}";

    /** A trailer axle with type 30 chambers and spring brakes. */
    public static final String TRAILER_AXLE =
            "{'brake': 'drum', 'chamber': 'clamp 30', 'spring-brake': 'yes', 'adjuster':"
                    + " 'automatic', 'arm': '5.5 in'}";

    /** A truck whose file leaves nothing out that a rule could ask for. */
    public static final String TRUCK =
            vehicle(
                    unit(
                            "truck",
                            "U3",
                            "'built': '2018-05-14', 'abs': true, 'gross-mass': '15000 kg',"
                                    + " 'supply': 'supply-reservoir'",
                            STEER,
                            DRIVE));

    /** A tractor with one semi-trailer. */
    public static final String COMBINATION = vehicle(tractor(), semiTrailer("B1"));

    private Trucks() {}

    /** Returns the text of a vehicle that carries property. */
    public static String vehicle(String... units) {
        return "{'name': 'Yard vehicle', 'use': 'property', 'units': ["
                + String.join(", ", units)
                + "]}";
    }

    /**
     * Returns the text of a unit.
     *
     * @param keys further keys, each {@code 'key': value}, with commas between; may be empty
     */
    public static String unit(String kind, String id, String keys, String... axles) {
        return "{'kind': '"
                + kind
                + "', 'id': '"
                + id
                + "', "
                + (keys.isEmpty() ? "" : keys + ", ")
                + "'axles': ["
                + String.join(", ", axles)
                + "]}";
    }

    /** Returns the text of a tractor built on 14 May 2018. */
    public static String tractor() {
        return unit(
                "tractor",
                "T7",
                "'built': '2018-05-14', 'abs': true, 'gross-mass': '11800 kg'",
                STEER,
                DRIVE);
    }

    /** Returns the text of a semi-trailer built in March 2015. */
    public static String semiTrailer(String id) {
        return unit(
                "trailer",
                id,
                "'built': '2015-03-20', 'abs': true, 'gross-mass': '14000 kg'",
                TRAILER_AXLE);
    }

    /** Returns the text of a converter dolly. */
    public static String dolly(String id) {
        return unit(
                "dolly",
                id,
                "'built': '2016-08-01', 'abs': false, 'gross-mass': '9000 kg'",
                TRAILER_AXLE);
    }

    /** Reads the text of a vehicle. */
    public static Vehicle read(String json) {
        return VehicleReader.read(Quoted.read("vehicle.json", json));
    }
}
