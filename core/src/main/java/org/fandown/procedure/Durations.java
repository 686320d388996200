package org.fandown.procedure;

/**
 * How long things take on one vehicle, in tenths of a second. All of it is whole numbers, so that
 * two plans can be compared exactly.
 */
public interface Durations {
    /** What no step takes: it cannot be done. */
    int NEVER = 100_000_000;

    /**
     * Time in which the compressor builds up.
     *
     * @param trailers whether towed reservoirs are filled as well
     * @param rpm engine speed, rpm
     * @param from pressure at the start, psi
     * @param to pressure at the end, psi, not below the start
     */
    int rise(boolean trailers, int rpm, int from, int to);

    /**
     * The pressure after a time of build-up.
     *
     * @param trailers whether towed reservoirs are filled as well
     * @param from pressure at the start, psi
     * @param tenths time, tenths of a second, with the engine at idle
     */
    int risen(boolean trailers, int from, int tenths);

    /**
     * Time in which pumping the pedal lowers the pressure, {@link #NEVER} if the compressor is
     * faster.
     *
     * @param pumping whether the compressor pumps meanwhile, engine at idle
     * @param from pressure at the start, psi
     * @param to pressure at the end, psi, not above the start
     */
    int fall(boolean pumping, int from, int to);

    /** Pressure that one full application takes from a pressure, psi. */
    int application(int psi);

    /** Pressure after the parking brakes were released, psi. */
    int afterParkingRelease(int psi);

    /** Pressure after the empty reservoirs of towed units were charged, psi. */
    int afterTrailerCharge(int psi);

    /** Time to walk or climb from one spot to another. */
    int walk(Spot from, Spot to);

    /** Time to walk once round the vehicle. */
    int round();

    /** Time in which the supply reservoir fills again from empty. */
    int refill(int psi);

    /** Time in which the air settles after a quick change. */
    int settling();

    /** Pressure at which the governor stops the pumping, psi. */
    int cutOut();

    /** Pressure at which pumping starts again, psi. */
    int cutIn();
}
