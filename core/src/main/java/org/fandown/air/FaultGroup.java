package org.fandown.air;

/** The part of the air system a fault is in. */
public enum FaultGroup {
    /** Compressor, governor and dryer. */
    SUPPLY("Compressor, governor, dryer"),
    /** Reservoirs, their drains and check valves. */
    RESERVOIRS("Reservoirs, drains, check valves"),
    /** Foot valve, relay valves, service chambers. */
    SERVICE("Service brakes"),
    /** Parking valve and spring brakes. */
    PARKING("Parking brakes"),
    /** Lines between units, tractor protection, towed units. */
    TOWED("Lines and towed units"),
    /** Foundation brakes and their adjustment. */
    WHEELS("Brakes at the wheels"),
    /** Gauges, warnings and lamps. */
    INSTRUMENTS("Gauges, warnings, lamps");

    private final String title;

    FaultGroup(String title) {
        this.title = title;
    }

    /** Returns its name, in words. */
    public String title() {
        return title;
    }
}
