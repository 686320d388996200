package org.fandown.practice;

import java.util.Optional;
import org.fandown.units.GaugePressure;
import org.fandown.units.RotationalSpeed;

/**
 * What a driver sees on the dash.
 *
 * @param primary what the primary needle shows
 * @param secondary what the secondary needle shows
 * @param engine what the tachometer shows
 * @param keyOn whether the key is on
 * @param lowAirLamp whether the low-air lamp is lit
 * @param lowAirBuzzer whether the buzzer sounds
 * @param absLamp whether the ABS lamp is lit, empty if there is none
 * @param parkingKnobIn whether the parking knob is in, empty if there is none
 * @param trailerKnobIn whether the trailer supply knob is in, empty if there is none
 * @param metresPerSecond speed over the road, backwards below 0
 */
public record Dash(
        GaugePressure primary,
        GaugePressure secondary,
        RotationalSpeed engine,
        boolean keyOn,
        boolean lowAirLamp,
        boolean lowAirBuzzer,
        Optional<Boolean> absLamp,
        Optional<Boolean> parkingKnobIn,
        Optional<Boolean> trailerKnobIn,
        double metresPerSecond) {

    /** The lower of both needles. */
    public GaugePressure lower() {
        return primary.pascals() <= secondary.pascals() ? primary : secondary;
    }

    /** The higher of both needles. */
    public GaugePressure higher() {
        return primary.pascals() <= secondary.pascals() ? secondary : primary;
    }
}
