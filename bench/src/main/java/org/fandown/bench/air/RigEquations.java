package org.fandown.bench.air;

import java.util.List;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/**
 * The rig as ordinary differential equations, written out anew: the engine takes no part in it.
 *
 * <p>Unknown are the mass in each vessel, and for each reservoir mass times temperature. Flow by
 * ISO 6358 with a straight line from 0.999 of equal pressures on; p V(p) = m R T in a chamber, V
 * being a line between corners; d(m T)/dt = gamma (flow in T_in - flow out T) + m / tau (T_wall -
 * T) in a reservoir.
 */
final class RigEquations implements OrdinaryDifferentialEquation {
    private static final double PSI = 6894.757293168;
    private static final double CUBIC_INCH = 1.6387064e-5;
    private static final double OUTSIDE_PASCALS = 101_325;
    private static final double KELVINS = 293.15;
    private static final double GAS = 287.05;
    private static final double GAMMA = 1.4;
    private static final double DENSITY = 1.185;
    private static final double REFERENCE_KELVINS = 293.15;
    private static final double STRAIGHT_FROM = 0.999;

    private final Rig rig;
    private final List<Rig.Way> ways;
    private final int vessels;
    private final int[] reservoirs;
    private final Chamber[] chambers;
    private final double[] cubicMetres;
    private final double[] pascals;
    private final double[] kelvins;
    private double pedal;
    private boolean knobsIn;
    private double pumped;
    private double[] rates = new double[0];

    RigEquations(Rig rig) {
        this.rig = rig;
        ways = List.copyOf(rig.ways);
        vessels = rig.vessels.size();
        reservoirs = rig.reservoirs();
        pascals = new double[vessels];
        kelvins = new double[vessels];
        cubicMetres = new double[vessels];
        chambers = new Chamber[vessels];
        for (int i = 0; i < vessels; i++) {
            kelvins[i] = KELVINS;
            cubicMetres[i] = rig.vessels.get(i).cubicInches() * CUBIC_INCH;
            chambers[i] = rig.vessels.get(i).law().map(Chamber::new).orElse(Chamber.NONE);
        }
    }

    /** Sets what holds from now on. */
    void begin(RigScript.Phase phase) {
        pedal = OUTSIDE_PASCALS + phase.pedalPsi() * PSI;
        knobsIn = phase.knobsIn();
        pumped = phase.pumped();
    }

    @Override
    public int getDimension() {
        return vessels + reservoirs.length;
    }

    /** Returns the unknowns at the start. */
    double[] start() {
        double[] y = new double[getDimension()];
        for (int i = 0; i < vessels; i++) {
            double p = OUTSIDE_PASCALS + (rig.vessels.get(i).charged() ? Rig.CHARGED_PSI * PSI : 0);
            double volume = chambers[i] == Chamber.NONE ? cubicMetres[i] : chambers[i].volume(p);
            y[i] = p * volume / (GAS * KELVINS);
        }
        for (int k = 0; k < reservoirs.length; k++) {
            y[vessels + k] = y[reservoirs[k]] * KELVINS;
        }
        return y;
    }

    /** Returns the gauge pressures of the reservoirs, psi. */
    double[] reservoirPsi(double[] y) {
        double[] psi = new double[reservoirs.length];
        for (int k = 0; k < psi.length; k++) {
            double p = y[vessels + k] * GAS / cubicMetres[reservoirs[k]];
            psi[k] = (p - OUTSIDE_PASCALS) / PSI;
        }
        return psi;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
        for (int i = 0; i < vessels; i++) {
            pascals[i] =
                    chambers[i] == Chamber.NONE
                            ? y[i] * GAS * KELVINS / cubicMetres[i]
                            : chambers[i].pressure(y[i] * GAS * KELVINS);
        }
        rates = new double[y.length];
        for (int k = 0; k < reservoirs.length; k++) {
            int i = reservoirs[k];
            pascals[i] = y[vessels + k] * GAS / cubicMetres[i];
            kelvins[i] = y[vessels + k] / y[i];
            rates[vessels + k] = y[i] / Rig.WALL_SECONDS * (KELVINS - kelvins[i]);
        }
        for (Rig.Way way : ways) {
            flow(way);
        }
        move(Rig.OUTSIDE, rig.supply, pumped, Rig.PUMPED_KELVINS);
        return rates;
    }

