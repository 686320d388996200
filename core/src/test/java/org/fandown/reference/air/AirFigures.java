package org.fandown.reference.air;

import java.util.function.DoubleUnaryOperator;
import org.fandown.air.Ambient;
import org.fandown.air.Restriction;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Temperature;
import org.fandown.units.Volume;

/** Figures that many of the checks of this package share. */
final class AirFigures {
    /** Pascals in a pound-force per square inch. */
    static final double PSI = 6894.757293168361;

    static final double ATMOSPHERE = 101_325;

    static final Temperature ROOM = new Temperature(293.15);

    /** The tank of the charge and discharge cases: 30 L behind a hole of 2 mm, coefficient 0.7. */
    static final Volume TANK = Volume.ofLitres(30);

    static final Length TANK_HOLE = Length.ofMillimetres(2);
    static final double TANK_HOLE_DISCHARGE = 0.7;

    private AirFigures() {}

    static GaugePressure psi(double psi) {
        return GaugePressure.ofPsi(psi);
    }

    static AbsolutePressure absolute(double gaugePsi) {
        return psi(gaugePsi).toAbsolute(Ambient.STANDARD.pressure());
    }

    static double pascals(double gaugePsi) {
        return gaugePsi * PSI + ATMOSPHERE;
    }

    /** The hole of the tank as a restriction with another critical ratio. */
    static Restriction tankHole(double criticalRatio) {
        double metres = TANK_HOLE.metres();
        double area = TANK_HOLE_DISCHARGE * Math.PI / 4 * metres * metres;
        return Restriction.ofNozzle(area, criticalRatio);
    }

    /**
     * What a value goes to as the step goes to zero, from its values at three steps, each half the
     * last, by Richardson's rule for errors in proportion to the step and to its square.
     */
    static double atStepZero(DoubleUnaryOperator valueAtStep, double step) {
        double coarse = valueAtStep.applyAsDouble(step);
        double middle = valueAtStep.applyAsDouble(step / 2);
        double fine = valueAtStep.applyAsDouble(step / 4);
        return (8 * fine - 6 * middle + coarse) / 3;
    }
}
