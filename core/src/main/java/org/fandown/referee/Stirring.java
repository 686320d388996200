package org.fandown.referee;

import org.fandown.practice.Inside;
import org.fandown.practice.PracticeTruck;

/**
 * Notices quick changes of the air: the compressor adds to it, the pedal is pumped, a towed unit is
 * charged. Until some time after one the air is still warm or cold, and the needle moves without a
 * leak.
 */
final class Stirring {
    /** Applications closer together than this are pumping, s. */
    private static final double PUMPING = 6;

    /** A towed unit that gains more in a second is being charged, psi. */
    private static final double CHARGING = 1;

    private static final double DOWN = 0.3;

    private final long settling;
    private long stirred = Long.MIN_VALUE / 2;
    private long now;
    private long applied = Long.MIN_VALUE / 2;
    private boolean down;
    private double towed = -1;

    /**
     * @param settling after how long without quick changes the air has settled, s
     */
    Stirring(double settling) {
        this.settling = Tale.ticks(settling);
    }

    void look(PracticeTruck truck, Inside inside) {
        now = truck.ticks();
        boolean pumps = truck.engineRuns() && inside.compressorPumps();
        boolean presses = truck.footBrake() > DOWN;
        boolean again = presses && !down && now - applied < Tale.ticks(PUMPING);
        applied = presses ? now : applied;
        down = presses;
        if (pumps || again || charges(inside)) {
            stirred = now;
        }
    }

    private boolean charges(Inside inside) {
        boolean second = now % Tale.ticks(1) == 0;
        boolean gains = second && towed >= 0 && inside.towedPsi() - towed > CHARGING;
        towed = second ? inside.towedPsi() : towed;
        return gains;
    }

    boolean isSettled() {
        return now - stirred >= settling;
    }
}
