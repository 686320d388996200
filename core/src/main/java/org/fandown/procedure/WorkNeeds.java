package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;

/** What work between checks needs before it is done. */
final class WorkNeeds {
    private static final String LEAVE =
            "nobody leaves the cab unless the wheels are chocked or the parking brakes are set";

    private final Rig rig;

    WorkNeeds(Rig rig) {
        this.rig = rig;
    }

    /** The step of a work. */
    WorkStep step(Work work, int amount) {
        return new WorkStep(work, amount, needs(work));
    }

    /** Pressure from which the parking knob stays in, psi. */
    int releaseFrom() {
        return rig.springs() ? 60 : 0;
    }

    /** Pressure that charges the trailer and still keeps its knob in, psi. */
    int chargeFrom() {
        int psi = 60;
        while (psi < 120 && rig.durations().afterTrailerCharge(psi) < 45) {
            psi++;
        }
        return Math.min(psi, rig.durations().cutOut());
    }

    private List<Need> needs(Work work) {
        List<Need> needs = new ArrayList<>();
        if (work.spot() != Spot.CAB) {
            needs.add(Need.is(Aspect.SECURED, 1, Weight.SAFETY, LEAVE));
        }
        switch (work) {
            case UNCHOCK ->
                    needs.add(
                            Need.is(
                                    Aspect.PARKING,
                                    0,
                                    Weight.SAFETY,
                                    "without chocks only the parking brakes hold the vehicle"));
            case START_ENGINE ->
                    needs.add(
                            Need.is(
                                    Aspect.SECURED,
                                    1,
                                    Weight.SAFETY,
                                    "a vehicle that jumps forward must be held"));
            case RELEASE_PARKING ->
                    needs.add(
                            Need.atLeast(
                                    releaseFrom(),
                                    Weight.POSSIBLE,
                                    "with less air the knob does not stay in"));
            case OPEN_TRAILER_SUPPLY -> openSupply(needs);
            case PART_SERVICE_LINE -> chocked(needs);
            case PART_SUPPLY_LINE, PART_LINES, COUPLE_LINES -> parting(needs);
            case DRAIN_SUPPLY -> drain(needs);
            case PUMP_UP -> pumpUp(needs);
            case WAIT ->
                    needs.add(
                            Need.is(
                                    Aspect.ENGINE,
                                    0,
                                    Weight.POSSIBLE,
                                    "a running engine warms the air again"));
            default -> {
                // nothing more
            }
        }
        return needs;
    }

    private void openSupply(List<Need> needs) {
        needs.add(
                Need.atLeast(
                        chargeFrom(),
                        Weight.POSSIBLE,
                        "with less air the knob does not stay in while the trailer fills"));
        needs.add(
                Need.is(
                        Aspect.LINES,
                        Lines.COUPLED,
                        Weight.SAFETY,
                        "air blows from a parted line"));
    }

    private static void parting(List<Need> needs) {
        needs.add(
                Need.is(
                        Aspect.TRAILER_SUPPLY,
                        0,
                        Weight.SAFETY,
                        "a supply line under pressure whips when it is parted or coupled"));
        chocked(needs);
    }

    private static void chocked(List<Need> needs) {
        needs.add(
                Need.is(
                        Aspect.CHOCKS,
                        1,
                        Weight.SAFETY,
                        "nobody stands between units that are not chocked"));
    }

    private static void drain(List<Need> needs) {
        needs.add(
                Need.is(
                        Aspect.CHOCKS,
                        1,
                        Weight.SAFETY,
                        "nobody goes under a vehicle whose wheels are not chocked"));
        needs.add(
                Need.is(Aspect.ENGINE, 0, Weight.POSSIBLE, "a running compressor fills it again"));
    }

    private static void pumpUp(List<Need> needs) {
        needs.add(Need.is(Aspect.ENGINE, 1, Weight.POSSIBLE, "only a running engine builds up"));
        needs.add(
                Need.is(
                        Aspect.COMPRESSOR,
                        1,
                        Weight.POSSIBLE,
                        "the compressor rests until the pressure is down to cut-in"));
    }
}
