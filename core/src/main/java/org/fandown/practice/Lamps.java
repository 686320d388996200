package org.fandown.practice;

import java.util.Optional;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSetup.Defect;
import org.fandown.air.AirSystem;
import org.fandown.units.Fingerprint;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;

/** Key, lamps and buzzer. */
final class Lamps {
    private final AirSystem air;
    private final AirSetup setup;
    private final boolean hasAbs;
    private final boolean hasTrailerAbs;
    private boolean keyOn;
    private double onFor;

    Lamps(Vehicle vehicle, AirSetup setup, AirSystem air) {
        this.air = air;
        this.setup = setup;
        hasAbs = vehicle.powerUnit().abs().orElse(false);
        hasTrailerAbs = vehicle.towedUnits().stream().anyMatch(Lamps::hasAbs);
    }

    private static boolean hasAbs(VehicleUnit unit) {
        return unit.abs().orElse(false);
    }

    boolean keyOn() {
        return keyOn;
    }

    void key(boolean on) {
        keyOn = on;
        onFor = 0;
    }

    void advance(double seconds) {
        if (keyOn) {
            onFor += seconds;
        }
    }

    boolean lowAir() {
        return keyOn && air.lowAirLamp();
    }

    boolean buzzer() {
        return keyOn && air.lowAirBuzzer();
    }

    /** The lamp of the powered unit's anti-lock brakes, empty without them. */
    Optional<Boolean> abs() {
        return hasAbs
                ? Optional.of(lit(Defect.ABS_LAMP_DEAD, Defect.ABS_LAMP_STAYS_ON))
                : Optional.empty();
    }

    /** The lamp on the towed unit. */
    Optional<Boolean> trailerAbs() {
        return hasTrailerAbs
                ? Optional.of(lit(Defect.TRAILER_ABS_LAMP_DEAD, Defect.TRAILER_ABS_LAMP_STAYS_ON))
                : Optional.empty();
    }

    private boolean lit(Defect dead, Defect staysOn) {
        boolean checks = onFor < PracticeDefault.ABS_TIME.number();
        return keyOn && !setup.has(dead) && (checks || setup.has(staysOn));
    }

    void addTo(Fingerprint print) {
        print.add(keyOn ? 1L : 0L);
        print.add(onFor);
    }
}
