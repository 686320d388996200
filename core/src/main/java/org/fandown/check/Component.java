package org.fandown.check;

/**
 * A part or group of parts that a person looks at on the walk-round. Text form: lower case with
 * hyphens.
 */
public enum Component {
    SERVICE_BRAKES("Service brakes"),
    PARKING_BRAKE("Parking brake"),
    STEERING("Steering"),
    LAMPS_AND_REFLECTORS("Lamps and reflectors"),
    TIRES("Tires"),
    HORN("Horn"),
    WIPERS("Wipers"),
    MIRRORS("Mirrors"),
    COUPLING_DEVICES("Coupling devices"),
    WHEELS_AND_RIMS("Wheels and rims"),
    EMERGENCY_EQUIPMENT("Emergency equipment"),
    LOAD_SECUREMENT("Load securement"),
    AIR_LINES("Air lines and hoses"),
    AIR_SYSTEM("Air system"),
    TRAILER_CONNECTIONS("Trailer brake connections"),
    BRAKE_ADJUSTMENT("Brake adjustment"),
    AIR_GAUGE("Air pressure gauge"),
    LOW_PRESSURE_SIGNAL("Low-pressure signal"),
    COMPRESSOR("Air compressor"),
    BRAKE_CHAMBERS("Brake chambers"),
    BRAKE_LININGS("Brake linings"),
    DRUMS_AND_ROTORS("Drums and rotors"),
    SLACK_ADJUSTERS("Slack adjusters"),
    RESERVOIRS("Reservoirs"),
    FRAME("Frame"),
    SUSPENSION("Suspension"),
    FUEL_SYSTEM("Fuel system"),
    EXHAUST("Exhaust"),
    GLASS("Glass"),
    CAB("Cab"),
    DOORS("Doors"),
    HEATER("Heater and defroster"),
    DRIVER_SEAT("Driver's seat");

    private final String title;

    Component(String title) {
        this.title = title;
    }

    /** What a person calls it, in sentence case. */
    public String title() {
        return title;
    }

    /** The text form, lower case with hyphens. */
    public String id() {
        return Names.kebab(this);
    }
}
