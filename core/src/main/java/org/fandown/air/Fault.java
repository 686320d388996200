package org.fandown.air;

/**
 * Something that can be wrong with an air system: a physical change of its {@link AirSetup}, with
 * what a driver would see, hear or measure.
 *
 * <p>A {@link FaultCase} is a fault with its size and place. A fault of a part that a vehicle has
 * not is refused when its {@link AirSystem} is made.
 */
// A FaultSpec holds values alone, and its changes capture nothing that changes.
@SuppressWarnings("ImmutableEnumChecker")
public enum Fault {
    // Compressor, governor and dryer.
    GOVERNOR_HIGH(SupplyFaults.GOVERNOR_HIGH),
    GOVERNOR_LOW(SupplyFaults.GOVERNOR_LOW),
    CUT_IN_LOW(SupplyFaults.CUT_IN_LOW),
    GOVERNOR_STICKING(SupplyFaults.GOVERNOR_STICKING),
    GOVERNOR_STUCK_LOADED(SupplyFaults.GOVERNOR_STUCK_LOADED),
    GOVERNOR_STUCK_UNLOADED(SupplyFaults.GOVERNOR_STUCK_UNLOADED),
    COMPRESSOR_WORN(SupplyFaults.COMPRESSOR_WORN),
    COMPRESSOR_SLIPPING(SupplyFaults.COMPRESSOR_SLIPPING),
    OIL_CARRIED_OVER(SupplyFaults.OIL_CARRIED_OVER),
    DISCHARGE_LEAK(SupplyFaults.DISCHARGE_LEAK),
    PURGE_STUCK_OPEN(SupplyFaults.PURGE_STUCK_OPEN),
    PURGE_STUCK_SHUT(SupplyFaults.PURGE_STUCK_SHUT),
    DRYER_BLOCKED(SupplyFaults.DRYER_BLOCKED),
    DRYER_CHECK_OPEN(SupplyFaults.DRYER_CHECK_OPEN),
    SAFETY_VALVE_WEAK(SupplyFaults.SAFETY_VALVE_WEAK),
    SAFETY_VALVE_STUCK(SupplyFaults.SAFETY_VALVE_STUCK),

    // Reservoirs, drains and check valves.
    SUPPLY_LEAK(ReservoirFaults.SUPPLY_LEAK),
    PRIMARY_LEAK(ReservoirFaults.PRIMARY_LEAK),
    SECONDARY_LEAK(ReservoirFaults.SECONDARY_LEAK),
    PARKING_RESERVOIR_LEAK(ReservoirFaults.PARKING_RESERVOIR_LEAK),
    WATER_IN_SUPPLY(ReservoirFaults.WATER_IN_SUPPLY),
    WATER_IN_PRIMARY(ReservoirFaults.WATER_IN_PRIMARY),
    WATER_IN_SECONDARY(ReservoirFaults.WATER_IN_SECONDARY),
    SUPPLY_DRAIN_FROZEN(ReservoirFaults.SUPPLY_DRAIN_FROZEN),
    DRAIN_FROZEN(ReservoirFaults.DRAIN_FROZEN),
    SECONDARY_DRAIN_FROZEN(ReservoirFaults.SECONDARY_DRAIN_FROZEN),
    SUPPLY_DRAIN_LEAKING(ReservoirFaults.SUPPLY_DRAIN_LEAKING),
    DRAIN_LEAKING(ReservoirFaults.DRAIN_LEAKING),
    SECONDARY_DRAIN_LEAKING(ReservoirFaults.SECONDARY_DRAIN_LEAKING),
    PRIMARY_CHECK_OPEN(ReservoirFaults.PRIMARY_CHECK_OPEN),
    SECONDARY_CHECK_OPEN(ReservoirFaults.SECONDARY_CHECK_OPEN),
    PRIMARY_CHECK_SHUT(ReservoirFaults.PRIMARY_CHECK_SHUT),
    SECONDARY_CHECK_SHUT(ReservoirFaults.SECONDARY_CHECK_SHUT),
    CIRCUITS_JOINED(ReservoirFaults.CIRCUITS_JOINED),
    DASH_CHECK_STUCK(ReservoirFaults.DASH_CHECK_STUCK),