    private void flow(Rig.Way way) {
        double a = pascals[way.from()];
        double b = at(way.to());
        switch (way.kind()) {
            case HOLE -> pass(way, open(way, a, b, way.to()));
            case KNOBS_IN -> pass(way, knobsIn ? open(way, a, b, way.to()) : 0);
            case KNOBS_OUT -> pass(way, knobsIn ? 0 : open(way, a, b, way.to()));
            case CHECK -> pass(way, Math.max(0, open(way, a - way.crackPsi() * PSI, b, way.to())));
            case PEDAL -> lap(way, pedal);
            case RELAY -> lap(way, pascals[way.pilot()] - Rig.RELAY_CRACK_PSI * PSI);
        }
    }

    private double at(int vessel) {
        return vessel == Rig.OUTSIDE ? OUTSIDE_PASCALS : pascals[vessel];
    }

    /** A valve: its inlet closes toward the command, its exhaust toward command plus deadband. */
    private void lap(Rig.Way way, double command) {
        double supply = pascals[way.from()];
        double delivery = pascals[way.to()];
        double in = open(way, supply, delivery, way.to());
        double most = lapping(in, supply - delivery, command - delivery);
        pass(way, Math.min(in, most));
        double out = exhaust(way, delivery);
        double above = delivery - command - Rig.DEADBAND_PSI * PSI;
        double vented = Math.min(out, lapping(out, delivery - OUTSIDE_PASCALS, above));
        move(way.to(), Rig.OUTSIDE, Math.max(0, vented), kelvins[way.to()]);
    }

    private static double exhaust(Rig.Way way, double delivery) {
        return iso(way.conductance(), delivery, OUTSIDE_PASCALS, KELVINS);
    }

    /** The flow through the part that is open, of a valve that is so far from being shut. */
    private static double lapping(double open, double difference, double distance) {
        double band = Rig.BAND_PSI * PSI;
        if (distance <= 0 || difference == 0) {
            return 0;
        }
        return open / difference * Math.max(difference, band) / band * distance;
    }

    /** Flow from first to second with all open, kg/s. */
    private double open(Rig.Way way, double first, double second, int to) {
        double warmth = to == Rig.OUTSIDE ? KELVINS : kelvins[to];
        return first >= second
                ? iso(way.conductance(), first, second, kelvins[way.from()])
                : -iso(way.conductance(), second, first, warmth);
    }

    private static double iso(double conductance, double up, double down, double kelvins) {
        double choked = conductance * DENSITY * up * Math.sqrt(REFERENCE_KELVINS / kelvins);
        double r = down / up;
        if (r <= Rig.RATIO) {
            return choked;
        }
        double x = (Math.min(r, STRAIGHT_FROM) - Rig.RATIO) / (1 - Rig.RATIO);
        double ellipse = Math.sqrt(1 - x * x);
        return r < STRAIGHT_FROM
                ? choked * ellipse
                : choked * ellipse * (1 - r) / (1 - STRAIGHT_FROM);
    }

    private void pass(Rig.Way way, double flow) {
        int up = flow >= 0 ? way.from() : way.to();
        move(way.from(), way.to(), flow, up == Rig.OUTSIDE ? KELVINS : kelvins[up]);
    }

    private void move(int from, int to, double flow, double warmth) {
        add(from, -flow, warmth);
        add(to, flow, warmth);
    }

    private void add(int vessel, double flow, double warmth) {
        if (vessel == Rig.OUTSIDE) {
            return;
        }
        rates[vessel] += flow;
        for (int k = 0; k < reservoirs.length; k++) {
            if (reservoirs[k] == vessel) {
                rates[vessels + k] += GAMMA * flow * warmth;
            }
        }
    }
}
