package org.fandown.procedure;

import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Compressor;
import org.fandown.vehicle.Governor;
import org.fandown.vehicle.Vehicle;

/**
 * Durations from the vehicle file, by closed forms.
 *
 * <p>Build-up: the compressor takes in displacement x ratio x speed, times a filling that falls
 * with speed and pressure by the air left in its clearance; each psi takes volume / (intake x air
 * pressure). Pumping down: each full application takes chambers / (reservoirs + chambers) of the
 * pressure and three seconds. Walking: the length of the vehicle at a walking pace.
 *
 * <p><b>Assumes</b> {@link PlanDefault} where the file is silent, even temperature and no leak.
 */
public final class VehicleDurations implements Durations {
    private static final int MOST_PSI = 200;
    private static final int TENTHS = 10;
    private static final int LEAST_PSI_AFTER = 1;

    private final AirVolumes volumes;
    private final double swept;
    private final int cutIn;
    private final int cutOut;
    private final Walks walks;
    private final int[] idleAlone;
    private final int[] idleTowing;
    private final int[] falling;

    private VehicleDurations(Vehicle vehicle) {
        volumes = AirVolumes.of(vehicle);
        swept = swept(vehicle);
        Governor governor =
                vehicle.powerUnit()
                        .governor()
                        .orElse(
                                new Governor(
                                        java.util.Optional.empty(), java.util.Optional.empty()));
        int given = governor.cutOut().map(VehicleDurations::psi).orElse(0);
        int low = governor.cutIn().map(VehicleDurations::psi).orElse(0);
        cutOut = given > 0 ? given : usualCutOut(low);
        cutIn = low > 0 ? low : Math.min(usual(PlanDefault.CUT_IN), cutOut - TENTHS);
        walks = Walks.of(vehicle);
        idleAlone = riseTable(false, usual(PlanDefault.IDLE));
        idleTowing = riseTable(true, usual(PlanDefault.IDLE));
        falling = fallTable();
    }

    /** The durations of a vehicle. */
    public static VehicleDurations of(Vehicle vehicle) {
        return new VehicleDurations(vehicle);
    }

    private static int usual(PlanDefault number) {
        return (int) number.number();
    }

    private static int usualCutOut(int cutIn) {
        return Math.max(usual(PlanDefault.CUT_OUT), cutIn + 2 * TENTHS);
    }

    private static int psi(Quantity pressure) {
        return (int) Num.round(pressure.valueIn(Unit.PSI));
    }

    private static double swept(Vehicle vehicle) {
        Compressor compressor =
                vehicle.powerUnit()
                        .compressor()
                        .orElse(
                                new Compressor(
                                        java.util.Optional.empty(),
                                        java.util.OptionalDouble.empty()));
        double size =
                compressor
                        .displacement()
                        .map(q -> q.valueIn(Unit.CUBIC_INCH))
                        .orElse(PlanDefault.DISPLACEMENT.number());
        return size * compressor.driveRatio().orElse(PlanDefault.DRIVE_RATIO.number());
    }

    private double secondsPerPsi(boolean trailers, int rpm, int psi) {
        double filling = PlanDefault.FILLING.number() - PlanDefault.FILLING_LOSS.number() * rpm;
        double ratio = 1 + psi / PlanDefault.AMBIENT.number();
        double left = Num.pow(ratio, 1 / PlanDefault.RE_EXPANSION.number()) - 1;
        double share = filling - PlanDefault.CLEARANCE.number() * left;
        double intake = swept * rpm / 60 * Math.max(share, 0.05);
        double volume = volumes.powered() + (trailers ? volumes.towed() : 0);
        return volume / (intake * PlanDefault.AMBIENT.number());
    }

    /** Tenths of a second from empty to each psi. */
    private int[] riseTable(boolean trailers, int rpm) {
        int[] table = new int[MOST_PSI + 1];
        double sum = 0;
        for (int psi = 1; psi <= MOST_PSI; psi++) {
            sum += TENTHS * secondsPerPsi(trailers, rpm, psi);
            table[psi] = (int) Math.ceil(sum);
        }
        return table;
    }

    /** Tenths of a second from each psi to empty. */
    private int[] fallTable() {
        int[] table = new int[MOST_PSI + 1];
        double sum = 0;
        for (int psi = 1; psi <= MOST_PSI; psi++) {
            sum += TENTHS * PlanDefault.PUMP_CYCLE.number() / share(psi);
            table[psi] = (int) Math.ceil(sum);
        }
        return table;
    }

    private double share(int psi) {
        double chambers = volumes.poweredChambers();
        return Math.max(psi * chambers / (volumes.powered() + chambers), 0.5);
    }

    @Override
    public int rise(boolean trailers, int rpm, int from, int to) {
        if (to <= from) {
            return 0;
        }
        int[] table = trailers ? idleTowing : idleAlone;
        int atIdle = table[Math.min(to, MOST_PSI)] - table[Math.min(from, MOST_PSI)];
        return rpm == usual(PlanDefault.IDLE) ? atIdle : faster(atIdle, rpm);
    }

    /** Intake grows with speed, less what filling loses; the loss is taken at mid pressure. */
    private int faster(int atIdle, int rpm) {
        int mid = (int) PlanDefault.CUT_IN.number() / 2;
        double share =
                secondsPerPsi(false, rpm, mid) / secondsPerPsi(false, usual(PlanDefault.IDLE), mid);
        return (int) Math.ceil(atIdle * share);
    }

    @Override
    public int risen(boolean trailers, int from, int tenths) {
        int[] table = trailers ? idleTowing : idleAlone;
        int psi = from;
        while (psi < cutOut && table[psi + 1] - table[from] <= tenths) {
            psi++;
        }
        return psi;
    }

    @Override
    public int fall(boolean pumping, int from, int to) {
        if (to >= from) {
            return 0;
        }
        int still = falling[from] - falling[to];
        if (!pumping) {
            return still;
        }
        int rise = rise(false, usual(PlanDefault.IDLE), to, from);
        if (still >= rise) {
            return NEVER;
        }
        return (int) Math.ceil((double) still * rise / (rise - still));
    }

    @Override
    public int application(int psi) {
        return psi == 0 ? 0 : Math.min(psi, (int) Math.ceil(share(psi)));
    }

    @Override
    public int afterParkingRelease(int psi) {
        double kept = volumes.powered() / (volumes.powered() + volumes.springs());
        return Math.max((int) Math.floor(psi * kept), 0);
    }

    @Override
    public int afterTrailerCharge(int psi) {
        double kept = volumes.powered() / (volumes.powered() + volumes.towed());
        return Math.max((int) Math.floor(psi * kept), LEAST_PSI_AFTER);
    }

    @Override
    public int walk(Spot from, Spot to) {
        return walks.between(from, to);
    }

    @Override
    public int round() {
        return walks.round();
    }

    @Override
    public int refill(int psi) {
        return (int)
                Math.ceil(
                        idleAlone[Math.min(psi, MOST_PSI)] * volumes.supply() / volumes.powered());
    }

    @Override
    public int settling() {
        return TENTHS * usual(PlanDefault.SETTLING);
    }

    @Override
    public int cutOut() {
        return cutOut;
    }

    @Override
    public int cutIn() {
        return cutIn;
    }
}