    // Service brakes and the brakes at the wheels.
    FOOT_VALVE_SEAT_LEAK(ServiceFaults.FOOT_VALVE_SEAT_LEAK),
    FOOT_VALVE_SECONDARY_SEAT_LEAK(ServiceFaults.FOOT_VALVE_SECONDARY_SEAT_LEAK),
    FOOT_VALVE_APPLIED_LEAK(ServiceFaults.FOOT_VALVE_APPLIED_LEAK),
    FOOT_VALVE_NARROW(ServiceFaults.FOOT_VALVE_NARROW),
    RELAY_SEAT_LEAK(ServiceFaults.RELAY_SEAT_LEAK),
    RELAY_APPLIED_LEAK(ServiceFaults.RELAY_APPLIED_LEAK),
    RELAY_SLOW(ServiceFaults.RELAY_SLOW),
    RELAY_STUCK_SHUT(ServiceFaults.RELAY_STUCK_SHUT),
    QUICK_RELEASE_LEAK(ServiceFaults.QUICK_RELEASE_LEAK),
    QUICK_RELEASE_SLOW(ServiceFaults.QUICK_RELEASE_SLOW),
    SERVICE_DIAPHRAGM_LEAK(ServiceFaults.SERVICE_DIAPHRAGM_LEAK),
    HOSE_LEAK(ServiceFaults.HOSE_LEAK),
    HOSE_NARROW(ServiceFaults.HOSE_NARROW),
    BOOSTER_LEAK(ServiceFaults.BOOSTER_LEAK),
    STOP_LAMP_SWITCH_DEAD(ServiceFaults.STOP_LAMP_SWITCH_DEAD),
    ADJUSTER_OUT(ServiceFaults.ADJUSTER_OUT),
    ADJUSTER_SEIZED(ServiceFaults.ADJUSTER_SEIZED),
    BRAKE_TOO_TIGHT(ServiceFaults.BRAKE_TOO_TIGHT),
    BRAKE_SEIZED(ServiceFaults.BRAKE_SEIZED),
    CHAMBER_UNEQUAL(ServiceFaults.CHAMBER_UNEQUAL),
    HOT_DRUMS(ServiceFaults.HOT_DRUMS),

    // Parking brakes.
    PARKING_VALVE_LEAK(ParkingFaults.PARKING_VALVE_LEAK),
    SPRING_RELAY_LEAK(ParkingFaults.SPRING_RELAY_LEAK),
    SPRING_DIAPHRAGM_LEAK(ParkingFaults.SPRING_DIAPHRAGM_LEAK),
    SPRING_BROKEN(ParkingFaults.SPRING_BROKEN),
    SPRING_CAGED(ParkingFaults.SPRING_CAGED),
    SPRING_DRAGGING(ParkingFaults.SPRING_DRAGGING),
    PARKING_POPS_EARLY(ParkingFaults.PARKING_POPS_EARLY),
    PARKING_POPS_LATE(ParkingFaults.PARKING_POPS_LATE),
    PARKING_KNOB_STICKS(ParkingFaults.PARKING_KNOB_STICKS),
    NO_ANTI_COMPOUND(ParkingFaults.NO_ANTI_COMPOUND),
    NO_MODULATION(ParkingFaults.NO_MODULATION),

    // Lines and towed units.
    TRAILER_RESERVOIR_LEAK(TowedFaults.TRAILER_RESERVOIR_LEAK),
    SUPPLY_LINE_LEAK(TowedFaults.SUPPLY_LINE_LEAK),
    CONTROL_LINE_LEAK(TowedFaults.CONTROL_LINE_LEAK),
    SUPPLY_GLAD_HAND_LEAK(TowedFaults.SUPPLY_GLAD_HAND_LEAK),
    CONTROL_GLAD_HAND_LEAK(TowedFaults.CONTROL_GLAD_HAND_LEAK),
    SUPPLY_LINE_NARROW(TowedFaults.SUPPLY_LINE_NARROW),
    CONTROL_LINE_NARROW(TowedFaults.CONTROL_LINE_NARROW),
    LINES_CROSSED(TowedFaults.LINES_CROSSED),
    SHUT_OFF_SHUT(TowedFaults.SHUT_OFF_SHUT),
    TRAILER_RELAY_SEAT_LEAK(TowedFaults.TRAILER_RELAY_SEAT_LEAK),
    TRAILER_RELAY_STUCK(TowedFaults.TRAILER_RELAY_STUCK),
    TRAILER_CHECK_OPEN(TowedFaults.TRAILER_CHECK_OPEN),
    TRAILER_CHECK_SHUT(TowedFaults.TRAILER_CHECK_SHUT),
    WATER_IN_TRAILER(TowedFaults.WATER_IN_TRAILER),
    TRAILER_DRAIN_FROZEN(TowedFaults.TRAILER_DRAIN_FROZEN),
    TRAILER_DRAIN_LEAKING(TowedFaults.TRAILER_DRAIN_LEAKING),

