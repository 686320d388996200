package org.fandown.procedure;

import java.util.List;

/** Where a person stands to do a step. */
public enum Spot {
    /** In the driver's seat. */
    CAB(0, "cab"),
    /** On the ground beside the cab, where walks round the vehicle begin and end. */
    GROUND(1, "ground"),
    /** At the wheel that is chocked. */
    WHEEL(2, "wheel"),
    /** At the lines behind the powered unit. */
    COUPLING(3, "coupling"),
    /** Beside the reservoirs of the powered unit. */
    RESERVOIRS(4, "reservoirs"),
    /** Behind the last unit. */
    REAR(5, "rear");

    private static final List<Spot> ALL = List.of(values());

    private final int code;
    private final String id;

    Spot(int code, String id) {
        this.code = code;
        this.id = id;
    }

    /** The text form. */
    public String id() {
        return id;
    }

    int code() {
        return code;
    }

    static Spot of(int code) {
        for (Spot spot : ALL) {
            if (spot.code == code) {
                return spot;
            }
        }
        throw new IllegalArgumentException("There is no spot " + code + ".");
    }
}
