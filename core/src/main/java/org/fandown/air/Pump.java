package org.fandown.air;

import org.fandown.units.Num;
import org.fandown.units.Volume;

/**
 * The compressor: air in proportion to speed, less what the clearance keeps back and the inlet
 * loses at speed.
 *
 * <p><b>Source.</b> Volumetric efficiency 1 + c - c (p2/p1)^(1/n); the loss with speed is a line
 * through two points of a service data sheet.
 */
final class Pump implements Element {
    private final AirSource source;
    private final AirNode discharge;
    private final AirMemory loaded;
    private final double ambient;

    /** Air of one turn without loss, kg. */
    private final double perTurn;

    private final double ratio;
    private final double clearance;
    private final double exponent;
    private final double filling;
    private final double fillingLoss;

    Pump(Plumbing parts, AirSource source, AirNode discharge, AirMemory loaded, Drive drive) {
        this.source = source;
        this.discharge = discharge;
        this.loaded = loaded;
        ambient = parts.ambient;
        AirSetup setup = parts.setup;
        double density = ambient / (Gas.R * Gas.REFERENCE_TEMPERATURE);
        perTurn =
                drive.displacement().cubicMetres()
                        * density
                        * setup.value(AirDefault.COMPRESSOR_HEALTH);
        ratio = drive.ratio();
        clearance = setup.value(AirDefault.CLEARANCE);
        exponent = 1 / setup.value(AirDefault.RE_EXPANSION);
        filling = setup.value(AirDefault.FILLING);
        fillingLoss = setup.value(AirDefault.FILLING_LOSS);
    }

    /**
     * How a compressor is driven.
     *
     * @param displacement volume swept in one turn
     * @param ratio its turns for one turn of the engine
     */
    record Drive(Volume displacement, double ratio) {}

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double rpm = controls.engine().inRpm() * ratio;
        double flow = 0;
        if (rpm > 0 && state.recall(loaded) > 0) {
            double half = state.slope(discharge) * (seconds / 2);
            double compression = Math.max(1, (state.pascals(discharge) + half) / ambient);
            double kept = 1 + clearance - clearance * Num.pow(compression, exponent);
            double inlet = filling - fillingLoss * rpm;
            flow = perTurn * rpm / 60 * Math.max(0, kept) * Math.max(0, inlet);
        }
        state.setInflow(source, flow);
    }
}