    // Valves of a towing unit.
    TRAILER_KNOB_POPS_EARLY(ProtectionFaults.TRAILER_KNOB_POPS_EARLY),
    TRAILER_KNOB_POPS_LATE(ProtectionFaults.TRAILER_KNOB_POPS_LATE),
    TRAILER_KNOB_STICKS(ProtectionFaults.TRAILER_KNOB_STICKS),
    PROTECTION_STUCK_OPEN(ProtectionFaults.PROTECTION_STUCK_OPEN),
    PROTECTION_STUCK_SHUT(ProtectionFaults.PROTECTION_STUCK_SHUT),
    HAND_VALVE_DEAD(ProtectionFaults.HAND_VALVE_DEAD),
    HAND_CHECK_STUCK(ProtectionFaults.HAND_CHECK_STUCK),

    // Gauges, warnings and lamps.
    LOW_AIR_SET_LOW(InstrumentFaults.LOW_AIR_SET_LOW),
    LOW_AIR_LAMP_DEAD(InstrumentFaults.LOW_AIR_LAMP_DEAD),
    LOW_AIR_BUZZER_DEAD(InstrumentFaults.LOW_AIR_BUZZER_DEAD),
    LOW_AIR_SWITCH_DEAD(InstrumentFaults.LOW_AIR_SWITCH_DEAD),
    PRIMARY_GAUGE_OFF(InstrumentFaults.PRIMARY_GAUGE_OFF),
    SECONDARY_GAUGE_OFF(InstrumentFaults.SECONDARY_GAUGE_OFF),
    PRIMARY_GAUGE_STUCK(InstrumentFaults.PRIMARY_GAUGE_STUCK),
    SECONDARY_GAUGE_STUCK(InstrumentFaults.SECONDARY_GAUGE_STUCK),
    ABS_LAMP_STAYS_ON(InstrumentFaults.ABS_LAMP_STAYS_ON),
    ABS_LAMP_DEAD(InstrumentFaults.ABS_LAMP_DEAD),
    TRAILER_ABS_LAMP_STAYS_ON(InstrumentFaults.TRAILER_ABS_LAMP_STAYS_ON),
    TRAILER_ABS_LAMP_DEAD(InstrumentFaults.TRAILER_ABS_LAMP_DEAD);

    private final FaultSpec spec;
    private final String id;

    Fault(FaultSpec spec) {
        this.spec = spec;
        StringBuilder text = new StringBuilder();
        String name = name();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            text.append(c == '_' ? '-' : c >= 'A' && c <= 'Z' ? (char) (c - 'A' + 'a') : c);
        }
        id = text.toString();
    }

    /** Returns the name used in files: {@code primary-leak}. */
    public String id() {
        return id;
    }

    /** Returns what is wrong, in words. */
    public String title() {
        return spec.title();
    }

    /** Returns what a driver would see, hear or measure. */
    public String shows() {
        return spec.shows();
    }

    /** Returns the part of the air system it is in. */
    public FaultGroup group() {
        return spec.group();
    }

    /** Returns whether it is at a wheel, which must then be named. */
    public boolean atWheel() {
        return spec.place() == FaultSpec.Place.WHEEL;
    }

    /** Returns whether it is at a towed unit, which may be named; else it is at the first. */
    public boolean atUnit() {
        return spec.place() == FaultSpec.Place.UNIT;
    }

    /** Returns how large it can be. */
    public FaultSize size() {
        return spec.size();
    }

    FaultSpec spec() {
        return spec;
    }
}
