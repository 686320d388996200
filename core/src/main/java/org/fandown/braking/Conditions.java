package org.fandown.braking;

import java.util.List;
import java.util.Optional;
import org.fandown.units.GaugePressure;
import org.fandown.units.Quantity;
import org.fandown.units.Temperature;
import org.fandown.units.TimeSpan;
import org.fandown.units.Unit;

/**
 * What an estimate is asked for.
 *
 * @param measuredAt chamber pressure at which the strokes were measured, 20 to 150 psi; empty if it
 *     is not known and is to be assumed
 * @param application chamber pressure of the brake application that is estimated, 20 to 150 psi;
 *     empty for the usual one
 * @param hotDrums drum temperatures for which the estimate is repeated, above 70 F, ascending
 * @param speed speed from which the stop is estimated, more than zero and at most 100 mph
 * @param rollingStop the time a stop takes, if the stroke gained by rolling is to be reckoned in
 */
public record Conditions(
        Optional<GaugePressure> measuredAt,
        Optional<GaugePressure> application,
        List<Temperature> hotDrums,
        Quantity speed,
        Optional<TimeSpan> rollingStop) {
    private static final double LEAST_PSI = 20;
    private static final double GREATEST_PSI = 150;
    private static final double GREATEST_MPH = 100;
    private static final double GREATEST_DRUM = 1500;
    private static final double LONGEST_STOP = 60;

    /** Copies the temperatures in; refuses what the model does not reach. */
    public Conditions {
        hotDrums = List.copyOf(hotDrums);
        measuredAt.ifPresent(Conditions::requirePressure);
        application.ifPresent(Conditions::requirePressure);
        double above = Assumption.COLD_DRUM.number();
        for (Temperature drum : hotDrums) {
            double fahrenheit = drum.inFahrenheit();
            require(
                    fahrenheit > above && fahrenheit <= GREATEST_DRUM,
                    "Hot drums are above the one before and 70 F, up to 1500 F, not at " + drum);
            above = fahrenheit;
        }
        double mph = speed.valueIn(Unit.MPH);
        require(mph > 0 && mph <= GREATEST_MPH, "Speed is above 0 up to 100 mph, not " + speed);
        rollingStop.ifPresent(
                stop ->
                        require(
                                stop.seconds() <= LONGEST_STOP,
                                "A stop takes at most 60 s, not " + stop));
    }

    /**
     * Returns the usual conditions: cold, 400 F and 600 F, a stop from 20 mph, pressures assumed.
     */
    public static Conditions usual() {
        return new Conditions(
                Optional.empty(),
                Optional.empty(),
                List.of(Temperature.ofFahrenheit(400), Temperature.ofFahrenheit(600)),
                Stopping.IN_SERVICE_SPEED,
                Optional.empty());
    }

    /** Returns the same conditions with the pressure at which the strokes were measured. */
    public Conditions withMeasuredAt(GaugePressure pressure) {
        return new Conditions(Optional.of(pressure), application, hotDrums, speed, rollingStop);
    }

    /** Returns the same conditions with the pressure of the application that is estimated. */
    public Conditions withApplication(GaugePressure pressure) {
        return new Conditions(measuredAt, Optional.of(pressure), hotDrums, speed, rollingStop);
    }

    /** Returns the same conditions with other hot drums. */
    public Conditions withHotDrums(List<Temperature> drums) {
        return new Conditions(measuredAt, application, drums, speed, rollingStop);
    }

    /** Returns the same conditions with the stroke gained in a rolling stop of some time. */
    public Conditions withRollingStop(TimeSpan stop) {
        return new Conditions(measuredAt, application, hotDrums, speed, Optional.of(stop));
    }

    private static void requirePressure(GaugePressure pressure) {
        double psi = pressure.inPsi();
        require(
                psi >= LEAST_PSI && psi <= GREATEST_PSI,
                "Pressures of the estimate are 20 to 150 psi, not " + pressure);
    }

    private static void require(boolean fits, String otherwise) {
        if (!fits) {
            throw new IllegalArgumentException(otherwise + ".");
        }
    }
}
